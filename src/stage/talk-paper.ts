import { renumberedStep } from './carry/borrow-steps.ts';
import { pageOfPart, pagesOf } from './carry/pages.ts';
import { strings } from './strings.ts';
import type { Part } from './talk.ts';

/** Ids that a figure's own parts refer to; others are places on the page that the step comes from. */
const OWN_ID = /^P\d+-/;

/** A step of another page as paper needs it: its markup alone, which neither wakes nor answers. */
function stillStep(step: Element, turn: number): Element | undefined {
  const copy = renumberedStep(step, turn);
  for (const gone of copy.querySelectorAll('script, style, link, template')) gone.remove();
  for (const island of copy.querySelectorAll('astro-island')) island.replaceWith(...island.childNodes);
  for (const place of copy.querySelectorAll('[id]')) if (!OWN_ID.test(place.id)) place.removeAttribute('id');
  return copy.firstElementChild ?? undefined;
}

/** A line of italics under a step, or in its place. */
const line = (words: string): Element =>
  Object.assign(document.createElement('p'), { className: 'talk-from', textContent: words });

/** The step of a part with the name of its page under it; where there is none, the words that say so. */
function stepOf(part: Part, turn: number, pages: ReadonlyMap<string, Document>): Element {
  const page = pages.get(pageOfPart(part));
  if (page === undefined) return line(strings.notFetched(part));
  const step = page.getElementById(part.split('.').at(-1) ?? '');
  const copy = step?.classList.contains('slide') ? stillStep(step, turn) : undefined;
  copy?.append(line(strings.from(page.querySelector('h1')?.textContent ?? '')));
  return copy ?? line(strings.missing(part));
}

/** Style sheets of the pages that this one lacks. */
function sheetsOf(pages: ReadonlyMap<string, Document>): readonly HTMLLinkElement[] {
  const sheets = [...pages.values()].flatMap((page) => [
    ...page.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]'),
  ]);
  const hrefs = new Set(sheets.map((sheet) => sheet.getAttribute('href') ?? ''));
  return [...hrefs]
    .filter((href) => document.querySelector(`link[href="${CSS.escape(href)}"]`) === null)
    .map((href) =>
      Object.assign(document.createElement('link'), { rel: 'stylesheet', media: 'print', href }),
    );
}

/**
 * Lays the steps of a talk one below the other before `last`, for paper alone: a frame is cut where the sheet ends. They are as they were
 * prepared, whatever was changed on the wall.
 */
export async function layOnPaper(parts: readonly Part[], last: Element | null): Promise<void> {
  const pages = await pagesOf(parts);
  const paper = document.createElement('div');
  paper.className = 'talk-paper';
  paper.append(...parts.map((part, turn) => stepOf(part, turn, pages)));
  document.head.append(...sheetsOf(pages));
  last?.before(paper);
}
