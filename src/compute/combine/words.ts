import type { SeededRandom } from '../random.ts';

/** Words of random bits, drawn a row at a time; `at` is the next unused one. */
export interface Words {
  readonly words: Int32Array;
  at: number;
  readonly random: SeededRandom;
}

const ROW = 4096;

/** An empty supply of words from a generator. */
export function wordsOf(random: SeededRandom): Words {
  return { words: new Int32Array(ROW), at: ROW, random };
}

/** Draws a new row if fewer than `count` words are left; those left are dropped. */
export function ensure(supply: Words, count: number): void {
  if (supply.at + count <= ROW) return;
  supply.random.fill(supply.words);
  supply.at = 0;
}
