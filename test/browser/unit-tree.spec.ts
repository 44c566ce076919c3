import { openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const PAGE = '/learn/traceability/what-a-watt-is-made-of/';

test('a press on a box unfolds it, a button in the table folds it by key, and the address follows', async ({
  page,
}) => {
  await openAt(page, PAGE);
  const tree = page.locator('.tree-live .plot-wide');
  await expect(tree.locator('[data-unit]')).toHaveCount(3);
  await tree.locator('[data-unit="joule"]').click();
  await expect(tree.locator('[data-unit="newton"]')).toBeVisible();
  await expect(tree.locator('text', { hasText: 'metre' })).toHaveCount(1);
  await expect.poll(() => search(page)).toBe('?uj=o&v=1');
  const fold = page.getByRole('button', { name: 'Fold joule', exact: true });
  await expect(fold).toHaveAttribute('aria-expanded', 'true');
  await fold.press('Enter');
  await expect(tree.locator('[data-unit]')).toHaveCount(3);
  await expect(page.getByRole('button', { name: 'Unfold joule', exact: true })).toBeFocused();
  await page.getByRole('button', { name: 'Unfold kilogram', exact: true }).click();
  await expect(tree.locator('[data-unit="kilogram"]'), 'with all on the way to it').toBeVisible();
  await page.getByRole('button', { name: 'Unfold everything' }).click();
  await expect(tree.locator('[data-unit]')).toHaveCount(6);
  await expect(tree.locator('text', { hasText: 'caesium frequency' })).toHaveCount(1);
  await page.getByRole('textbox', { name: 'Level', exact: true }).fill('1 W');
  await expect(page.locator('#figure .answers dt').nth(1)).toHaveText('1.00\u00a0W, 0.85 to 1.17');
  await expect.poll(() => search(page)).toBe('?uj=o&un=o&uk=o&um=o&us=o&l=30&v=1');
});

test('an address opens the tree as it was kept, and the mistake that it invites to shows its cost', async ({
  page,
}) => {
  await openAt(page, `${PAGE}?u=a&cu=c&v=1#figure`);
  await expect(page.locator('#figure .answers dd').nth(2)).toContainText('heat the load with 1.00\u00a0W');
  await expect(page.locator('.tree-live .plot-wide [data-unit]')).toHaveCount(2);
  await expect(page.locator('#figure .caution')).toHaveCount(0);
});

test('on a phone a tap unfolds a row of the list', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openAt(page, PAGE);
  const list = page.locator('.tree-live .plot-narrow');
  await list.locator('[data-unit="second"]').click();
  await expect(list.locator('text', { hasText: 'caesium frequency' })).toHaveCount(1);
});

test('on the wall one press unfolds one unit more, and another slide counts charges', async ({ page }) => {
  await openAt(page, `/stage${PAGE}#tree`);
  const tree = page.locator('.plot-stage');
  await expect(tree.locator('text')).toHaveCount(3);
  await page.getByRole('button', { name: 'More by 1', exact: true }).click();
  await expect(tree.locator('text')).toHaveCount(5);
  await openAt(page, `/stage${PAGE}#yours`);
  const charges = page.locator('#yours .stage-answer');
  const usual = await charges.innerText();
  await page.locator('#yours').getByRole('button', { name: 'More by 3 decibels' }).click();
  await expect(charges).not.toHaveText(usual);
});
