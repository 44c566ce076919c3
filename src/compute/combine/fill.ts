import { halfTurnSine } from '../special/half-turn-sine.ts';
import { ensure, type Words } from './words.ts';

const TO_UNIT = 2 ** -31;
const HALF_STEP = 2 ** -32;

/** As many fresh words as a row needs that takes a fixed number to a value. */
function freshWords({ random, room }: Words, count: number): Int32Array {
  const words = room.subarray(0, count);
  random.fill(words);
  return words;
}

/** Uniform between -1 and 1, never either of them; 32 random bits. */
export function fillUniform(out: Float64Array, supply: Words): void {
  const count = out.length;
  const words = freshWords(supply, count);
  for (let k = 0; k < count; k++) out[k] = (words[k] as number) * TO_UNIT + HALF_STEP;
}

/** Sum of two uniform values of half-widths `wide` and `narrow` (JCGM 101, 6.4.4 and 6.4.5). */
export function fillTrapezoid(
  out: Float64Array,
  supply: Words,
  { wide, narrow }: { wide: number; narrow: number },
): void {
  const count = out.length;
  const words = freshWords(supply, 2 * count);
  for (let k = 0; k < count; k++)
    out[k] =
      wide * ((words[2 * k] as number) * TO_UNIT + HALF_STEP) +
      narrow * ((words[2 * k + 1] as number) * TO_UNIT + HALF_STEP);
}

/** A uniform value times a half-width uniform from `near` to 2 - near (JCGM 101, 6.4.3.3). */
export function fillCurvilinear(out: Float64Array, supply: Words, near: number): void {
  const count = out.length;
  const words = freshWords(supply, 2 * count);
  for (let k = 0; k < count; k++) {
    const halfWidth = 1 + (1 - near) * ((words[2 * k] as number) * TO_UNIT + HALF_STEP);
    out[k] = halfWidth * ((words[2 * k + 1] as number) * TO_UNIT + HALF_STEP);
  }
}

/** Sine of an angle uniform over half a turn: the U shape (JCGM 101, 6.4.6.3). */
export function fillArcsine(out: Float64Array, supply: Words): void {
  const count = out.length;
  const words = freshWords(supply, count);
  for (let k = 0; k < count; k++) out[k] = halfTurnSine((words[k] as number) * TO_UNIT + HALF_STEP);
}

/**
 * Student's t of one degree of freedom or more by rejection from a box with tails 1/x^2: algorithm TIR of A. Kinderman,
 * J. Monahan and J. Ramage, Math. Comp. 31 (1977), 1009 to 1018. Math.log1p and Math.exp only decide whether a value is
 * taken, for one in five; the value itself is plain arithmetic.
 */
export function fillStudent(out: Float64Array, supply: Words, degreesOfFreedom: number): void {
  const power = -(degreesOfFreedom + 1) / 2;
  const count = out.length;
  const { words } = supply;
  for (let k = 0; k < count; ) {
    ensure(supply, 2);
    const place = (words[supply.at++] as number) * TO_UNIT + HALF_STEP;
    const v = ((words[supply.at++] as number) >>> 0) * (TO_UNIT / 2) + HALF_STEP / 2;
    // Half of all places fall into the box, the other half into the tails.
    const inBox = place > 0;
    const x = inBox ? 2 * place - 1 : 1 / (2 * place + 1);
    const height = inBox ? v : v / (x * x);
    if (height < 1 - Math.abs(x) / 2 || height < Math.exp(power * Math.log1p((x * x) / degreesOfFreedom)))
      out[k++] = x;
  }
}
