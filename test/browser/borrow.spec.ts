import type { Page } from '@playwright/test';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const answers = (page: Page): Promise<string[]> => page.locator('.answers dt').allInnerTexts();
const field = (page: Page, name: string) => page.getByLabel(name, { exact: true });

test('readings in turn give a correction, an address that opens them again, and an instrument that is kept', async ({
  page,
}) => {
  await openAt(page, '/bench/borrow/');
  expect(await answers(page)).toEqual([
    '−0.75\u00a0dB ±0.30\u00a0dB',
    '43\u00a0% from the lender',
    '7.15\u00a0dBm ±0.38\u00a0dB',
  ]);

  // a table for four columns pasted where readings are expected, with decimal commas and a heading
  await field(page, 'Places differ by').selectOption('frequency');
  await field(page, 'Readings in turn').fill(
    'MHz\tlent\tmine\tlent\n3,58\t5,00\t5,50\t5,02\n3,58\t5,02\t5,53\t5,00\n14,2\t5,00\t5,91\t5,02\n14,2\t5,02\t5,94\t5,00',
  );
  await expect(page.locator('#field-place1-readings-problem')).toContainText('an odd number is expected');
  await expect(page.locator('.bench-problems')).toContainText(
    'Figure and numbers are those of the last entries',
  );
  await page.getByRole('button', { name: 'Make 2 places of it' }).click();
  await expect(page.getByRole('group', { name: 'Place 2' }).getByLabel('Frequency')).toHaveValue('14,2');
  await field(page, 'It shows').fill('5,6');
  await expect(page.locator('#field-laterAt-problem')).toContainText('a frequency is expected');
  await field(page, 'At this frequency').fill('145 MHz');
  await expect(page.locator('#field-laterAt-problem')).toContainText('beyond that nothing has been measured');
  await field(page, 'At this frequency').fill('14.2');
  // 5.60 less 0.915 dB
  await expect.poll(async () => (await answers(page)).at(-1)).toMatch(/^4\.6[89]\sdBm ±0\.3\d\sdB$/);
  await expect(page.locator('.bench-problems')).toHaveCount(0);

  // the address opens the same elsewhere
  await expect.poll(() => page.evaluate(() => location.hash)).toMatch(/ba=14\.2&.*v=1$/);
  const [address, said] = [page.url(), await answers(page)];
  const other = await page.context().newPage();
  await openAt(other, address);
  await expect.poll(() => answers(other)).toEqual(said);
  await other.close();

  // kept as an instrument
  await page.getByRole('button', { name: 'Choose an instrument' }).click();
  await field(page, 'Its name').fill('');
  await expect(page.getByRole('button', { name: 'Save the calibration' })).toBeDisabled();
  await field(page, 'Its name').fill('The blue meter');
  await page.getByRole('button', { name: 'Save the calibration' }).click();
  await expect(page.getByText('Saved: “The blue meter” now has this calibration.')).toBeVisible();
  await expect(field(page, 'Instrument').locator('option')).toHaveText(['a new one', 'The blue meter']);

  // undo goes back to what was there at first
  const undo = page.getByRole('button', { name: 'Undo' });
  while (await undo.isEnabled()) await undo.click();
  await expect.poll(async () => (await answers(page))[0]).toBe('−0.75\u00a0dB ±0.30\u00a0dB');
  await expect.poll(() => page.evaluate(() => location.hash)).toBe('');

  // a pad at DC in its place, and too much voltage for it
  await page.getByRole('button', { name: 'A pad at DC' }).click();
  // it begins anew at its head, which is in sight
  await expect(page.locator('#field-kind')).toBeFocused();
  await expect(page.locator('#field-kind')).toBeInViewport();
  await expect.poll(async () => (await answers(page))[0]).toBe('10.006\u00a0dB ±0.045\u00a0dB');
  await field(page, 'Rated power').fill('100 mW');
  await expect(page.locator('.bench-result .caution')).toContainText('it is too much');
});
