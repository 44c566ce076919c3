import type { Part } from './document.ts';
import { withSynonyms } from './synonyms.ts';
import { fold, type Token, tokensOf } from './terms.ts';

/** A piece of a line of text, and whether it is what was asked for. */
export interface Piece {
  readonly text: string;
  readonly isHit: boolean;
}

/** The line of text that shows why something was found, with the part of the page that it stands in. */
export interface Line {
  readonly at: string;
  readonly title: string;
  readonly pieces: readonly Piece[];
}

/** Length of a line, in characters. */
const LENGTH = 170;
/** How much of it stands before the first word that was asked for. */
const BEFORE = 50;

interface Window {
  readonly part: Part;
  readonly hits: readonly Token[];
  readonly worth: number;
}

const termOf = ({ word }: Token): string => fold(word) ?? '';

/** The stretch of a part, as long as a line, that has most of the terms; of equals the first. */
function bestWindow(part: Part, terms: ReadonlySet<string>): Window {
  const all = tokensOf(part.text).filter((token) => terms.has(termOf(token)));
  const inHeading = tokensOf(part.title).filter((token) => terms.has(termOf(token))).length;
  let best: Window = { part, hits: [], worth: inHeading };
  for (const [index, first] of all.entries()) {
    const hits = all.slice(index).filter(({ from }) => from < first.from + LENGTH - BEFORE);
    const worth = inHeading + 2 * new Set(hits.map(termOf)).size;
    if (worth > best.worth) best = { part, hits, worth };
  }
  return best;
}

/** The text between two places, cut at words; dots tell that there is more. */
function cut(text: string, from: number): { readonly start: number; readonly end: number } {
  const before = from - BEFORE > 0 ? text.indexOf(' ', from - BEFORE) + 1 : 0;
  const start = Math.min(before, from);
  const end = start + LENGTH >= text.length ? text.length : text.lastIndexOf(' ', start + LENGTH);
  return { start, end: end > from ? end : Math.min(text.length, start + LENGTH) };
}

function piecesOf({ part, hits }: Window): readonly Piece[] {
  const { text } = part;
  const { start, end } = cut(text, hits[0]?.from ?? 0);
  const pieces: Piece[] = [{ text: start > 0 ? '… ' : '', isHit: false }];
  let done = start;
  for (const { word, from } of hits) {
    if (from + word.length > end) break;
    pieces.push({ text: text.slice(done, from), isHit: false }, { text: word, isHit: true });
    done = from + word.length;
  }
  pieces.push({ text: `${text.slice(done, end)}${end < text.length ? ' …' : ''}`, isHit: false });
  return pieces.filter((piece) => piece.text !== '');
}

/** The line that says most of why something was found by the terms; the beginning of its text where none stands in it. */
export function lineOf(parts: readonly Part[], found: Iterable<string>): Line {
  const terms = withSynonyms(found);
  const [first = { part: { at: '', title: '', text: '' }, hits: [], worth: 0 }, ...rest] = parts.map((part) =>
    bestWindow(part, terms),
  );
  const best = rest.reduce((one, other) => (other.worth > one.worth ? other : one), first);
  return { at: best.part.at, title: best.part.title, pieces: piecesOf(best) };
}
