import type { WholeDistribution } from '#compute';

/** Points of the drawn curve: finer than its line is thick. */
const POINTS = 161;
/** How far beyond the interval the curve is drawn, in widths of it: tails of few readings reach without end. */
const TAIL_SHOWN = 0.6;
/** Where the density is a smaller part of its peak than this, the curve lies on its axis. */
const FLAT = 1e-4;

/** A point of a curve: a level in dBm and the density there, per dB. */
export interface CurvePoint {
  readonly x: number;
  readonly density: number;
}

/**
 * Density about the coverage interval, averaged over each step, so that it stays finite where the density itself does not. Empty
 * where nothing is in doubt, or so little that a double holds nothing between the ends.
 */
export function drawnCurve({ symmetric, shareBelow }: WholeDistribution): readonly CurvePoint[] {
  const width = symmetric.upper - symmetric.lower;
  const step = (width * (1 + 2 * TAIL_SHOWN)) / POINTS;
  const from = symmetric.lower - TAIL_SHOWN * width;
  if (!(step > 0 && from + step > from)) return [];
  let below = shareBelow(from);
  const points = Array.from({ length: POINTS }, (_, index) => {
    const next = shareBelow(from + (index + 1) * step);
    const density = Math.max(0, next - below) / step;
    below = next;
    return { x: from + (index + 0.5) * step, density };
  });
  return trimmed(points);
}

/** Without the flat ends, but for one point at each where the curve comes down to its axis. */
function trimmed(points: readonly CurvePoint[]): readonly CurvePoint[] {
  const least = FLAT * points.reduce((peak, { density }) => Math.max(peak, density), 0);
  const first = points.findIndex(({ density }) => density > least);
  const last = points.findLastIndex(({ density }) => density > least);
  return points.slice(Math.max(0, first - 1), last + 2);
}
