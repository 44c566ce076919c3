import { expect, type Page } from '@playwright/test';
import type { Visit } from './visit.ts';

declare global {
  interface Window {
    /** What each island held when it had just woken, by its place among the islands of the page. */
    wokenIslands: Record<number, string>;
  }
}

/** Notes what an island holds in the moment it has woken, before its effects and the next frame; for a page that is opened afterwards. */
export const noteWaking = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    window.wokenIslands = {};
    const note = (event: Event): void => {
      const island = (event.target as Element).cloneNode(true) as Element;
      // Preact moves a text area's words from its content into its value, which is where they are looked for here
      for (const area of island.querySelectorAll('textarea')) area.textContent = area.value;
      window.wokenIslands[[...document.querySelectorAll('astro-island')].indexOf(event.target as Element)] =
        island.innerHTML;
    };
    document.addEventListener('astro:hydrate', note, true);
  });

/**
 * What each island held as the server wrote it, by its place. The browser parses it here as it parses a page, so that the two
 * texts differ only where the islands do; the one thing taken out on both sides is comments, with which Astro marks the end of an
 * island's children.
 */
const written = (page: Page, html: string): Promise<Record<number, string>> =>
  page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'text/html');
    return { ...[...parsed.querySelectorAll('astro-island')].map((island) => island.innerHTML) };
  }, html);

const withoutComments = (islands: Record<number, string>): readonly (readonly [string, string])[] =>
  Object.entries(islands).map(([place, html]) => [place, html.replace(/<!--[\s\S]*?-->/g, '')] as const);

/** That the islands of the page woke as the server had written them. */
export async function wokeAsWritten({ page, built }: Visit): Promise<void> {
  // those that wake by themselves do so in parts that are not shown as well (another slide of a stage)
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="soon"]'));
  const woken = await page.evaluate(() => window.wokenIslands);
  expect
    .soft(withoutComments(woken), 'islands as they woke')
    .toEqual(withoutComments(await written(page, built.html)));
}
