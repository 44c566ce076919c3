import { aloud } from './aloud.ts';

/** A result and what it means. */
interface Answer {
  readonly figure: string;
  readonly words: string;
}

/** Answers one after the other as sentences for somebody who listens: the result first, then what it means. */
export const answersAloud = (answers: readonly Answer[]): string =>
  aloud(
    answers.map(({ figure, words }) =>
      `${figure}, ${words}`.replace(/\bU with k/g, 'expanded uncertainty with k'),
    ),
  );
