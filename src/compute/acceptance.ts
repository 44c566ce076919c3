import type { Belief } from './deciding.ts';
import type { Interval } from './distribution/distribution.ts';
import type { Tolerance } from './specification.ts';

/** Tried starts of the span that holds a probability, before the best is refined. */
const STARTS = 64;
/** Halvings of an interval until it is as narrow as a double is fine. */
const HALVINGS = 60;

/** The narrowest span that holds a probability, as if the distribution had one hump. */
export function narrowestSpan({ of, probability }: { of: Belief; probability: number }): Interval {
  const free = 1 - probability;
  const span = (tail: number) => ({
    lower: of.quantile(tail),
    upper: of.quantile(Math.min(1, tail + probability)),
  });
  const width = (tail: number) => {
    const { lower, upper } = span(tail);
    return upper - lower;
  };
  const tails = Array.from({ length: STARTS + 1 }, (_, i) => (i / STARTS) * free);
  let best = tails.reduce((a, b) => (width(b) < width(a) ? b : a), free / 2);
  for (let step = free / STARTS; step > free * 1e-9; step /= 2)
    for (const tail of [best - step, best + step])
      if (tail >= 0 && tail <= free && width(tail) < width(best)) best = tail;
  return span(best);
}

/** Probability of conformity if the whole distribution were moved by `shift`. */
const conforming = (of: Belief, { lower, upper }: Tolerance, shift: number): number =>
  (upper === Number.POSITIVE_INFINITY ? 1 : of.shareBelow(upper - shift)) -
  (lower === Number.NEGATIVE_INFINITY ? 0 : of.shareBelow(lower - shift));

/** Probability that the value lies within the limits, both tails counted (JCGM 106, 7.2). */
export function probabilityWithin(of: Belief, tolerance: Tolerance): number {
  return conforming(of, tolerance, 0);
}

/** The shift between `enough` (probability reached) and `toofar` (not reached) where it is just reached. */
function edge(reached: (shift: number) => boolean, enough: number, tooFar: number): number {
  let [inner, outer] = [enough, tooFar];
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (inner + outer) / 2;
    if (reached(middle)) inner = middle;
    else outer = middle;
  }
  return inner;
}

/**
 * The estimates for which the probability of conformity is at least `probability`, if the distribution keeps its form and
 * only moves: undefined if there are none. An end is infinite on the side without a limit.
 */
export function acceptedByProbability({
  of,
  estimate,
  tolerance,
  probability,
}: {
  of: Belief;
  estimate: number;
  tolerance: Tolerance;
  probability: number;
}): Interval | undefined {
  const lowest = tolerance.lower + estimate - of.quantile(1 - probability);
  const highest = tolerance.upper + estimate - of.quantile(probability);
  if (!Number.isFinite(highest - lowest)) return { lower: lowest, upper: highest };
  const span = narrowestSpan({ of, probability });
  if (span.upper - span.lower > tolerance.upper - tolerance.lower) return undefined;
  // The narrowest span in the middle of the tolerance holds the probability: from there to either side until it no longer does.
  const middle = (tolerance.lower + tolerance.upper - span.lower - span.upper) / 2;
  const reached = (shift: number) => conforming(of, tolerance, shift) >= probability;
  return {
    lower: estimate + edge(reached, middle, lowest - estimate - (span.upper - span.lower)),
    upper: estimate + edge(reached, middle, highest - estimate + (span.upper - span.lower)),
  };
}
