import type { Locator, Page } from '@playwright/test';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const shelf = (page: Page): Locator => page.locator('.instruments > li');
const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });
const kept = (page: Page): Promise<void> =>
  expect(page.getByText('All of it is kept in this browser.')).toBeVisible();
/** The fragment of the address once it is another one: it follows a change a breath later. */
const hashAfter = async (page: Page, before: string): Promise<string> => {
  await page.waitForFunction((old) => location.hash !== old, before);
  return page.evaluate(() => location.hash);
};
const entry = (page: Page, name: string): Locator =>
  shelf(page).filter({ has: page.getByRole('heading', { name }) });

test('an instrument is added, stated by its certificate, kept, doubled, deleted and brought back', async ({
  page,
}) => {
  await openAt(page, '/bench/instruments/');
  await expect(page.getByText('Nothing is kept yet.')).toBeVisible();
  await page.getByLabel('Kind of what you add').selectOption('pad');
  await button(page, 'Add').click();
  await expect(page.getByLabel('Name', { exact: true })).toBeFocused();
  await page.keyboard.type('Pad B');
  await page.getByLabel('Nominal loss in dB').fill('10 dB');
  await page.getByLabel('Limits ±').fill('0,5');
  await expect(page.getByText(/^It states: loss 10\sdB; ±0\.5\sdB, limits \(data sheet\)\.$/)).toBeVisible();

  await page.getByLabel('A calibration: correction, U and drift since').check();
  await page.getByLabel('Corrections', { exact: true }).selectOption('frequency');
  const table = page.getByLabel('Corrections, line by line');
  await table.fill('MHz\tdB\tdB\n3,5\t0,12\t0,10\n28\tabc\t0,1');
  await expect(table).toHaveAccessibleDescription(/Line 3: “abc” is not a number/);
  await table.fill('MHz\tdB\tdB\n3,5\t0,12\t0,10\n28\t0,30\t0,1');
  await expect(table).not.toHaveAttribute('aria-invalid', 'true');
  const day = page.getByLabel('Calibrated on');
  await expect(day).toHaveAccessibleDescription(/the day is expected as 2026-05-09/);
  await day.fill('2026-02-30');
  await expect(day).toHaveAccessibleDescription(/is no day/);
  await day.fill('2020-02-29');
  await page.getByLabel('Again after, in months').fill('12');
  await expect(
    entry(page, 'Pad B').getByText(/older than the 12 months you set, which ended on 2021-02-28/),
  ).toBeVisible();
  await kept(page);

  await openAt(page, '/bench/instruments/');
  await expect(shelf(page)).toHaveCount(1);
  await expect(
    entry(page, 'Pad B').getByText(/corrections at 2 frequencies, at most U 0\.1\sdB/),
  ).toBeVisible();
  await button(page, 'Duplicate: Pad B').click();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Pad B, again');
  await expect(page.getByLabel('Calibrated on')).toHaveValue('');
  await button(page, 'Delete: Pad B').click();
  await expect(shelf(page)).toHaveCount(1);
  const undo = button(page, 'Undo: bring it back');
  await expect(undo).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(shelf(page)).toHaveCount(2);
  await expect(button(page, 'Edit: Pad B')).toBeFocused();
  await kept(page);
  await openAt(page, '/bench/instruments/');
  await expect(shelf(page).locator('h3')).toHaveText(['Pad B', 'Pad B, again']);
});

test('two tabs that edit one instrument do not overwrite each other', async ({ page, context }) => {
  await openAt(page, '/bench/instruments/');
  await button(page, 'Add').click();
  await page.getByLabel('Name', { exact: true }).fill('Meter');
  await kept(page);
  const other = await context.newPage();
  await openAt(other, '/bench/instruments/');
  await button(other, 'Edit: Meter').click();
  await other.getByLabel('Notes', { exact: true }).fill('from the other tab');
  await kept(other);
  await expect(page.getByLabel('Notes', { exact: true })).toHaveValue('from the other tab');
  await page.getByLabel('Notes', { exact: true }).fill('from the first');
  await kept(page);
  await expect(other.getByLabel('Notes', { exact: true })).toHaveValue('from the first');
});

test('a sheet takes an instrument from the shelf, complete in itself, and warns when it is too old', async ({
  page,
}) => {
  await openAt(page, '/bench/instruments/');
  await button(page, 'Put the invented set on your shelf').click();
  await expect(shelf(page)).toHaveCount(7);
  await expect(entry(page, 'Bench oscilloscope').locator('.problem')).toContainText('24 months');
  await kept(page);

  await openAt(page, '/bench/');
  const pad = page.getByRole('group', { name: '5. 20 dB pad' });
  await pad.getByText('From your instruments').click();
  const choice = pad.getByLabel('Instrument', { exact: true });
  await choice.selectOption({ label: 'Multimeter, DC volts' });
  await expect(pad.getByText('unit that this method has no reading in')).toBeVisible();
  await expect(pad.getByRole('button', { name: /^State the link/ })).toBeDisabled();
  await choice.selectOption({ label: 'Pad A, 20 dB, A' });
  const before = await page.evaluate(() => location.hash);
  await pad.getByRole('button', { name: /^State the link/ }).click();

  const taken = page.getByRole('group', { name: '5. Pad A, 20 dB' });
  await expect(taken.getByLabel('Loss in dB')).toHaveValue('20.07');
  await expect(taken.getByLabel('U', { exact: true })).toHaveValue('0.1');
  await expect(
    page.getByRole('group', { name: '6. Pad A, 20 dB: drift since its calibration' }),
  ).toBeVisible();
  // 7 dBm behind 20.07 dB and 0.1 dB of coax
  await expect(page.locator('.running p').first()).toContainText(/27\.17\sdBm/);
  await expect(taken.locator('.link-age')).toContainText('Calibrated on 2026-04-18');
  await expect(taken.locator('.link-age')).not.toHaveClass(/problem/);

  // the day of the measurement counts, not today
  const withPad = await hashAfter(page, before);
  await page.getByLabel('When', { exact: true }).fill('2031-01-01, evening');
  await expect(taken.locator('.link-age')).toHaveClass(/problem/);
  await expect(taken.locator('.link-age')).toContainText('older than the 24 months you set');

  // it comes back with the address, and is the sheet's own again once its statement is changed
  await hashAfter(page, withPad);
  const address = await page.evaluate(() => location.pathname + location.hash);
  await page.goto('about:blank');
  await openAt(page, address);
  await expect(taken.locator('.link-age')).toContainText('older than the 24 months you set');
  await taken.getByLabel('U', { exact: true }).fill('0.2');
  await expect(taken.locator('.link-age')).toHaveCount(0);
});
