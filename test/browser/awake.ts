import type { Page } from '@playwright/test';

/** Longest that an island or what follows it may take, in ms. */
const patience = 30_000;
/** Most times that a pointer is moved to be noticed. */
const MOST_TURNS = 200;

/**
 * Waits until the fonts are there and every island that is laid out listens. Islands that wake when seen are scrolled to, one
 * after the other; one in a part that is not shown (another slide of a stage) sleeps until it is. Then the page is back at its
 * top (or at the fragment's place). All of it goes on within the page: a question from outside costs more than an answer.
 */
export async function awake(page: Page): Promise<void> {
  const waits = await page.evaluate(wakeIslands, patience);
  // the bench answers once somebody is there: a pointer that moves, and goes on moving until it is noticed
  for (let turn = 0; waits && turn < MOST_TURNS && (await page.evaluate(isWaiting)); turn++) {
    await page.mouse.move(0, turn % 2);
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 50)));
  }
  await settled(page);
}

/** Waits until the page has drawn what was last asked of it, with what it had to fetch or to try for that. */
export const settled = (page: Page): Promise<void> => page.evaluate(settle, patience);

/** Whether there is a part that waits for a reader. */
const isWaiting = (): boolean => document.querySelector('.late:not(.woken)') !== null;

/** Wakes the islands; answers whether there is a part that waits for a reader. */
async function wakeIslands(most: number): Promise<boolean> {
  await document.fonts.ready;
  const from = scrollY;
  const until = performance.now() + most;
  // an island draws nothing of its own (display: contents): its first child is what comes into view
  const drawn = (island: Element): Element => island.firstElementChild ?? island;
  const isLaidOut = (island: Element): boolean => drawn(island).getClientRects().length > 0;
  for (;;) {
    const island = [...document.querySelectorAll('astro-island[ssr]')].find(isLaidOut);
    if (!island) break;
    drawn(island).scrollIntoView({ block: 'center' });
    // awake, or hidden meanwhile by the script of a stage
    while (island.hasAttribute('ssr') && isLaidOut(island)) {
      if (performance.now() > until) throw new Error(`asleep: ${island.getAttribute('component-url')}`);
      await new Promise(requestAnimationFrame);
    }
  }
  scrollTo(0, from);
  // this runs in the page, where nothing of this file is at hand
  return document.querySelector('.late:not(.woken)') !== null;
}

/** Waits for what follows the islands: parts that are fetched, what an address carries, and the drawing of it with its effects. */
async function settle(most: number): Promise<void> {
  const until = performance.now() + most;
  const frames = async (): Promise<void> => {
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
  };
  const waitFor = async (told: string, isDone: () => boolean): Promise<void> => {
    while (!isDone()) {
      if (performance.now() > until) throw new Error(`not done in time: ${told}`);
      await new Promise(requestAnimationFrame);
    }
  };
  await waitFor('parts that are fetched', () => document.querySelector('.late:not(.woken)') === null);
  const waiting = 'astro-island:not([ssr]) .in-turn:not([data-woken])';
  await waitFor('parts that wake in turn', () => document.querySelector(waiting) === null);
  await frames();
  await waitFor('what the address carries', () => !document.documentElement.hasAttribute('data-opening'));
  await frames();
}
