import { type Given, isBlank } from './answering.ts';
import { LARGEST_SEED } from './answers.ts';
import { PAPER, type PaperWish } from './paper.ts';
import type { PaperState } from './paper-state.ts';
import type { ShownSitting } from './shown.ts';

/** An answer on a paper that is not handed in, and to what it was given. */
export interface BegunAnswer {
  readonly id: string;
  /** A number for the question as it read; where it reads otherwise by now, the answer is left out. */
  readonly asked: number;
  readonly given: Given;
}

/** A paper that is not handed in, as it is kept: its questions follow from its number. */
export interface BegunPaper extends PaperWish {
  readonly version: 1;
  /** How many questions it has, which may be fewer than were wished for. */
  readonly count: number;
  readonly hasClock: boolean;
  /** How long somebody sat over it. */
  readonly spentMs: number;
  readonly answers: readonly BegunAnswer[];
}

/** Longest text of an answer that is kept: many times what any number takes. */
export const LONGEST_GIVEN = 500;

/** A number from what a question asks and offers (Fowler, Noll, Vo 1a). */
function askedOf({ stem, payload }: Pick<ShownSitting, 'stem' | 'payload'>): number {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify([stem, payload]))
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return hash >>> 0;
}

/** What is to be kept of a paper on the table. */
export function begunOf(paper: PaperState, { seed, length, topics }: PaperWish, nowMs: number): BegunPaper {
  const { sittings, given, begunMs, hasClock } = paper;
  const answers = sittings.flatMap((sitting): readonly BegunAnswer[] => {
    const found = given.get(sitting.id);
    if (found === undefined || isBlank(sitting, found)) return [];
    const kept = typeof found === 'string' ? found.slice(0, LONGEST_GIVEN) : found;
    return [{ id: sitting.id, asked: askedOf(sitting), given: kept }];
  });
  const spentMs = Math.max(0, nowMs - begunMs);
  return { version: 1, seed, length, topics, count: sittings.length, hasClock, spentMs, answers };
}

/** The paper on the table again: the clock stood still while it was away. */
export function resumedPaper(
  { answers, hasClock, spentMs }: BegunPaper,
  sittings: readonly ShownSitting[],
  nowMs: number,
): PaperState {
  const given = answers.filter(({ id, asked }) =>
    sittings.some((sitting) => sitting.id === id && askedOf(sitting) === asked),
  );
  return {
    sittings,
    given: new Map(given.map((answer) => [answer.id, answer.given])),
    begunMs: nowMs - spentMs,
    hasClock,
    handed: undefined,
  };
}

const isWhole = (value: unknown, least: number, most: number): value is number =>
  Number.isInteger(value) && Number(value) >= least && Number(value) <= most;
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST_GIVEN;
const isGiven = (value: unknown): value is Given =>
  isText(value) || (Array.isArray(value) && value.length <= 20 && value.every(isText));

function isAnswer(value: unknown): value is BegunAnswer {
  if (typeof value !== 'object' || value === null) return false;
  const { id, asked, given } = value as Partial<Record<keyof BegunAnswer, unknown>>;
  return isText(id) && isWhole(asked, 0, 2 ** 32) && isGiven(given);
}

/** A paper that is not handed in from what claims to be one; undefined where it is none. */
export function begunFrom(value: unknown): BegunPaper | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const found = value as Partial<Record<keyof BegunPaper, unknown>>;
  const { version, seed, length, topics, count, hasClock, spentMs, answers } = found;
  const isPaper =
    isWhole(seed, 1, LARGEST_SEED) && isWhole(length, PAPER.least, PAPER.most) && isText(topics);
  if (version !== 1 || !isPaper || !isWhole(count, 1, PAPER.most) || typeof hasClock !== 'boolean')
    return undefined;
  if (!isWhole(spentMs, 0, Number.MAX_SAFE_INTEGER) || !Array.isArray(answers)) return undefined;
  if (answers.length > PAPER.most || !answers.every(isAnswer)) return undefined;
  return { version, seed, length, topics, count, hasClock, spentMs, answers };
}
