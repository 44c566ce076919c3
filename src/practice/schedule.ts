import { type Card, createEmptyCard, type FSRS, fsrs, type Grade as Rating } from 'ts-fsrs';
import type { Answer, Grade } from './answers.ts';

/** How a question stands with a reader after all answers. */
export interface Standing {
  /** When it is due again (ISO 8601, UTC). */
  readonly due: string;
  /** Days after which the chance to know it still is nine in ten. */
  readonly stabilityDays: number;
  /** 1 (easy) to 10. */
  readonly difficulty: number;
  /** When it was answered last. */
  readonly last: string;
}

/** The library's grades: again, hard, good. Nobody is asked whether it was easy. */
const RATINGS: Readonly<Record<Grade, Rating>> = { wrong: 1, unsure: 2, right: 3 };

/** Longest rest between two askings: who prepares for an examination wants everything asked within the year. */
export const LONGEST_REST_DAYS = 365;

let scheduler: FSRS | undefined;

/**
 * No fuzz: the same answers give the same days on every device. No steps of minutes either: within a sitting the page itself asks
 * again, and everything else waits for another day.
 */
const made = (): FSRS =>
  fsrs({
    enable_fuzz: false,
    learning_steps: [],
    relearning_steps: [],
    request_retention: 0.9,
    maximum_interval: LONGEST_REST_DAYS,
  });

/** So far may the clock of another device be ahead. */
const AHEAD_MS = 86_400_000;

/**
 * Answers that count on the day of `now`: one that was noted by a clock far ahead would have its question rest until then. It counts once
 * its day has come.
 */
export const givenBy = (answers: readonly Answer[], now: string): readonly Answer[] =>
  answers.filter(({ at }) => Date.parse(at) <= Date.parse(now) + AHEAD_MS);

/**
 * Where all answers to a question leave it; undefined before the first. The schedule is never kept: it follows from the answers,
 * so that histories from two devices can be joined. Free Spaced Repetition Scheduler (FSRS-6) with its published parameters; days
 * change at midnight UTC.
 * @param answers oldest first.
 */
export function standingOf(answers: readonly Answer[]): Standing | undefined {
  const [first] = answers;
  if (first === undefined) return undefined;
  scheduler ??= made();
  let card: Card = createEmptyCard(new Date(first.at));
  for (const { at, grade } of answers) card = scheduler.next(card, new Date(at), RATINGS[grade]).card;
  return {
    due: card.due.toISOString(),
    stabilityDays: card.stability,
    difficulty: card.difficulty,
    last: new Date(answers.at(-1)?.at ?? first.at).toISOString(),
  };
}
