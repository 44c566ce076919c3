import { type Given, isBlank, type Marked } from './answering.ts';
import { MINUTES_EACH } from './paper.ts';
import type { ShownSitting } from './shown.ts';

/** A paper on the table: what was given so far, and from when on. */
export interface PaperState {
  readonly sittings: readonly ShownSitting[];
  /** By the question's id. */
  readonly given: ReadonlyMap<string, Given>;
  readonly begunMs: number;
  readonly hasClock: boolean;
  /** Once it is handed in. */
  readonly handed: HandedIn | undefined;
}

export interface HandedIn {
  readonly atMs: number;
  /** By the question's id. */
  readonly marks: ReadonlyMap<string, Marked>;
}

/** The paper with another answer to one question. */
export const withGiven = (paper: PaperState, id: string, given: Given): PaperState => ({
  ...paper,
  given: new Map([...paper.given, [id, given]]),
});

/** What time is left, in whole minutes begun; undefined without a clock, 0 when it is over. */
export function minutesLeft({ sittings, begunMs, hasClock }: PaperState, nowMs: number): number | undefined {
  return hasClock ? minutesOf(sittings.length, nowMs - begunMs) : undefined;
}

/** What time is left of a paper with so many questions after so long, in whole minutes begun: all of it where the clock was set back. */
export const minutesOf = (count: number, spentMs: number): number =>
  Math.max(0, Math.ceil(MINUTES_EACH * count - Math.max(0, spentMs) / 60_000));

/** How many questions have no answer yet. */
export const openCount = ({ sittings, given }: PaperState): number =>
  sittings.filter((sitting) => isBlank(sitting, given.get(sitting.id) ?? '')).length;

export const rightCount = (marks: ReadonlyMap<string, Marked>): number =>
  [...marks.values()].filter(({ outcome }) => outcome === 'right').length;

/** Misconceptions behind the wrong answers, each once, the most frequent first. */
export function mistakesIn(marks: ReadonlyMap<string, Marked>): readonly string[] {
  const counts = new Map<string, number>();
  for (const { misconception } of marks.values())
    if (misconception !== undefined) counts.set(misconception, (counts.get(misconception) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a).map(([id]) => id);
}
