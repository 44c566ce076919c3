import type { ElementHandle, Page } from '@playwright/test';

/**
 * Waits until the fonts are there and every island that is laid out listens. Islands that wake when seen are scrolled to, one
 * after the other; one in a part that is not shown (another slide of a stage) sleeps until it is. Then the page is back at its
 * top (or at the fragment's place).
 */
export async function awake(page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  const from = await page.evaluate(() => scrollY);
  for (;;) {
    // an island draws nothing of its own (display: contents): its first child is what comes into view
    const found = await page.evaluateHandle(() =>
      [...document.querySelectorAll('astro-island[ssr]')].find(
        (node) => (node.firstElementChild ?? node).getClientRects().length > 0,
      ),
    );
    const island = found.asElement();
    if (!island) break;
    await island.evaluate((node) => (node.firstElementChild ?? node).scrollIntoView({ block: 'center' }));
    // awake, or hidden meanwhile by the script of a stage
    await page.waitForFunction(
      (node) => !node.hasAttribute('ssr') || (node.firstElementChild ?? node).getClientRects().length === 0,
      island as ElementHandle<Element>,
      { timeout: 30_000 },
    );
  }
  // the bench answers once somebody is there: a pointer that moves
  if ((await page.locator('.late:not(.woken)').count()) > 0) await page.mouse.move(0, 0);
  await page.waitForFunction(() => document.querySelector('.late:not(.woken)') === null);
  await page.evaluate((top) => scrollTo(0, top), from);
  await frames(page);
  // what an address carries is read in an effect, by a script that is fetched for it
  await page.waitForFunction(() => !document.documentElement.hasAttribute('data-opening'));
  await frames(page);
}

/** Two frames, after which what was under way is drawn and its effects have run. */
const frames = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
