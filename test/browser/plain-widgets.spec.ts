import { attributeValues } from '../site/links.ts';
import { awake } from './awake.ts';
import { drag, openAt, search } from './reader.ts';
import { expect, pages, test } from './site.ts';

const RULES = '/learn/traceability/measuring-is-comparing/';
const METER = '/learn/traceability/calibration-changes-nothing/';

/** The states that a lesson invites to, as its links say. */
const invitations = (path: string): readonly string[] => {
  const html = pages.find((page) => page.path === path)?.html ?? '';
  return [...new Set(attributeValues(html, ['href']).filter((href) => href.startsWith('?')))];
};

test('each of the two lessons invites to states of its figure', () => {
  for (const path of [RULES, METER]) expect(invitations(path).length, path).toBeGreaterThan(2);
});

for (const path of [RULES, METER])
  for (const href of invitations(path))
    test(`the invitation of ${path} to ${href} opens the figure in that state`, async ({ page }) => {
      await openAt(page, path);
      const usual = await page.locator('#figure .answers').innerText();
      await page.locator(`a[href="${href}"]`).first().click();
      await page.waitForURL(`**${href}`);
      await awake(page);
      await expect(page.locator('#figure .caution')).toHaveCount(0);
      await expect(page.locator('#figure .answers')).not.toHaveText(usual);
      await expect(page.locator('#figure .plot-wide')).toBeInViewport();
    });

test('the knob on the axis moves the length with the pointer, and the address follows', async ({ page }) => {
  await openAt(page, RULES);
  await drag(page.locator('.plot-wide [data-handle="at"]'), { x: 200 });
  const field = page.getByRole('textbox', { name: 'Length, as both read it' });
  await expect.poll(async () => Number(await field.inputValue())).toBeGreaterThan(900);
  const length = await field.inputValue();
  await expect.poll(() => search(page)).toBe(`?le=${length}&v=1`);
});

test('a length may be typed in metres', async ({ page }) => {
  await openAt(page, RULES);
  await page.getByRole('textbox', { name: 'Length, as both read it' }).fill('1.5 m');
  await expect(page.locator('#figure .answers dt').first()).toHaveText('+1.50\u00a0mm: it does not fit');
});

test('using the table takes the error away and leaves the band', async ({ page }) => {
  await openAt(page, METER);
  await page.getByLabel('The table of corrections').selectOption('Is used: the correction is added');
  await expect(page.locator('#figure .answers dt').first()).toHaveText('\u221212.75\u00a0dBm ±0.13\u00a0dB');
  await page.getByRole('textbox', { name: 'Months since its calibration' }).fill('36');
  await expect(page.locator('#figure .answers dt').first()).toHaveText('\u221212.75\u00a0dBm ±0.37\u00a0dB');
});

test('the knob under the bar makes the limits wider, and the root of three goes along', async ({ page }) => {
  await openAt(page, '/learn/stacking/what-a-tolerance-says/');
  await drag(page.locator('.plot-wide [data-handle="at"]'), { x: 120 });
  const field = page.getByRole('textbox', { name: 'The number behind plus-minus' });
  await expect.poll(async () => Number(await field.inputValue())).toBeGreaterThan(0.6);
  const limit = Number(await field.inputValue());
  const u = (limit / Math.sqrt(3)).toFixed(2);
  await expect(page.locator('#figure .answers dt').first()).toHaveText(`u = ${u}\u00a0dB`);
});

test('eight pads typed: the guarantee is there at once, and what most rows do is fetched', async ({
  page,
}) => {
  await openAt(page, '/learn/stacking/worst-case/');
  await page.getByRole('textbox', { name: 'Pads in a row' }).fill('8');
  const answers = page.locator('#figure .answers dt');
  await expect(answers.nth(0)).toHaveText('±4.3\u00a0dB');
  await expect(answers.nth(1)).toHaveText('95 % within ±1.7\u00a0dB');
  await page.getByLabel('What the meter’s paper states').selectOption('U with k = 2');
  await expect(answers.nth(0)).toHaveText('±4.0\u00a0dB and no end');
});
