import type { Part } from '../talk.ts';
import { pageOfPart } from './pages.ts';

/** More islands than this no page has: so far apart are the numbers of those that come from different pages. */
const APART = 1000;

/**
 * The markup of a step that comes from another page, its islands renumbered: each page counts its own from one, and ids are made from the
 * numbers.
 */
export function renumbered(markup: string, turn: number): string {
  const moved = (island: string): number => Number(island) + APART * (turn + 1);
  return markup
    .replace(
      /data-preact-island-id="(\d+)"/g,
      (_, island: string) => `data-preact-island-id="${moved(island)}"`,
    )
    .replace(/\bP(\d+)-(\d+)/g, (_, island: string, rest: string) => `P${moved(island)}-${rest}`);
}

/** A copy of a step of another page, its islands renumbered: the site's own markup, as built, in a template, where nothing of it runs. */
export function renumberedStep(step: Element, turn: number): DocumentFragment {
  const holder = document.createElement('template');
  holder.innerHTML = renumbered(step.outerHTML, turn);
  return holder.content;
}

/** Puts the steps that a talk borrows into its page, in their order; a part that no page has is left out. */
export function borrowSteps(
  talk: Document,
  parts: readonly Part[],
  pages: ReadonlyMap<string, Document>,
): void {
  const place = talk.querySelector('#deck > .slide');
  if (place === null) return;
  for (const [turn, part] of parts.entries()) {
    const id = part.split('.').at(-1) ?? '';
    const step = pages.get(pageOfPart(part))?.getElementById(id);
    if (!step?.classList.contains('slide')) continue;
    const borrowed = renumberedStep(step, turn).firstElementChild;
    if (borrowed === null) continue;
    borrowed.id = `s${turn + 1}`;
    place.before(borrowed);
  }
  if (parts.length > 0) place.remove();
}
