import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, pages, pagesWithFigures, test } from './site.ts';

const sizes = [
  { width: 320, height: 640 },
  { width: 1024, height: 768 },
  { width: 1440, height: 900 },
];

/** What reaches past the right edge without a scroll bar of its own, in words; a browser rounds boxes by up to a pixel. */
const overflowing = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const scrolls = (node: Element | null): boolean =>
      node !== null && (/auto|scroll/.test(getComputedStyle(node).overflowX) || scrolls(node.parentElement));
    const out = [...document.body.querySelectorAll('*')].filter((node) => {
      const { right, width } = node.getBoundingClientRect();
      return width > 1 && right > innerWidth + 1 && node.checkVisibility() && !scrolls(node.parentElement);
    });
    const told = out.map((node) => `${node.tagName.toLowerCase()}.${node.getAttribute('class') ?? ''}`);
    return document.documentElement.scrollWidth > innerWidth ? [...told, 'the page scrolls sideways'] : told;
  });

/** Texts of figures smaller on the screen than the least size, with the size in pixels. */
const smallTexts = (page: Page, leastPx: number): Promise<string[]> =>
  page.evaluate((least) => {
    const told: string[] = [];
    for (const node of document.querySelectorAll<SVGTextElement>('svg text, svg tspan')) {
      const scale = Math.abs(node.getScreenCTM()?.d ?? 0);
      const px = Number.parseFloat(getComputedStyle(node).fontSize) * scale;
      if (node.textContent?.trim() && node.checkVisibility() && px < least - 0.01)
        told.push(`${node.textContent}: ${px}`);
    }
    return told;
  }, leastPx);

/** Texts of figures that the figure's own frame cuts off. */
const cutTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGTextElement>('svg text')]
      .filter((node) => {
        const frame = node.ownerSVGElement?.getBoundingClientRect();
        const box = node.getBoundingClientRect();
        if (!frame || box.width === 0 || !node.checkVisibility()) return false;
        return box.left < frame.left - 1 || box.right > frame.right + 1;
      })
      .map((node) => node.textContent ?? ''),
  );

for (const { path } of pages) {
  for (const viewport of sizes) {
    test(`${path} fits ${viewport.width} pixels`, async ({ page }) => {
      await page.setViewportSize(viewport);
      await page.goto(path);
      await awake(page);
      expect(await overflowing(page)).toEqual([]);
    });
  }
}

for (const { path } of pagesWithFigures) {
  test(`the figures of ${path} can be read at 320 pixels`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await awake(page);
    expect(await smallTexts(page, 12)).toEqual([]);
    expect(await cutTexts(page)).toEqual([]);
  });
}
