import type { Locator, Page } from '@playwright/test';
import { attributeValues } from '../site/links.ts';
import { settled } from './awake.ts';
import { middleOf, openAt, pull, search } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/decibels/a-decibel-is-not-a-percentage/';
const open = (page: Page, query = ''): Promise<void> => openAt(page, LESSON + query);
const rulers = (page: Page) => page.locator('#figure');
const means = (page: Page) => page.locator('#means');
const answer = (part: Locator, index = 0) => part.locator('.answers dt').nth(index);

async function pullEnd(part: Locator, id: string, dx: number): Promise<void> {
  const handle = part.locator(`[data-handle="${id}"]:visible`);
  const { x } = await pull(handle, { x: dx });
  expect(Math.abs((await middleOf(handle)).x - x), 'stays under the pointer').toBeLessThan(9);
}

for (const ruler of ['level', 'power', 'volts']) {
  test(`the end pulled inwards on the ruler of ${ruler} makes the band narrower on all of them`, async ({
    page,
  }) => {
    await open(page);
    await expect(answer(rulers(page), 1)).toHaveText('+25.9/−20.6\u00a0%');
    await pullEnd(rulers(page), ruler, -60);
    expect(await search(page), 'the address waits until the end is let go').toBe('');
    await page.mouse.up();
    await expect.poll(() => search(page)).toMatch(/^\?d=0\.\d+&v=1$/);
    expect(new URL(page.url()).hash, 'whoever is sent it sees the figure').toBe('#figure');
    expect(Number(await page.getByLabel('Half of the band', { exact: true }).inputValue())).toBeLessThan(0.9);
    await expect(answer(rulers(page), 1)).not.toHaveText('+25.9/−20.6\u00a0%');
  });
}

test('a pointer that the browser takes away puts the band back', async ({ page }) => {
  await open(page);
  await pullEnd(rulers(page), 'power', -60);
  await rulers(page).locator('.band-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(answer(rulers(page))).toHaveText('±1.00\u00a0dB');
  expect(await search(page)).toBe('');
});

test('a band that is even in watts is typed in percent and lopsided in decibels', async ({ page }) => {
  await open(page);
  await page.getByLabel('The band is even in').selectOption('watts');
  await page.getByLabel('Half of the band, in percent', { exact: true }).fill('33,3');
  await expect(answer(rulers(page))).toHaveText('+1.25/−1.76\u00a0dB');
  await page.getByLabel('Half of the band, in percent: drag it').press('Home');
  await expect(answer(rulers(page))).toHaveText('±0.00\u00a0dB');
  await expect.poll(() => search(page)).toBe('?ev=w&p=0&v=1');
});

test('a mistake is drawn dashed beside the band', async ({ page }) => {
  await open(page);
  await page.getByLabel('Show beside it').selectOption('samePercent');
  await expect(rulers(page).locator('.band-wide .band-ghost')).toHaveCount(3);
  await expect(answer(rulers(page), 4)).toHaveText('±1.0\u00a0% claimed');
  await page.getByRole('button', { name: 'Back to the prepared band' }).click();
  await expect.poll(() => search(page)).toBe('');
});

test('a reading pulled along the ruler moves both means, by keys too', async ({ page }) => {
  await open(page);
  await expect(answer(means(page), 2)).toHaveText('0.24\u00a0dB apart');
  await pullEnd(means(page), 'third', -90);
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?means\.c=[\d.]+&means\.v=1$/);
  await page.getByLabel('Third reading', { exact: true }).fill('10');
  await expect(answer(means(page), 2)).toHaveText('0.00\u00a0dB apart');
  await page.getByLabel('Third reading: drag it').press('End');
  await expect(answer(means(page), 1)).toHaveText('16.02\u00a0dBm, powers averaged'); // 40 mW, the mean of 10, 10 and 100
});

test('what was typed and is read late does not undo what was changed after it', async ({ page }) => {
  await open(page);
  const { promise: gate, resolve: letThrough } = Promise.withResolvers<void>();
  const asked = page.waitForRequest('**/*.js');
  await page.route('**/*.js', async (route) => {
    await gate;
    await route.continue();
  });
  const field = page.getByLabel('Third reading', { exact: true });
  await field.fill('12');
  await asked; // what reads is fetched when somebody first types
  await page.getByLabel('Third reading: drag it').press('End');
  await expect(field).toHaveValue('20.0');
  const read = page.waitForResponse('**/*.js');
  letThrough();
  await (await read).finished();
  await settled(page);
  await expect(field).toHaveValue('20.0');
  await field.fill('10');
  await expect(answer(means(page), 2)).toHaveText('0.00\u00a0dB apart');
});

const links = attributeValues(pages.find(({ path }) => path === LESSON)?.html ?? '', ['href']).filter(
  (href) => /^\?.*#(figure|means)$/.test(href),
);

test('the lesson leads to states of its figures', () => expect(links.length).toBeGreaterThanOrEqual(10));

for (const href of new Set(links)) {
  test(`${href} opens without a complaint, on another state`, async ({ page }) => {
    await open(page);
    const at = href.slice(href.indexOf('#'));
    const said = await page.locator(`${at} .answers`).innerText();
    await open(page, href);
    await expect(page.locator('main .ruler-widget .caution')).toHaveCount(0);
    expect(await page.locator(`${at} .answers`).innerText()).not.toBe(said);
  });
}

test('on the wall one press changes the band, another the third reading', async ({ page }) => {
  await openAt(page, `/stage${LESSON}#rulers`);
  await page.getByRole('button', { name: 'More by 0.5 decibels' }).click();
  await expect(page.getByLabel('Half of the band', { exact: true })).toHaveValue('1.50');
  await openAt(page, `/stage${LESSON}#average`);
  await page.getByRole('button', { name: 'Less by 1 decibel' }).click();
  await expect(page.getByLabel('Third reading')).toHaveValue('12.0');
});
