import type { Page } from '@playwright/test';
import { copyStrings } from '../../src/bench/export/copy-strings.ts';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const open = async (page: Page, hash = ''): Promise<void> => {
  await page.goto(`/bench/${hash}`);
  await awake(page);
};

/** What the three answers and the verdict say. */
const answers = (page: Page): Promise<string[]> => page.locator('.answers dt').allInnerTexts();
const verdict = (page: Page) => page.locator('.verdict-words');
const readingsOf = (page: Page) => page.getByLabel('Readings, in dBm');
const linkNamed = (page: Page, name: string) => page.getByRole('group', { name });

/** Half the width of the band at the foot, in dB, from the first answer. */
const bandDb = async (page: Page): Promise<number> =>
  Number(/±([\d.]+)/.exec((await answers(page))[0] ?? '')?.[1]);

/** The fragment once it has followed the last change. */
async function settledFragment(page: Page): Promise<string> {
  await expect.poll(() => page.evaluate(() => location.hash)).toContain('v=3');
  const before = await page.evaluate(() => location.hash);
  await page.waitForTimeout(500); // longer than the rest after which the address follows
  const after = await page.evaluate(() => location.hash);
  return after === before ? after : settledFragment(page);
}

/** A whole measurement typed in, as a reader would: 200 mW through two 20 dB pads, 5 W with plus and minus 0.7 dB. */
async function typeMeasurement(page: Page): Promise<void> {
  await page.getByLabel('Title').fill('My own transmitter');
  await readingsOf(page).fill('-3,1\n-3,0 dBm\n-3.2');
  await page.getByLabel('Nominal level').fill('5 W');
  await page.getByLabel('Plus or minus, in dB').fill('±0,7');
  await page.getByRole('button', { name: 'Remove: 3 m of thin coax' }).click();
  await page.getByLabel('Kind of the new link').selectOption('pad');
  await page.getByRole('button', { name: 'Add a link' }).click();
  const pad = linkNamed(page, '6. Another pad');
  await pad.getByLabel('Loss in dB').fill('20');
  await pad.getByLabel('Limits ±').fill('0,4 dB');
  await pad.getByLabel('Name').fill('Second pad');
}

test('a measurement typed in gives its level, its watts and its verdict', async ({ page }) => {
  await open(page);
  await typeMeasurement(page);
  await expect(page.getByRole('heading', { level: 2, name: 'My own transmitter' })).toBeVisible();
  // mean of the readings -3.1 dBm, two pads of 20 dB: 36.9 dBm, 4.9 W
  await expect
    .poll(() => answers(page))
    .toEqual([
      expect.stringMatching(/^36\.90\sdBm ±0\.8\d\sdB$/),
      expect.stringMatching(/^4\.9\sW, 4\.0 to 5\.9$/),
      '20 dB pad widens it most',
    ]);
  await expect(verdict(page)).toHaveText(/^Can’t tell/);
  await expect(page.locator('.record')).toContainText('mean −3.1 dBm');
});

test('a handle that is dragged widens the band below it, and the verdict follows', async ({ page }) => {
  await open(page);
  await expect(verdict(page)).toHaveText('Inside the specification');
  const narrow = await bandDb(page);
  const handle = page.locator('.band-wide [data-handle="pad"]');
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('bench: wish a handle on the screen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y, { steps: 4 });
  await page.mouse.move(x + 170, y, { steps: 8 });
  await page.mouse.up();
  expect(await bandDb(page)).toBeGreaterThan(narrow + 0.2);
  await expect(verdict(page)).toHaveText(/^Can’t tell/);
  const typed = Number(await linkNamed(page, '5. 20 dB pad').getByLabel('Limits ±').inputValue());
  expect(typed).toBeGreaterThan(0.7);
  await expect(page.locator('.band-wide .band-ghost').first()).toBeVisible();
});

test('the result is copied as text, with the address that opens it', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await readingsOf(page).fill('8 dBm');
  const fragment = await settledFragment(page);
  await page.getByRole('button', { name: copyStrings.button }).click();
  await expect(page.getByText('Copied.')).toBeVisible();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(text).toContain('28.10 dBm +/-0.69 dB');
  expect(text).toMatch(/can't tell/i);
  expect(text).toContain(fragment);
});

test('where the browser refuses to copy, the text stands there selected', async ({ page }) => {
  await open(page);
  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: () => Promise.reject(new Error('no')) },
    });
  });
  await page.getByRole('button', { name: copyStrings.button }).click();
  const area = page.getByLabel(copyStrings.area);
  await expect(area).toBeFocused();
  const selected = await area.evaluate((node: HTMLTextAreaElement) =>
    node.value.slice(node.selectionStart, node.selectionEnd),
  );
  expect(selected).toContain('27.10 dBm +/-0.69 dB');
});

test('a reload keeps the sheet, and its address opens the same sheet elsewhere', async ({
  page,
  context,
}) => {
  await open(page);
  await typeMeasurement(page);
  const fragment = await settledFragment(page);
  const told = await page.locator('.bench-result').innerText();
  await page.reload();
  await awake(page);
  await expect(readingsOf(page)).toHaveValue('-3,1\n-3,0 dBm\n-3.2');
  expect(await page.locator('.bench-result').innerText()).toBe(told);
  const other = await context.newPage();
  await open(other, fragment);
  expect(await other.locator('.bench-result').innerText()).toBe(told);
  await expect(other.getByLabel('Name', { exact: true }).last()).toHaveValue('Second pad');
});

test('what cannot be used is told at its place, kept as typed over a reload, and the last result stays', async ({
  page,
}) => {
  await open(page);
  await page.getByLabel('Nominal level').fill('27 dB');
  const field = page.getByLabel('Nominal level');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveAccessibleDescription(/dB is a ratio/);
  await linkNamed(page, '5. 20 dB pad').getByLabel('Limits ±').fill('lots');
  await expect(page.locator('.bench-problems')).toContainText('2 entries cannot be used yet.');
  expect((await answers(page))[0]).toContain('27.10');
  await settledFragment(page);
  await page.reload();
  await awake(page);
  await expect(page.getByLabel('Nominal level')).toHaveValue('27 dB');
  await expect(linkNamed(page, '5. 20 dB pad').getByLabel('Limits ±')).toHaveValue('lots');
  await page.getByRole('button', { name: '20 dB pad: Amount' }).click();
  await expect(linkNamed(page, '5. 20 dB pad').getByLabel('Limits ±')).toBeFocused();
});

test('a damaged link is told, and what could be read of it is open', async ({ page }) => {
  await open(page);
  await readingsOf(page).fill('8,5 dBm');
  const fragment = await settledFragment(page);
  const damaged = fragment.replaceAll('&', '&amp;').replace('#', '%23').replace('v=3', 'xyz=3');
  await page.goto('about:blank');
  await open(page, `#${damaged}`);
  await expect(page.locator('.address-told')).toContainText('could not be read in full');
  await expect(page.locator('.address-told')).toContainText('xyz');
  await expect(readingsOf(page)).toHaveValue('8,5 dBm');
});

test('an address of a later version is told, and the demonstration stays', async ({ page }) => {
  await open(page, '#t=Later&v=9');
  await expect(page.locator('.address-told')).toContainText('later version');
  await expect(page.getByLabel('Title')).toHaveValue('The club’s hidden transmitter');
});

test('a place on the page in the address does not cost the sheet', async ({ page }) => {
  await open(page);
  await readingsOf(page).fill('8 dBm');
  const fragment = await settledFragment(page);
  await page.evaluate(() => {
    location.hash = '#main';
  });
  await expect.poll(() => page.evaluate(() => location.hash)).toBe(fragment);
  await expect(readingsOf(page)).toHaveValue('8 dBm');
});

test('a hundred links stay usable: the widest are drawn, all are counted', async ({ page }) => {
  const links = Array.from(
    { length: 100 },
    (_, index) => `l${index + 1}n=Part-${index + 1}&l${index + 1}a=0.${10 + index}`,
  );
  await open(page, `#n=27&a=1.5&m=7&l=100&${links.join('&')}&v=1`);
  await expect(page.locator('.link')).toHaveCount(100);
  await expect(page.getByText('12 of 100 parts are drawn')).toBeVisible();
  await expect(page.locator('.band-wide .band-label')).toHaveCount(14);
  await linkNamed(page, '57. Part 57').getByLabel('Limits ±').fill('0.5');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});

test('the announcer speaks the settled result, once', async ({ page }) => {
  await open(page);
  const status = page.locator('p.visually-hidden[role="status"][aria-live]');
  await expect(status).toHaveText('');
  await readingsOf(page).pressSequentially('0', { delay: 20 });
  await readingsOf(page).fill('8 dBm');
  await expect(status).toHaveText(/^28\.10 decibel-milliwatts plus or minus 0\.69 decibels.*Can’t tell/);
});

test('a link that is followed while a change still rests has the last word', async ({ page }) => {
  await open(page);
  await page.getByLabel('Title').fill('At the last moment');
  await page.evaluate(() => {
    location.hash = 't=Third&x=1&v=2';
  });
  await expect(page.getByLabel('Title')).toHaveValue('Third');
  // longer than a change rests before the address follows it
  await page.evaluate(() => new Promise((rested) => setTimeout(rested, 600)));
  await page.reload();
  await awake(page);
  await expect(page.getByLabel('Title'), 'the address has it too').toHaveValue('Third');
});
