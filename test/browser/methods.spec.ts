import { awake } from './awake.ts';
import { drag, openAt } from './reader.ts';
import { expect, test } from './site.ts';

const SCOPE = '/learn/measuring/oscilloscope-across-a-load/';
const DETECTOR = '/learn/measuring/peak-detector/';
const BACK = '/learn/measuring/what-comes-back/';
const answer = '#figure .answers dt';

test('an oscilloscope pulled beyond its bandwidth gives no number, and the address keeps that', async ({
  page,
}) => {
  await openAt(page, `${SCOPE}?f=145&v=1`);
  await expect(page.locator(answer).first()).toHaveText('No number');
  await expect(page.locator('#figure .plot-wide .plot-here')).toHaveCount(0);
  await page.getByRole('textbox', { name: 'Frequency' }).fill('3.58');
  await expect(page.locator(answer).first()).toHaveText('27.07\u00a0dBm ±0.37\u00a0dB');
  await expect(page.locator('#figure .plot-wide .plot-here')).toHaveCount(1);
});

test('a percentage of full scale widens the band that is shown', async ({ page }) => {
  await openAt(page, SCOPE);
  await page.getByLabel('They are of').selectOption('The full screen');
  await page.getByRole('textbox', { name: 'Screen, bottom to top' }).fill('40');
  await expect(page.locator(answer).first()).toHaveText('27.06\u00a0dBm ±0.93\u00a0dB');
});

for (const [path, method] of [
  [SCOPE, 'Oscilloscope across a load'],
  [DETECTOR, 'Peak detector and voltmeter'],
] as const)
  test(`the way from ${path} to the bench opens it with that method and readings`, async ({ page }) => {
    await openAt(page, path);
    await page.getByRole('link', { name: /with the club’s numbers filled in$/ }).click();
    await page.waitForURL('**/bench/#**');
    await awake(page);
    await expect(page.getByRole('radio', { name: method })).toBeChecked();
    await expect(page.getByRole('textbox', { name: 'Frequency' }).first()).toHaveValue('3.58 MHz');
  });

test('a knob pulled along the loss of the line makes the antenna look better', async ({ page }) => {
  await openAt(page, BACK);
  await drag(page.locator('.plot-wide [data-handle="at"]'), { x: 250 });
  const field = page.getByRole('textbox', { name: 'Loss of the line, matched' });
  await expect.poll(async () => Number(await field.inputValue())).toBeGreaterThan(2);
  await expect(page.locator(answer).first()).toHaveText(/^SWR 1\.\d\d at the transmitter$/);
});
