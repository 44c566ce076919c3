import { notNegative, rangeError } from '../quantity.ts';

/** One independent part of a combined uncertainty. */
export interface IndependentPart {
  /** Its contribution to the combined standard uncertainty, in the unit of the output. */
  readonly contribution: number;
  readonly degreesOfFreedom: number;
}

/** From here on Student's t is the normal distribution to 1e-12, and sums over its degrees would only overflow. */
const AS_GOOD_AS_INFINITE = 1e12;

/**
 * Effective degrees of freedom of a combined standard uncertainty: u_c^4 / sum of (contribution^4 / degrees).
 * Never rounded here, and to be fed unrounded contributions: GUM H.1.6 shows 16.7 from 31.65 nm, where the printed 32 nm
 * would give 17.5. Infinity if no part with finite degrees contributes, or from 1e12 on.
 * @param parts independent ones; correlated inputs are merged into one part first.
 * @throws RangeError for a negative contribution or degrees of freedom not above zero.
 * Source: GUM G.4.1, formula (G.2b).
 */
export function welchSatterthwaite(parts: readonly IndependentPart[]): number {
  let largest = 0;
  for (const { contribution, degreesOfFreedom } of parts) {
    notNegative('welchSatterthwaite', 'contribution', contribution);
    if (!(degreesOfFreedom > 0))
      throw rangeError({
        where: 'welchSatterthwaite',
        wish: 'degreesOfFreedom must be > 0',
        got: degreesOfFreedom,
      });
    largest = Math.max(largest, contribution);
  }
  if (largest === 0) return Number.POSITIVE_INFINITY;
  // Relative to the largest part: the fourth power of a small uncertainty would underflow.
  let variance = 0;
  let doubt = 0;
  for (const { contribution, degreesOfFreedom } of parts) {
    const square = (contribution / largest) ** 2;
    variance += square;
    doubt += square ** 2 / degreesOfFreedom;
  }
  const effective = variance ** 2 / doubt;
  return effective < AS_GOOD_AS_INFINITE ? effective : Number.POSITIVE_INFINITY;
}
