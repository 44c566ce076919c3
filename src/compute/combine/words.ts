import type { SeededRandom } from '../random.ts';

/** Words of random bits, drawn a row at a time; `at` is the next unused one. */
export interface Words {
  readonly words: Int32Array;
  at: number;
  readonly random: SeededRandom;
  /** Room for rows whose length is known beforehand. */
  readonly room: Int32Array;
}

const ROW = 4096;

/** An empty supply of words from a generator, for rows of at most so many values. */
export function wordsOf(random: SeededRandom, rows: number): Words {
  return { words: new Int32Array(ROW), at: ROW, random, room: new Int32Array(Math.max(ROW, 2 * rows)) };
}

/** Draws a new row if fewer than `count` words are left; those left are dropped. */
export function ensure(supply: Words, count: number): void {
  if (supply.at + count <= ROW) return;
  supply.random.fill(supply.words);
  supply.at = 0;
}
