import type { Belief } from './deciding.ts';
import type { Interval } from './distribution/distribution.ts';
import { solveSign } from './special/solve.ts';
import type { Tolerance } from './specification.ts';

/** Tried starts of the span that holds a probability, before the best is refined. */
const STARTS = 24;
/** Where a span begins is refined to this part of what it may leave out: its width, least there, then is right to the square of it. */
const FINEST = 1e-6;
/** How close a limit of acceptance is found, as a part of the span's width: finer than any level is known. */
const EDGE_CLOSENESS = 1e-10;

const widthOf = ({ lower, upper }: Interval): number => upper - lower;

/** The narrowest span that holds a probability, as if the distribution had one hump. */
export function narrowestSpan({ of, probability }: { of: Belief; probability: number }): Interval {
  const free = 1 - probability;
  const span = (tail: number) => ({
    lower: of.quantile(tail),
    upper: of.quantile(Math.min(1, tail + probability)),
  });
  const width = (tail: number) => widthOf(span(tail));
  let best = { tail: free / 2, width: width(free / 2) };
  const attempt = (tail: number) => {
    if (tail < 0 || tail > free) return;
    const across = width(tail);
    if (across < best.width) best = { tail, width: across };
  };
  for (let i = 0; i <= STARTS; i++) attempt((i / STARTS) * free);
  for (let step = free / STARTS; step > free * FINEST; step /= 2)
    for (const tail of [best.tail - step, best.tail + step]) attempt(tail);
  return span(best.tail);
}

/** Probability of conformity if the whole distribution were moved by `shift`. */
const conforming = (of: Belief, { lower, upper }: Tolerance, shift: number): number =>
  (upper === Number.POSITIVE_INFINITY ? 1 : of.shareBelow(upper - shift)) -
  (lower === Number.NEGATIVE_INFINITY ? 0 : of.shareBelow(lower - shift));

/** Probability that the value lies within the limits, both tails counted (JCGM 106, 7.2). */
export function probabilityWithin(of: Belief, tolerance: Tolerance): number {
  return conforming(of, tolerance, 0);
}

/** The shift between `enough` (probability reached) and `tooFar` (not reached) where it is just reached. */
function edge(
  surplus: (shift: number) => number,
  { enough, tooFar, tolerance }: { enough: number; tooFar: number; tolerance: number },
): number {
  const isRising = tooFar < enough;
  return solveSign((shift) => (isRising ? surplus(shift) : -surplus(shift)), {
    lower: Math.min(enough, tooFar),
    upper: Math.max(enough, tooFar),
    tolerance,
  });
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
  const room = tolerance.upper - tolerance.lower;
  const equalTails = { lower: of.quantile((1 - probability) / 2), upper: of.quantile((1 + probability) / 2) };
  // Most often equal tails fit; only where they do not is the narrowest span worth its search.
  const span = widthOf(equalTails) <= room ? equalTails : narrowestSpan({ of, probability });
  if (widthOf(span) > room) return undefined;
  // A span in the middle of the tolerance holds the probability: from there to either side until it no longer does.
  const enough = (tolerance.lower + tolerance.upper - span.lower - span.upper) / 2;
  const surplus = (shift: number) => conforming(of, tolerance, shift) - probability;
  const closeness = EDGE_CLOSENESS * widthOf(span);
  const at = (tooFar: number) => estimate + edge(surplus, { enough, tooFar, tolerance: closeness });
  return { lower: at(lowest - estimate - widthOf(span)), upper: at(highest - estimate + widthOf(span)) };
}
