import type { SeededRandom } from '../../../src/compute/random.ts';

/** A generator that hands out these words over and over. */
export function handing(words: readonly number[]): SeededRandom {
  let at = 0;
  const fill = (row: Int32Array) => {
    for (let k = 0; k < row.length; k++) row[k] = words[at++ % words.length] as number;
  };
  return Object.assign(() => 0, { fill });
}
