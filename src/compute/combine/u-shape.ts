import { halfTurnSine } from '../special/half-turn-sine.ts';
import { freshWords, type Words } from './words.ts';

/** Steps of the half turn: ten bits of a word choose one. */
const STEPS = 1024;
/** Bits of a word within a step, and half of their number. */
const INNER_BITS = 22;
const HALF_STEP = 2 ** (INNER_BITS - 1);
/** Angle of one unit of a word: all words make half a turn. */
const ANGLE = Math.PI * 2 ** -32;
const SIXTH = 1 / 6;
const TWENTY_FOURTH = 1 / 24;

/** Sine and cosine in the middle of each of the equal steps of the half turn from -pi/2 to pi/2. */
export interface SineTable {
  readonly sine: Float64Array;
  readonly cosine: Float64Array;
}

/** The table; made on first use, never on import. */
export function sineTable(): SineTable {
  const middles = Float64Array.from({ length: STEPS }, (_, k) => (2 * k + 1) / STEPS - 1);
  return { sine: middles.map(halfTurnSine), cosine: middles.map((t) => halfTurnSine(1 - Math.abs(t))) };
}

/**
 * Fills a row with the sine of an angle uniform over half a turn, its scale 1: the U shape (JCGM 101, 6.4.6.3). Angles have 32
 * random bits: ten choose a step, the others the place in it, and the sine of the sum follows from the addition theorem, with
 * series to the fourth power of an angle below 0.0016. Worst error 4e-16; no Math.sin, whose last digit differs between engines.
 */
export function fillArcsine(out: Float64Array, supply: Words, { sine, cosine }: SineTable): void {
  const count = out.length;
  const words = freshWords(supply, count);
  for (let k = 0; k < count; k++) {
    const word = words[k] as number;
    const step = (word >> INNER_BITS) + STEPS / 2;
    const angle = ((word & (2 * HALF_STEP - 1)) - HALF_STEP + 0.5) * ANGLE;
    const square = angle * angle;
    const near = sine[step] as number;
    const bend = near * square * (square * TWENTY_FOURTH - 0.5);
    out[k] = near + (bend + (cosine[step] as number) * angle * (1 - square * SIXTH));
  }
}
