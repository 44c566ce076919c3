import type { SeededRandom } from '../random.ts';

/** Words of random bits: one after another, or as many at once as a row needs. */
export interface Words {
  readonly random: SeededRandom;
  /** Room for rows whose length is known beforehand. */
  readonly room: Int32Array;
  /** Words drawn ahead; `at` is the next unused one. */
  readonly ahead: Int32Array;
  at: number;
}

/** Words drawn ahead at a time; those are few that are taken one by one. */
const AHEAD = 256;

/** An empty supply of words from a generator, for rows of at most so many values. */
export function wordsOf(random: SeededRandom, rows: number): Words {
  return { random, room: new Int32Array(2 * rows), ahead: new Int32Array(AHEAD), at: AHEAD };
}

/** As many fresh words as a row needs that takes a fixed number to a value, two at most; the next call overwrites them. */
export function freshWords({ random, room }: Words, count: number): Int32Array {
  const words = room.subarray(0, count);
  random.fill(words);
  return words;
}

/** The next single word. */
export function nextWord(supply: Words): number {
  if (supply.at === supply.ahead.length) {
    supply.random.fill(supply.ahead);
    supply.at = 0;
  }
  return supply.ahead[supply.at++] as number;
}
