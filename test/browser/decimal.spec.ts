import { strings as bench } from '../../src/bench/strings.ts';
import { textFormNames } from '../../src/text/summary/forms.ts';
import { strings as copy } from '../../src/widgets/copy-text/strings.ts';
import { decimalStrings } from '../../src/widgets/parts/decimal-strings.ts';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

test('a decimal comma chosen once holds for texts, fields and handles on every page', async ({ page }) => {
  await page.goto('/examples/club-transmitter/');
  await awake(page);
  const text = page.getByLabel(copy.area);
  const comma = page.getByLabel(decimalStrings.signs.comma);
  await expect(text).toHaveValue(/27\.10 dBm \+\/-0\.69 dB/);
  await comma.check();
  await expect(text).toHaveValue(/27,10 dBm \+\/-0,69 dB/);
  await page.getByLabel(textFormNames.markdown).check();
  await expect(text).toHaveValue(/\*\*.*27,10 dBm ±0,69 dB/);

  await page.goto('/bench/');
  await awake(page);
  const form = page.getByRole('region', { name: bench.form });
  const amount = (place: number) => form.locator('input[id$="amount"]').nth(place);
  await expect(form.getByLabel(decimalStrings.signs.comma)).toBeChecked();
  await expect(amount(0)).toHaveValue('0,02');
  await expect(amount(2)).toHaveValue('0,25');
  await amount(2).fill('0.30');
  await expect(amount(2)).toHaveValue('0.30');
  await expect(amount(0)).toHaveValue('0,02');
  await form.getByLabel(decimalStrings.signs.point).check();
  await expect(amount(0)).toHaveValue('0,02');
});
