import { freshWords, type Words } from './words.ts';

const TO_UNIT = 2 ** -31;
const HALF_STEP = 2 ** -32;

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
