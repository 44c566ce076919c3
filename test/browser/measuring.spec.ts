import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { drag, openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const VERDICT = '/learn/measuring/inside-outside-cant-tell/';
const SPEND = '/learn/measuring/where-to-spend/';
const BORROWED = '/learn/measuring/borrowing-a-calibration/';

const answers = (page: Page) => page.locator('#figure .answers dt');

/** Pulls the knob of the wide figure along, by so many pixels. */
const pullKnob = (page: Page, by: number): Promise<void> =>
  drag(page.locator('.plot-wide [data-handle="at"]'), { x: by });

test('a reading pulled past the limit is first in doubt and then outside, and the address follows', async ({
  page,
}) => {
  await openAt(page, VERDICT);
  await expect(answers(page).first()).toHaveText('Can’t tell');
  await pullKnob(page, 200);
  await expect(answers(page).first()).toHaveText('Outside');
  const field = page.getByRole('textbox', { name: 'Measured level' });
  const reading = Number(await field.inputValue());
  expect(reading).toBeGreaterThan(29.2);
  await expect.poll(() => search(page)).toBe(`?re=${reading}&v=1`);
  await pullKnob(page, -330);
  await expect(answers(page).first()).toHaveText('Inside');
});

test('another rule gives another verdict on the same reading, and shows the number that it has', async ({
  page,
}) => {
  await openAt(page, VERDICT);
  const rule = page.getByLabel('Rule', { exact: true });
  await rule.selectOption({ index: 0 });
  await expect(answers(page).first()).toHaveText('Inside');
  await expect(page.getByRole('textbox', { name: 'Guard band, as a multiple of U' })).toHaveCount(0);
  await rule.selectOption({ index: 2 });
  await expect(answers(page).first()).toHaveText('Can’t tell');
  await page.getByRole('textbox', { name: 'Probability asked for' }).fill('80');
  await expect(answers(page).first()).toHaveText('Inside');
});

test('an example of the standard opens with its numbers from the page of checks', async ({ page }) => {
  await page.goto('/reference/checks/conformity/');
  await page.locator('#jcgm106-container a').click();
  await page.waitForURL('**/inside-outside-cant-tell/?it=c**');
  await awake(page);
  await expect(answers(page).nth(1)).toHaveText('98.9\u00a0% within');
  await expect(page.getByRole('textbox', { name: 'Bursts at, in kPa' })).toHaveValue('509.7');
});

test('a better pad earns the verdict, a better coax does not', async ({ page }) => {
  await openAt(page, SPEND);
  await expect(answers(page).first()).toHaveText('Can’t tell: ±0.71\u00a0dB');
  await page.getByRole('textbox', { name: 'The thin coax, limits' }).fill('0');
  await expect(answers(page).first()).toHaveText('Can’t tell: ±0.70\u00a0dB');
  await pullKnob(page, -200);
  await expect(answers(page).first()).toContainText('Inside');
  await expect(answers(page).nth(2)).toHaveText('Nothing to buy');
});

test('what is looked at follows the choice: readings are counted along the axis', async ({ page }) => {
  await openAt(page, SPEND);
  await page.getByLabel('Spend on').selectOption('More readings');
  await expect(page.locator('.plot-wide')).toContainText('number of readings');
  await pullKnob(page, 150);
  const count = page.getByRole('textbox', { name: 'Number of readings' });
  await expect.poll(async () => Number(await count.inputValue())).toBeGreaterThan(6);
});

test('a later reading beyond the levels that were compared gets no correction', async ({ page }) => {
  await openAt(page, BORROWED);
  await expect(answers(page).first()).toContainText('Correction');
  await pullKnob(page, 290);
  await expect(answers(page).first()).toHaveText('No correction');
  await expect(page.locator('.plot-wide .plot-here')).toHaveCount(0);
});

test('the thermometer of the standard has fields of its own, and its print', async ({ page }) => {
  await openAt(page, `${BORROWED}?it=t&v=1`);
  await expect(answers(page).first()).toHaveText('\u22120.1494\u00a0°C, u = 0.0041\u00a0°C');
  await page.getByRole('textbox', { name: 'The line’s height is taken at' }).fill('24.0085');
  await expect(answers(page).nth(1)).toContainText('\u22120.1625');
  await expect(page.getByRole('textbox', { name: 'Our meter shows, later' })).toHaveCount(0);
});
