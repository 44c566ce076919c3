import { evaluate, type Interval } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';
import { type Comparison, claimModel } from './gauge-blocks.ts';

/** The whole distribution of a claim: the interval in its middle that holds as much as the strip stands for, and its curve. */
export interface WholeClaim {
  readonly interval: Interval;
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** Every fourth point of the curve is enough for a drawing this small. */
const KEPT = 4;

/** The whole distribution of what somebody says beforehand. @throws RangeError where a sum has none, which no comparison here is. */
export function wholeClaimOf(of: Comparison): WholeClaim {
  const { whole } = evaluate({ model: claimModel(of), coverageProbability: COVERAGE_PROBABILITY });
  if ('unavailable' in whole)
    throw new RangeError(`wholeClaimOf: the sum must have a whole distribution, got ${whole.unavailable}`);
  return { interval: whole.symmetric, curve: whole.curve.filter((_, index) => index % KEPT === 0) };
}
