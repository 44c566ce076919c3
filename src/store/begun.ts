import { keptText } from './kept-text.ts';
import { randomId } from './random-id.ts';

const KEY = 'practice:paper';
/** The first papers that were kept had no id: there was one only. */
const keyOf = (id: string): string => (id === '' ? KEY : `${KEY}:${id}`);

/** A paper that is not handed in, as it lies in the browser. */
export interface LyingPaper {
  readonly id: string;
  readonly text: string;
}

/** What came of keeping: `changed` where somebody else has kept it meanwhile, `gone` where somebody else has removed it. */
export type Keeping = 'kept' | 'refused' | 'changed' | 'gone';

/** An id that no other paper has. */
export const newPaperId = (): string => randomId(8);

/** Every paper that lies in the browser, in the order of their ids; none where it keeps nothing. */
export function lyingPapers(): readonly LyingPaper[] {
  try {
    return Array.from({ length: localStorage.length }, (_, index) => localStorage.key(index) ?? '')
      .filter((key) => key === KEY || key.startsWith(`${KEY}:`))
      .sort()
      .map((key) => ({ id: key.slice(KEY.length + 1), text: localStorage.getItem(key) ?? '' }));
  } catch {
    return [];
  }
}

/** The text of one paper; undefined where it does not lie there. */
export const lyingPaper = (id: string): string | undefined => keptText(keyOf(id));

/** How a paper stands to what somebody last saw of it. */
export function standingOf({ id, text }: LyingPaper): Keeping {
  const found = lyingPaper(id);
  if (found === text) return 'kept';
  return found === undefined ? 'gone' : 'changed';
}

/**
 * Keeps a paper, unless another tab has kept or removed it since.
 * @param seen its text as this tab last kept or read it; undefined for one that was never kept.
 */
export function keepPaper({ id, text }: LyingPaper, seen: string | undefined): Keeping {
  try {
    const found = localStorage.getItem(keyOf(id)) ?? undefined;
    if (found !== seen) return found === undefined ? 'gone' : 'changed';
    localStorage.setItem(keyOf(id), text);
    return 'kept';
  } catch {
    return 'refused';
  }
}

/** Forgets a paper, unless another tab has kept it since. */
export function forgetPaper({ id, text }: LyingPaper): void {
  try {
    if (localStorage.getItem(keyOf(id)) === text) localStorage.removeItem(keyOf(id));
  } catch {
    // what was never kept need not be forgotten
  }
}

/** Forgets all of them, whatever they are. */
export function forgetPapers(): void {
  try {
    for (const { id } of lyingPapers()) localStorage.removeItem(keyOf(id));
  } catch {
    // the same
  }
}
