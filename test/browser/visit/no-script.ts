import { expect, type Page } from '@playwright/test';
import type { Visit } from './visit.ts';

export interface Seen {
  /** Pieces of text that are seen, without their spaces: cells and paragraphs. */
  readonly pieces: readonly string[];
  /** All text of the main part, seen or not, without its spaces. */
  readonly whole: string;
  readonly figures: number;
}

/** What does nothing without script, and the words that stand in for it. */
const CONTROLS = '.needs-script, .slider, .number-field, .print-only, noscript';

/** What a reader sees in the main part, controls aside. The page is afterwards as it was. */
export const seen = (page: Page): Promise<Seen> =>
  page.evaluate((controls) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`:is(${controls}){display:none!important}`);
    document.adoptedStyleSheets.push(sheet);
    const main = document.querySelector<HTMLElement>('main');
    const bare = main?.cloneNode(true) as HTMLElement | undefined;
    for (const node of bare?.querySelectorAll(controls) ?? []) node.remove();
    // text as rendered has the letters of formulas in mathematical italics; compatibility form makes plain letters of them
    const plain = (text: string | null | undefined): string =>
      (text ?? '').normalize('NFKC').replace(/\s/g, '');
    const figures = [...document.querySelectorAll('main svg')].filter((node) => node.checkVisibility());
    const found = {
      pieces: (main?.innerText ?? '')
        .split(/[\n\t]/)
        .map(plain)
        .filter((piece) => piece !== ''),
      whole: plain(bare?.textContent),
      figures: figures.length,
    };
    document.adoptedStyleSheets.pop();
    return found;
  }, CONTROLS);

/** The page opened anew, in a browser that runs no script of its; so it stays. */
async function seenWithoutScript({ page, built }: Visit): Promise<Seen> {
  await page.goto(built.path);
  // a browser that runs script takes what stands in them for text
  const unread = await page.evaluate(() =>
    [...document.querySelectorAll('noscript')].filter(({ children }) => children.length === 0).map(String),
  );
  expect(unread, 'words for browsers without script').toEqual([]);
  return seen(page);
}

/** That the page says and shows without script what it did with it. The last look of a visit: no script runs on the page any more. */
export async function sameWithoutScript(visit: Visit, withScript: Seen): Promise<void> {
  const devtools = await visit.page.context().newCDPSession(visit.page);
  await devtools.send('Emulation.setScriptExecutionDisabled', { value: true });
  const without = await seenWithoutScript(visit);
  // the page is used again for the visit of another
  await devtools.send('Emulation.setScriptExecutionDisabled', { value: false });
  // script may show less at a time (one step on the wall), never more and never something else
  expect
    .soft(
      withScript.pieces.filter((piece) => !without.pieces.includes(piece)),
      'seen with script only',
    )
    .toEqual([]);
  expect
    .soft(
      without.pieces.filter((piece) => !withScript.whole.includes(piece)),
      'other with script',
    )
    .toEqual([]);
  expect.soft(without.figures).toBeGreaterThanOrEqual(withScript.figures);
  expect.soft(without.pieces.length).toBeGreaterThan(0);
}
