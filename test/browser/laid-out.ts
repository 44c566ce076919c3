import type { Page } from '@playwright/test';
import { SPACED } from '../../src/access/conditions.ts';

/** What reaches past the right edge without a scroll bar of its own, in words; a browser rounds boxes by up to a pixel. */
export const overflowing = (page: Page): Promise<string[]> =>
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
export const smallTexts = (page: Page, leastPx: number): Promise<string[]> =>
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
export const cutTexts = (page: Page): Promise<string[]> =>
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

/** What a look finds while text is spaced as widely as a reader may set it, parts far below laid out too. */
export async function whereSpaced<Found>(page: Page, look: (page: Page) => Promise<Found>): Promise<Found> {
  const set = (rules: string): Promise<void> =>
    page.evaluate((text) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(text);
      document.adoptedStyleSheets = text === '' ? [] : [sheet];
    }, rules);
  await set(`*{content-visibility:visible!important}${SPACED}`);
  const found = await look(page);
  await set('');
  return found;
}

/**
 * Figures of the main part that are seen, as their names; one that is wider than the paper tells so. A figure may be drawn once for
 * wide and once for narrow places: it is the name that counts.
 */
export const figures = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const textOf = (id: string): string => document.getElementById(id)?.textContent ?? '';
    const nameOf = (node: Element): string =>
      node.getAttribute('aria-label') ??
      (node.getAttribute('aria-labelledby') ?? '').split(' ').map(textOf).join(' ');
    return [...document.querySelectorAll('main svg:not(svg svg, [aria-hidden="true"])')]
      .filter((node) => node.checkVisibility() && node.getBoundingClientRect().width > 0)
      .map((node) => {
        const wide = node.getBoundingClientRect().right > innerWidth + 1;
        return wide ? `${nameOf(node)}: wider than the paper` : nameOf(node);
      });
  });
