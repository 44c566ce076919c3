import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

/** What Letter, the shorter of both papers, leaves between margins of a centimetre, in CSS pixels. */
const paper = { width: 718, height: 980 };

test('each table fits a sheet of paper, and another resistance changes its volts and its caption', async ({
  page,
}) => {
  await page.setViewportSize(paper);
  await openAt(page, '/reference/tables/');
  const level = page.getByRole('row', { name: /^0 / });
  await expect(level.filter({ hasText: 'mW' })).toContainText('224\u00a0mV');
  await page.getByRole('textbox', { name: 'Resistance' }).fill('600');
  await expect(level.filter({ hasText: 'mW' })).toContainText('775\u00a0mV');
  await expect(page.getByText(/^Levels, powers/)).toContainText('600\u00a0Ω');
  await expect(page).toHaveURL(/\?r=600&v=1#figure$/);
  await page.emulateMedia({ media: 'print' });
  const heights = await page
    .locator('.print-sheet')
    .evaluateAll((sheets) => sheets.map((sheet) => sheet.getBoundingClientRect().height));
  expect(heights).toHaveLength(8);
  expect(Math.max(...heights)).toBeLessThan(paper.height);
  expect(Math.min(...heights)).toBeGreaterThan(100);
});
