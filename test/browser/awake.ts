import type { Page } from '@playwright/test';

/**
 * Waits until the fonts are there and every island of the page listens. Islands that wake when seen are scrolled to, one after the
 * other; then the page is back at its top (or at the fragment's place).
 */
export async function awake(page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  const asleep = page.locator('astro-island[ssr]');
  const from = await page.evaluate(() => scrollY);
  while ((await asleep.count()) > 0) {
    const island = await asleep
      .first()
      .elementHandle({ timeout: 1000 })
      .catch(() => null);
    if (!island) continue; // it woke in between
    // an island draws nothing of its own (display: contents): its first child is what comes into view
    await island.evaluate((node) => (node.firstElementChild ?? node).scrollIntoView({ block: 'center' }));
    await page.waitForFunction((node) => !node.hasAttribute('ssr'), island, { timeout: 30_000 });
  }
  await page.evaluate((top) => scrollTo(0, top), from);
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
}
