import { positive, rangeError } from '../quantity.ts';
import { studentQuantile, studentShareBelow } from '../special/student.ts';

/** A coverage probability with the coverage factor that belongs to it. */
export interface Coverage {
  readonly coverageProbability: number;
  readonly coverageFactor: number;
}

/** What is asked for: one of the two. Without either, 95 %. */
export interface CoverageWish {
  readonly coverageProbability?: number | undefined;
  readonly coverageFactor?: number | undefined;
}

/** The coverage probability that is meant where nothing is said. */
export const DEFAULT_COVERAGE_PROBABILITY = 0.95;

/** Returns a probability strictly between 0 and 1. @throws RangeError otherwise. */
export function openShare(where: string, name: string, value: number): number {
  if (!(value > 0 && value < 1))
    throw rangeError({ where, wish: `${name} must be above 0 and below 1`, got: value });
  return value;
}

/**
 * The coverage factor for a probability, or the probability of a factor, from Student's t at the real-valued degrees of
 * freedom (never truncated: GUM G.4 truncates 16.7 to 16 for its table, but prints 19.0 for 18.9987).
 * @param degreesOfFreedom above 0; Infinity for the normal distribution.
 * @throws RangeError if both are asked for, or a value is out of range.
 * Source: GUM G.3, G.6.
 */
export function coverageOf({
  coverageProbability,
  coverageFactor,
  degreesOfFreedom,
}: CoverageWish & { degreesOfFreedom: number }): Coverage {
  if (coverageFactor === undefined) {
    const probability = coverageProbability ?? DEFAULT_COVERAGE_PROBABILITY;
    openShare('coverageOf', 'coverageProbability', probability);
    // The lower tail keeps its digits where 1 - p is small.
    const factor = -studentQuantile({ share: (1 - probability) / 2, degreesOfFreedom });
    return { coverageProbability: probability, coverageFactor: factor };
  }
  if (coverageProbability !== undefined)
    throw rangeError({
      where: 'coverageOf',
      wish: 'either coverageProbability or coverageFactor must be left out',
      got: [coverageProbability, coverageFactor],
    });
  const t = -positive('coverageOf', 'coverageFactor', coverageFactor);
  return { coverageProbability: 1 - 2 * studentShareBelow({ t, degreesOfFreedom }), coverageFactor };
}
