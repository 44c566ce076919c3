import { expect, test } from './site.ts';

interface Shift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
}

/** One of each kind of page whose first screen is words, figures or fields. */
const kinds = [
  '/',
  '/learn/measuring/pads-into-a-meter/',
  '/examples/club-transmitter/',
  '/bench/',
  '/reference/words/',
];

for (const path of kinds) {
  test(`${path} can be read before its typeface is there, and nothing moves when it comes`, async ({
    page,
  }) => {
    let asked = 0;
    let send = () => {};
    const held = new Promise<void>((resolve) => {
      send = resolve;
    });
    await page.route('**/*.woff2', async (route) => {
      asked += 1;
      await held;
      await route.continue();
    });
    await page.addInitScript(() => {
      const seen = { shift: 0 };
      Object.assign(globalThis, { seen });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as Shift[])
          if (!entry.hadRecentInput) seen.shift += entry.value;
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await page.goto(path, { waitUntil: 'domcontentloaded' });
    await expect.poll(() => asked).toBeGreaterThan(0);
    // the words are painted in a typeface at hand: what is painted first is told by the browser
    await expect
      .poll(() => page.evaluate(() => performance.getEntriesByName('first-contentful-paint').length))
      .toBe(1);
    expect(await page.evaluate(() => document.fonts.status)).toBe('loading');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    send();
    await page.evaluate(() => document.fonts.ready);
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    const shift = await page.evaluate(
      () => (globalThis as unknown as { seen: { shift: number } }).seen.shift,
    );
    expect(shift).toBeLessThanOrEqual(0.01);
  });
}
