import type { Distribution, Interval } from '../distribution/distribution.ts';
import { rangeError } from '../quantity.ts';
import { meanOverRanks } from './comonotone.ts';
import { type Knot, tabulated } from './tabulated.ts';

/** Ranks in the table: an end of the 95 % interval is then right to about 1e-4 of the standard deviation. */
const RANKS = 1024;

interface Part {
  readonly distribution: Distribution;
  readonly sensitivity: number;
}

/** Ranks crowd towards both ends, where quantiles run away: t^2 (3 - 2t). */
const rankAt = (t: number) => t * t * (3 - 2 * t);

/** g at the middle of each cell of ranks, sorted by value, each cell carrying its width as share. */
function knotsOf(g: (rank: number) => number, limits: Interval): Knot[] {
  const cells = Array.from({ length: RANKS }, (_, i) => ({
    x: g(rankAt((i + 0.5) / RANKS)),
    width: rankAt((i + 1) / RANKS) - rankAt(i / RANKS),
  })).sort((a, b) => a.x - b.x);
  const [first, last] = [cells[0]?.x ?? 0, cells.at(-1)?.x ?? 0];
  let below = 0;
  const knots = cells.map(({ x, width }) => {
    below += width;
    return { x, share: below - width / 2 };
  });
  const start = Number.isFinite(limits.lower) ? limits.lower : first;
  const end = Number.isFinite(limits.upper) ? limits.upper : last;
  return [{ x: start, share: 0 }, ...knots, { x: end, share: 1 }];
}

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
 * Distribution of a weighted sum of quantities of different shapes that move together by rank: g(P), with P uniform from
 * 0 to 1 and g(p) the weighted sum of their quantiles at p. With weights of both signs g may rise and fall and is sorted.
 * Mean and standard deviation are exact; quantiles from 1e-3 to 0.999 are right to about 1e-4 of the standard deviation;
 * tails of unlimited parts are cut at a share of about 1e-6. @throws RangeError if there is no part.
 */
export function comonotoneSum({ parts }: { parts: readonly Part[] }): Distribution {
  if (parts.length === 0)
    throw rangeError({ where: 'comonotoneSum', wish: 'parts must not be empty', got: parts.length });
  const g = (rank: number) =>
    parts.reduce((sum, { distribution, sensitivity }) => sum + sensitivity * distribution.quantile(rank), 0);
  const mean = parts.reduce<number | undefined>(
    (sum, { distribution, sensitivity }) =>
      sum === undefined || distribution.mean === undefined
        ? undefined
        : sum + sensitivity * distribution.mean,
    0,
  );
  const spreads = parts.every(({ distribution }) => distribution.standardDeviation !== undefined);
  const limits = limitsOf(parts, g);
  let made: Knot[] | undefined;
  return tabulated({
    shape: 'transformed',
    mean,
    standardDeviation:
      mean === undefined || !spreads ? undefined : Math.sqrt(meanOverRanks((rank) => (g(rank) - mean) ** 2)),
    limits,
    knots: () => {
      made ??= knotsOf(g, limits);
      return made;
    },
  });
}
