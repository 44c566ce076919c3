import { type LyingPaper, lyingPapers } from '../store/begun.ts';
import { type BegunPaper, begunFrom } from './begun-paper.ts';

/** A paper that was left on the table, with its text as it lay in the browser. */
export interface LeftPaper extends LyingPaper {
  readonly paper: BegunPaper;
}

/** What was left, and how much of it cannot be read (and stays as it is). */
export interface LeftPapers {
  readonly left: readonly LeftPaper[];
  readonly unreadable: number;
}

export const NOTHING_LEFT: LeftPapers = { left: [], unreadable: 0 };

/** A paper from a text; undefined where it is none, or a newer version's. */
export function paperIn(text: string): BegunPaper | undefined {
  try {
    return begunFrom(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** Every paper that is not handed in and lies in this browser. */
export function leftPapers(): LeftPapers {
  const lying = lyingPapers();
  const left = lying.flatMap((each) => {
    const paper = paperIn(each.text);
    return paper === undefined ? [] : [{ ...each, paper }];
  });
  return { left, unreadable: lying.length - left.length };
}
