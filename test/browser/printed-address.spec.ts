import { expect, pages, test } from './site.ts';

const withCode = pages.filter(({ html }) => html.includes('data-code'));
/** A CSS millimetre in pixels. */
const MM = 96 / 25.4;

test('each lesson and each example has an address to print', () => {
  expect(withCode.length).toBeGreaterThanOrEqual(30);
});

for (const { path } of [withCode[0], withCode.at(-1)].filter((page) => page !== undefined)) {
  test(`the address of ${path} stands on paper as words and as a code for a camera, and not on the screen`, async ({
    page,
  }) => {
    await page.goto(path);
    const printed = page.locator('.printed-address');
    await expect(printed).toBeHidden();
    await page.emulateMedia({ media: 'print' });
    await expect(printed).toBeVisible();
    const canonical = await page.locator('link[rel="canonical"]').getAttribute('href');
    await expect(printed).toContainText(canonical ?? 'no canonical address');
    const box = await printed.locator('svg').boundingBox();
    // a phone reads modules of half a millimetre and more (common practice); the largest code here has 45 with its margin
    expect(box?.width).toBeGreaterThan(30 * MM);
    expect(box?.height).toBeCloseTo(box?.width ?? 0, 0);
    const colours = await printed.locator('path').evaluate((path) => getComputedStyle(path).fill);
    expect(colours).toBe('rgb(0, 0, 0)');
  });
}
