import type { CDPSession, Page } from '@playwright/test';
import type { BuiltPage } from '../site/pages.ts';
import { awake } from './awake.ts';
import { expect, pages, test } from './site.ts';
import { hasFigures } from './visit/visit.ts';

test.use({ viewport: { width: 320, height: 480 }, hasTouch: true, isMobile: true });

interface Place {
  readonly x: number;
  readonly y: number;
}

const steps = 6;
const stepPx = 20;

/** Swipes with one finger from a place on the screen, towards where the page goes on; answers how far the page went, in pixels. */
async function swipe(page: Page, devtools: CDPSession, { x, y }: Place): Promise<number> {
  const from = await page.evaluate(() => scrollY);
  const room = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight - scrollY);
  const sign = room > steps * stepPx ? -1 : 1;
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  for (let step = 1; step <= steps; step += 1) {
    const touchPoints = [{ x, y: y + sign * step * stepPx }];
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints });
  }
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  // the page follows the finger in the next frames
  await page
    .waitForFunction((top) => Math.abs(scrollY - top) > 40, from, { timeout: 5000 })
    .catch(() => undefined);
  return Math.abs((await page.evaluate(() => scrollY)) - from);
}

/** Tables and formulas that may be wider than the screen, the first few of a page: the rest are made alike. */
const few = 4;

/** That a finger on each figure scrolls the page. */
async function scrollsOverFigures(page: Page, devtools: CDPSession): Promise<void> {
  const figures = await page.locator('main svg[role="img"]:visible').all();
  expect(figures.length).toBeGreaterThan(0);
  for (const figure of figures) {
    for (const share of [0.25, 0.5, 0.75]) {
      await figure.evaluate((node) => node.scrollIntoView({ block: 'center' }));
      const box = await figure.boundingBox();
      if (!box) throw new Error('touch: wish a figure with a box');
      const place = { x: box.x + share * box.width, y: box.y + box.height / 2 };
      expect(await swipe(page, devtools, place), `figure, at ${share} of the width`).toBeGreaterThan(40);
    }
  }
}

/** That a finger on what is wider than the screen scrolls the page. */
async function scrollsOverWide(page: Page, devtools: CDPSession): Promise<void> {
  for (const wide of (await page.locator('main .scroll:visible').all()).slice(0, few)) {
    await wide.evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const box = await wide.boundingBox();
    if (!box) throw new Error('touch: wish a box that scrolls');
    // a tall table is met in the middle of the screen, wherever its own middle lies
    const place = { x: box.x + box.width / 2, y: 240 };
    expect(await swipe(page, devtools, place), 'what is wider than the screen').toBeGreaterThan(40);
  }
}

/** The stage shows one step at a time and has nothing to scroll to. */
const hasFigureToScroll = (built: BuiltPage): boolean =>
  hasFigures(built) && !built.path.startsWith('/stage/');
const hasWide = ({ html }: BuiltPage): boolean => /class="scroll[ "]/.test(html);

for (const built of pages.filter((each) => hasFigureToScroll(each) || hasWide(each))) {
  test(`a finger scrolls ${built.path} over each figure and what is wider than the screen`, async ({
    page,
  }) => {
    await page.goto(built.path);
    await awake(page);
    const devtools = await page.context().newCDPSession(page);
    if (hasFigureToScroll(built)) await scrollsOverFigures(page, devtools);
    if (hasWide(built)) await scrollsOverWide(page, devtools);
  });
}
