import { encodeEntries } from '../../src/bench/address/address.ts';
import { demonstrationSheets } from '../../src/compare/demonstration.ts';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

test('pasted sheets are compared, what they share can be marked, and the address brings it all back', async ({
  page,
}) => {
  await page.goto('/bench/compare/');
  await awake(page);
  const answers = page.locator('.answers dt');
  await expect(answers).toHaveText(['+0.52\u00a0dB', 'They agree', '26.70\u00a0dBm ±0.37\u00a0dB']);

  // not shared, the transmitter's spread widens the difference
  await page.getByLabel('“Spread of the transmitter”, in 2 sheets').uncheck();
  await expect(page.locator('.answers dd').nth(1)).toContainText('±0.82\u00a0dB');
  await expect(page.getByText('They share nothing that you marked')).toBeVisible();

  // a third sheet, first damaged, then whole, as a whole address; it contradicts the others
  const [club] = demonstrationSheets();
  const points = club?.points.map((point) => ({ ...point, readings: '2 dBm' })) ?? [];
  const third = (club && encodeEntries({ ...club, title: 'Another evening', points })) ?? '';
  await page.getByRole('button', { name: 'Add a sheet' }).click();
  const field = page.getByRole('group', { name: 'Sheet 3' }).getByLabel('Address of the sheet');
  await field.fill('https://club.example/bench/');
  await expect(page.locator('#field-sheet3-address-problem')).toContainText('This is no address of a sheet');
  await expect(answers).toHaveCount(3);
  await field.fill(`https://club.example/bench/#${third}`);
  await expect(page.getByRole('group', { name: 'Another evening' })).toBeVisible();
  await expect(answers).toHaveText(['They do not agree', 'No common value']);
  await expect(page.locator('.places-table tbody tr')).toHaveCount(3);

  // the address opens the same elsewhere, once the whole sheet is in it and not only the damaged one
  await expect.poll(() => page.evaluate(() => location.hash)).toMatch(/s3a=https.*_23-zip_3d-/);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await awake(other);
  await expect(other.locator('.answers dt')).toHaveText(['They do not agree', 'No common value']);
  await other.close();

  await page.getByRole('button', { name: 'Take sheet 3 away' }).click();
  await expect(answers).toHaveCount(3);
  await page.getByRole('button', { name: 'Two empty rows' }).click();
  await expect(page.locator('.bench-result .caution')).toHaveText('Two usable sheets are needed to compare.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(answers).toHaveCount(3);

  // one that is kept in this browser
  await page.getByRole('button', { name: 'Take a sheet that is kept in this browser' }).click();
  await expect(page.getByText('No sheet is kept in this browser yet.')).toBeVisible();
});
