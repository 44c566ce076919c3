import { certificateTwice, weakestRung } from './chain.ts';
import type { Question } from './question.ts';

const QUESTIONS: Readonly<Record<string, () => Question>> = {
  'chain-weakest-rung': weakestRung,
  'chain-certificate-once': certificateTwice,
};

/** Ids of every question. */
export const questionIds = (): readonly string[] => Object.keys(QUESTIONS);

/** The question with an id. @throws RangeError for an id that none has. */
export function questionOf(id: string): Question {
  const make = Object.hasOwn(QUESTIONS, id) ? QUESTIONS[id] : undefined;
  if (make === undefined)
    throw new RangeError(`questionOf: no question has the id, got ${JSON.stringify(id)}`);
  return make();
}
