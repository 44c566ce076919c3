import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, pages, test } from './site.ts';

interface Seen {
  /** Pieces of text that are seen, without their spaces: cells and paragraphs. */
  readonly pieces: readonly string[];
  /** All text of the main part, seen or not, without its spaces. */
  readonly whole: string;
  readonly figures: number;
}

/**
 * What a reader sees in the main part. Controls, which do nothing without script, are left out on both sides, and so are the words
 * that stand in for them.
 */
const seen = (page: Page): Promise<Seen> =>
  page.evaluate(() => {
    const controls = '.needs-script, .slider, .number-field, .print-only, noscript';
    for (const node of document.querySelectorAll(controls)) node.remove();
    const main = document.querySelector<HTMLElement>('main');
    // text as rendered has the letters of formulas in mathematical italics; compatibility form makes plain letters of them
    const plain = (text: string | null | undefined): string =>
      (text ?? '').normalize('NFKC').replace(/\s/g, '');
    const figures = [...document.querySelectorAll('main svg')].filter((node) => node.checkVisibility());
    return {
      pieces: (main?.innerText ?? '')
        .split(/[\n\t]/)
        .map(plain)
        .filter((piece) => piece !== ''),
      whole: plain(main?.textContent),
      figures: figures.length,
    };
  });

for (const { path } of pages) {
  test(`${path} says and shows the same without script`, async ({ page, browser, baseURL }) => {
    await page.goto(path);
    await awake(page);
    const withScript = await seen(page);
    const plain = await browser.newContext({
      javaScriptEnabled: false,
      viewport: { width: 1024, height: 768 },
    });
    const plainPage = await plain.newPage();
    await plainPage.goto(new URL(path, baseURL).href);
    const without = await seen(plainPage);
    await plain.close();
    // script may show less at a time (one step on the wall), never more and never something else
    expect(
      withScript.pieces.filter((piece) => !without.pieces.includes(piece)),
      'seen with script only',
    ).toEqual([]);
    expect(
      without.pieces.filter((piece) => !withScript.whole.includes(piece)),
      'other with script',
    ).toEqual([]);
    expect(without.figures).toBeGreaterThanOrEqual(withScript.figures);
    expect(without.pieces.length).toBeGreaterThan(0);
  });
}
