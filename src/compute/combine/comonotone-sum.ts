import type { Distribution, Interval } from '../distribution/distribution.ts';
import { meanOverRanks } from './comonotone.ts';
import { type Knot, tabulated } from './tabulated.ts';
import { type Part, RANKS, rankAt, together } from './together.ts';

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

/**
 * Distribution of a weighted sum of quantities of different shapes that move together by rank: g(P), with P uniform from
 * 0 to 1 and g(p) the weighted sum of their quantiles at p. With weights of both signs g may rise and fall and is sorted.
 * Mean and standard deviation are exact; quantiles from 1e-3 to 0.999 are right to about 1e-4 of the standard deviation;
 * tails of unlimited parts are cut at a share of about 1e-6. @throws RangeError if there is no part.
 */
export function comonotoneSum(parts: readonly Part[]): Distribution {
  const { quantile: g, mean, limits } = together(parts);
  const spreads = parts.every(({ distribution }) => distribution.standardDeviation !== undefined);
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
