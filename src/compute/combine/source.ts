import type { SeededRandom } from '../random.ts';
import { bellOf } from './bell.ts';
import { type SineTable, sineTable } from './u-shape.ts';
import { type Words, wordsOf } from './words.ts';
import { type Ziggurat, zigguratOf } from './ziggurat.ts';

/** Where random values come from: one generator for all columns, and tables that they share, each made on first use. */
export interface Source {
  readonly random: SeededRandom;
  readonly supply: Words;
  /** Layers of the bell of Student's t; of the normal distribution for Infinity. */
  bell(degreesOfFreedom: number): Ziggurat;
  sines(): SineTable;
}

/** A source for columns of so many rows. */
export function sourceOf(random: SeededRandom, rows: number): Source {
  const bells = new Map<number, Ziggurat>();
  let sines: SineTable | undefined;
  return {
    random,
    supply: wordsOf(random, rows),
    bell: (degreesOfFreedom) => {
      const known = bells.get(degreesOfFreedom) ?? zigguratOf(bellOf(degreesOfFreedom));
      bells.set(degreesOfFreedom, known);
      return known;
    },
    sines: () => {
      sines ??= sineTable();
      return sines;
    },
  };
}
