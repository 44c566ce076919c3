/** Shapes of what is not known: distributions, the special functions under them, and random numbers. */

export { arcsine } from '../distribution/arcsine.ts';
export { curvilinear } from '../distribution/curvilinear.ts';
export type { Distribution, Interval, Random, Shape } from '../distribution/distribution.ts';
export { mismatch } from '../distribution/mismatch.ts';
export type { Knowledge } from '../distribution/mismatch-within.ts';
export { mismatchWithin } from '../distribution/mismatch-within.ts';
export { normal } from '../distribution/normal.ts';
export { rayleigh } from '../distribution/rayleigh.ts';
export { rectangular } from '../distribution/rectangular.ts';
export { rice } from '../distribution/rice.ts';
export { student } from '../distribution/student.ts';
export type { Transform } from '../distribution/transformed.ts';
export { transformed } from '../distribution/transformed.ts';
export { trapezoidal } from '../distribution/trapezoidal.ts';
export { triangular } from '../distribution/triangular.ts';
export type { SeededRandom } from '../random.ts';
export { randomFrom } from '../random.ts';
export { regularisedBeta } from '../special/beta.ts';
export { chiSquareQuantile, chiSquareShareAbove, chiSquareShareBelow } from '../special/chi-square.ts';
export { erf, erfc } from '../special/erf.ts';
export { logGamma } from '../special/gamma.ts';
export { regularisedGamma } from '../special/gamma-share.ts';
export { normalDensity, normalQuantile, normalShareBelow } from '../special/normal.ts';
export { studentDensity, studentQuantile, studentShareBelow } from '../special/student.ts';
