import type { CDPSession, Page } from '@playwright/test';
import { awake } from './awake.ts';
import type { Place } from './reader.ts';
import { expect, test } from './site.ts';

const CLUB = [
  'National standard',
  'Calibration laboratory',
  'The meter that was lent',
  'Mismatch',
  '20 dB pad',
  '3 m of thin coax',
];
const order = (page: Page): Promise<string[]> => page.locator('.link .link-name').allTextContents();

async function open(page: Page): Promise<void> {
  await page.goto('/bench/');
  await awake(page);
}

/** The middle of a grip, by the name of its link. */
async function gripOf(page: Page, name: string): Promise<Place> {
  const grip = page.locator('.links > li', { has: page.getByText(name, { exact: true }) }).locator('.grip');
  await grip.evaluate((node) => node.scrollIntoView({ block: 'center' }));
  return middleOf(page, name);
}

async function middleOf(page: Page, name: string): Promise<Place> {
  const grip = page.locator('.links > li', { has: page.getByText(name, { exact: true }) }).locator('.grip');
  const box = await grip.boundingBox();
  if (!box) throw new Error('bench: wish a grip on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('a link is dragged by its grip to another place, and the list stays under the pointer', async ({
  page,
}) => {
  await open(page);
  const from = await gripOf(page, '20 dB pad');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await expect(page.locator('.links[data-dragging]')).toHaveCount(1);
  expect(Math.abs((await middleOf(page, '20 dB pad')).y - from.y)).toBeLessThan(2);
  const to = await middleOf(page, 'Calibration laboratory');
  await page.mouse.move(from.x, to.y - 8, { steps: 6 });
  await page.mouse.up();
  expect(await order(page)).toEqual([
    'National standard',
    '20 dB pad',
    'Calibration laboratory',
    'The meter that was lent',
    'Mismatch',
    '3 m of thin coax',
  ]);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  expect(await order(page)).toEqual(CLUB);
});

test('Escape gives a drag up, and everything is as it was', async ({ page }) => {
  await open(page);
  const from = await gripOf(page, 'Mismatch');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, from.y + 90, { steps: 4 });
  await expect(page.locator('[data-mark="after"]')).toHaveCount(1);
  await page.keyboard.press('Escape');
  await expect(page.locator('.links[data-dragging]')).toHaveCount(0);
  await page.mouse.up();
  expect(await order(page)).toEqual(CLUB);
  expect(Math.abs((await middleOf(page, 'Mismatch')).y - from.y - 90)).toBeLessThan(2);
});

test('the grip, and the place that a link would go to, are seen in the system’s own colours too', async ({
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await open(page);
  const dots = page.locator('.grip').first();
  expect(await dots.evaluate((grip) => getComputedStyle(grip).backgroundImage)).toContain('gradient');
  const from = await gripOf(page, 'Mismatch');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, from.y + 90, { steps: 4 });
  const mark = page.locator('[data-mark="after"]');
  const line = await mark.evaluate((link) => getComputedStyle(link, '::after').borderBlockStart);
  expect(line).toMatch(/^4px solid/);
  await page.keyboard.press('Escape');
  await page.mouse.up();
});

test.describe('by touch at 320 px', () => {
  test.use({ viewport: { width: 320, height: 480 }, hasTouch: true, isMobile: true });

  /** Puts a finger down and moves it there in steps; what it ends with is the caller's. */
  async function drag(devtools: CDPSession, from: Place, to: Place): Promise<void> {
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
    for (let step = 1; step <= 8; step += 1) {
      const share = step / 8;
      const point = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
      await devtools.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [point] });
    }
  }
  const lift = (devtools: CDPSession, type: 'touchEnd' | 'touchCancel'): Promise<void> =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: [] }).then(() => undefined);

  test('a finger on the grip moves the link', async ({ page }) => {
    await open(page);
    const devtools = await page.context().newCDPSession(page);
    const from = await gripOf(page, 'Calibration laboratory');
    await drag(devtools, from, { x: from.x, y: from.y + 80 });
    await expect(page.locator('[data-mark="after"]')).toHaveCount(1);
    await lift(devtools, 'touchEnd');
    await expect.poll(() => order(page)).not.toEqual(CLUB);
    expect((await order(page)).indexOf('Calibration laboratory')).toBeGreaterThan(1);
  });

  test('a cancelled finger leaves the order as it was', async ({ page }) => {
    await open(page);
    const devtools = await page.context().newCDPSession(page);
    const from = await gripOf(page, 'Calibration laboratory');
    await drag(devtools, from, { x: from.x, y: from.y + 80 });
    await lift(devtools, 'touchCancel');
    await expect(page.locator('.links[data-dragging]')).toHaveCount(0);
    expect(await order(page)).toEqual(CLUB);
  });

  test('a finger beside the grip scrolls the page', async ({ page }) => {
    await open(page);
    const devtools = await page.context().newCDPSession(page);
    const { y } = await gripOf(page, 'Calibration laboratory');
    const before = await page.evaluate(() => scrollY);
    await drag(devtools, { x: 60, y }, { x: 60, y: y - 120 });
    await lift(devtools, 'touchEnd');
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before + 40);
    expect(await order(page)).toEqual(CLUB);
  });

  test('everything in the form that is tapped is 44 px high, and nothing is wider than the screen', async ({
    page,
  }) => {
    await open(page);
    const small = await page
      .locator(
        '.bench-form :is(button, input:not([type="radio"], [type="checkbox"]), select, textarea, summary, .grip, .switch, .method)',
      )
      .evaluateAll((nodes) =>
        nodes
          .filter((node) => node.getClientRects().length > 0 && node.getBoundingClientRect().height < 43.5)
          .map((node) => node.outerHTML.slice(0, 80)),
      );
    expect(small).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  });
});
