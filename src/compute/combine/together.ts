import type { Distribution, Interval } from '../distribution/distribution.ts';
import { rangeError } from '../quantity.ts';

/** Ranks at which what moves together is looked at. */
export const RANKS = 1024;

/** A quantity in a weighted sum. */
export interface Part {
  readonly distribution: Distribution;
  readonly sensitivity: number;
}

/** What a weighted sum of quantities that move together by rank is known for without its distribution. */
export interface Together {
  /** Value of the sum at a rank, 0 to 1: the share that lies below each part there. Where weights have both signs it may rise and fall. */
  quantile(rank: number): number;
  /** Undefined where a part has none. */
  readonly mean: number | undefined;
  readonly limits: Interval;
}

/** Ranks crowd towards both ends, where quantiles run away: t^2 (3 - 2t). */
export const rankAt = (t: number): number => t * t * (3 - 2 * t);

/** Ends of the sum: where weights have both signs, an extreme may lie between the ends of the ranks. */
function limitsOf(parts: readonly Part[], g: (rank: number) => number): Interval {
  const unlimited = (end: 'lower' | 'upper') =>
    parts.some(
      ({ distribution: { limits }, sensitivity }) =>
        Number.isFinite(limits[(end === 'lower') === sensitivity > 0 ? 'lower' : 'upper']) === false,
    );
  const inside = Array.from({ length: RANKS - 1 }, (_, i) => g(rankAt((i + 1) / RANKS)));
  const ends = [g(0), g(1)].filter((y) => Number.isFinite(y));
  return {
    lower: unlimited('lower') ? Number.NEGATIVE_INFINITY : Math.min(...ends, ...inside),
    upper: unlimited('upper') ? Number.POSITIVE_INFINITY : Math.max(...ends, ...inside),
  };
}

/**
 * A weighted sum of quantities that move together by rank, as far as a worst case needs it: its value at each rank, its mean (exact) and
 * its ends, exact where all weights have one sign and else the extremes at 1024 ranks. @throws RangeError if there is no part.
 */
export function together(parts: readonly Part[]): Together {
  if (parts.length === 0)
    throw rangeError({ where: 'together', wish: 'parts must not be empty', got: parts.length });
  const quantile = (rank: number) =>
    parts.reduce((sum, { distribution, sensitivity }) => sum + sensitivity * distribution.quantile(rank), 0);
  const mean = parts.reduce<number | undefined>(
    (sum, { distribution, sensitivity }) =>
      sum === undefined || distribution.mean === undefined
        ? undefined
        : sum + sensitivity * distribution.mean,
    0,
  );
  return { quantile, mean, limits: limitsOf(parts, quantile) };
}
