import type { Distribution, Interval, Shape } from '../distribution/distribution.ts';
import { shareWithin } from '../special/share.ts';

/** A share below at a value; a table of these rises in both. */
export interface Knot {
  readonly x: number;
  readonly share: number;
}

/** Index of the last knot whose `key` is <= wanted; -1 if there is none. */
function lastUpTo(knots: readonly Knot[], key: keyof Knot, wanted: number): number {
  let [low, high] = [-1, knots.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((knots[middle]?.[key] ?? Number.NaN) <= wanted) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Straight between knots, level outside them. */
function interpolate(knots: readonly Knot[], from: keyof Knot, to: keyof Knot, at: number): number {
  const i = lastUpTo(knots, from, at);
  const [left, right] = [knots[Math.max(i, 0)], knots[Math.min(i + 1, knots.length - 1)]];
  if (left === undefined || right === undefined) return Number.NaN;
  if (left === right || right[from] === left[from]) return left[to];
  return left[to] + ((at - left[from]) / (right[from] - left[from])) * (right[to] - left[to]);
}

/**
 * A distribution given by its share below at knots, straight between them: the density is a row of steps.
 * The first knot has share 0 and the last share 1. Moments and limits come from whoever made the table, who knows them
 * better; the table is asked for on first use.
 */
export function tabulated({
  shape,
  mean,
  standardDeviation,
  limits,
  knots,
}: {
  shape: Shape;
  mean: number | undefined;
  standardDeviation: number | undefined;
  limits: Interval;
  knots: () => readonly Knot[];
}): Distribution {
  const quantile = (share: number) => {
    if (shareWithin('quantile', share) === 0) return limits.lower;
    return share === 1 ? limits.upper : interpolate(knots(), 'share', 'x', share);
  };
  return {
    shape,
    mean,
    standardDeviation,
    limits,
    quantile,
    shareBelow: (x) => interpolate(knots(), 'x', 'share', x),
    density: (x) => {
      const i = lastUpTo(knots(), 'x', x);
      const [left, right] = [knots()[i], knots()[i + 1]];
      return left && right ? (right.share - left.share) / (right.x - left.x) : 0;
    },
    sample: (random) => interpolate(knots(), 'share', 'x', random()),
  };
}
