import type { Interval } from './distribution/distribution.ts';
import { finite, positive, rangeError } from './quantity.ts';

/** How far propagation and simulation lie apart, and whether that matters. Unit: the output's. */
export interface Validation {
  /** Numerical tolerance of the standard uncertainty, delta. */
  readonly tolerance: number;
  readonly lowDifference: number;
  readonly highDifference: number;
  /** Whether propagation may be used for this model: both differences within the tolerance. */
  readonly valid: boolean;
}

/**
 * Half a unit in the last digit of a standard uncertainty written with so many significant digits: 0.5 x 10^l for
 * c x 10^l with c a whole number of that many digits. 0.000 35 with two digits gives 0.000 005.
 * @param digits 1 or 2. @throws RangeError unless the uncertainty is > 0 and digits is 1 or 2.
 * Source: JCGM 101, 7.9.2.
 */
export function numericalTolerance({
  standardUncertainty,
  digits,
}: {
  standardUncertainty: number;
  digits: 1 | 2;
}): number {
  positive('numericalTolerance', 'standardUncertainty', standardUncertainty);
  if (digits !== 1 && digits !== 2)
    throw rangeError({ where: 'numericalTolerance', wish: 'digits must be 1 or 2', got: digits });
  // toExponential rounds first, as the definition does: 0.0996 with two digits is 10 x 10^-2.
  const exponent = Number(standardUncertainty.toExponential(digits - 1).split('e')[1]);
  return 0.5 * 10 ** (exponent - digits + 1);
}

/**
 * Is the interval from propagation good enough, judged by a simulation of the same model? Compares the ends of the two.
 * The simulation is to be run to a fifth of the tolerance for this (8.2).
 * @throws RangeError for an end not finite, or as `numericalTolerance`.
 * Source: JCGM 101, 8.1 and 8.2.
 */
export function validatePropagation({
  propagated,
  simulated,
  standardUncertainty,
  digits,
}: {
  propagated: Interval;
  simulated: Interval;
  standardUncertainty: number;
  digits: 1 | 2;
}): Validation {
  const tolerance = numericalTolerance({ standardUncertainty, digits });
  for (const end of [propagated.lower, propagated.upper, simulated.lower, simulated.upper])
    finite('validatePropagation', 'end of an interval', end);
  const lowDifference = Math.abs(propagated.lower - simulated.lower);
  const highDifference = Math.abs(propagated.upper - simulated.upper);
  const valid = lowDifference <= tolerance && highDifference <= tolerance;
  return { tolerance, lowDifference, highDifference, valid };
}
