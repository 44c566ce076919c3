import { quoted } from '../text/clean.ts';

/** One thing that an address said and that could not be taken as it stood. */
export interface AddressProblem {
  /** Property of the state, `links.3.label` in a list; empty for the address as a whole. */
  readonly where: string;
  readonly sentence: string;
  /** What stood in the address. */
  readonly text: string;
}

/** Longest piece of an address that is kept with a problem. */
const KEPT = 200;

export const problemAt = (where: string, sentence: string, text: string): AddressProblem => ({
  where,
  sentence,
  text: text.slice(0, KEPT),
});

const OWNED = /^(?:([a-z][a-z0-9]*)\.)?(.*)$/s;

/**
 * The pairs of one instance in a repaired address. Of a key that stands twice the first counts, and it is told unless both say
 * the same. Pieces without `=` are places on the page and say nothing here.
 */
export function pairsOf(
  address: string,
  instance: string | undefined,
): { readonly pairs: ReadonlyMap<string, string>; readonly problems: readonly AddressProblem[] } {
  const pairs = new Map<string, string>();
  const problems: AddressProblem[] = [];
  for (const piece of address.split('&')) {
    const at = piece.indexOf('=');
    const [, owner, key = ''] = OWNED.exec(piece.slice(0, Math.max(at, 0)).toLowerCase()) ?? [];
    if (at < 1 || owner !== instance) continue;
    const value = piece.slice(at + 1);
    const first = pairs.get(key);
    if (first === undefined) pairs.set(key, value);
    else if (first !== value)
      problems.push(problemAt('', `The address says ${quoted(key)} twice: ${quoted(first)} counts.`, piece));
  }
  return { pairs, problems };
}
