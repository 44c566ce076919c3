import { openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const READINGS = '/learn/stacking/a-few-readings/';
const nb = '\u00a0';

test('one reading has no band, and one with experience has', async ({ page }) => {
  await openAt(page, READINGS);
  const answers = page.locator('#figure .answers dt');
  await expect(answers.nth(0)).toHaveText(`26.86${nb}dBm ±0.41${nb}dB`);
  await page.getByRole('textbox', { name: 'Readings taken' }).fill('1');
  await expect(answers.nth(1)).toHaveText('No band');
  await page.getByLabel('Scatter known from').selectOption('Five evenings before');
  await expect(answers.nth(0)).toHaveText(`26.84${nb}dBm ±0.23${nb}dB`);
  await page.getByRole('textbox', { name: 'Limits that all of them share' }).fill('much');
  await expect(page.getByText(/a limit is expected/).first()).toBeVisible();
  await expect.poll(() => search(page)).toBe('?n=1&kn=p&v=1');
});
