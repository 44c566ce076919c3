import type { Interval } from '../distribution/distribution.ts';
import { tailsOf } from './selection.ts';

/** Coverage intervals of a row of model values. */
export interface SampleIntervals {
  readonly symmetric: Interval;
  readonly shortest: Interval;
}

/**
 * Probabilistically symmetric and shortest interval of M model values (JCGM 101, 7.7): of the intervals from the r-th to
 * the (r + q)-th value in rising order, q = pM, the one with r = (M - q)/2, and the shortest one.
 */
export function sampleIntervals(values: Float64Array, probability: number): SampleIntervals {
  const count = values.length;
  const q = Math.min(count - 1, Math.floor(probability * count + 0.5));
  const choices = count - q;
  const { lowest, highest } = tailsOf(values, choices);
  const interval = (k: number): Interval => ({ lower: lowest[k] as number, upper: highest[k] as number });
  let best = 0;
  for (let k = 1; k < choices; k++)
    if ((highest[k] as number) - (lowest[k] as number) < (highest[best] as number) - (lowest[best] as number))
      best = k;
  // The r-th value has index r - 1; a half is rounded up (7.7.2).
  const middle = Math.min(choices - 1, Math.max(0, Math.floor(choices / 2 + 0.5) - 1));
  return { symmetric: interval(middle), shortest: interval(best) };
}
