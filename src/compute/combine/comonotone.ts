import type { Distribution } from '../distribution/distribution.ts';
import { isMember } from '../distribution/standard.ts';

/** b = shift + scale x a, in distribution. */
export interface Affine {
  readonly scale: number;
  readonly shift: number;
}

/** Two shapes count as one if their quantiles, once scaled, agree this well: the worst error of a quantile is 1e-10. */
const SAME_SHAPE = 1e-8;
/** Shares at which shapes are compared: middle, shoulders and tails. */
const PROBES = [0.001, 0.01, 0.05, 0.1, 0.4, 0.5, 0.6, 0.9, 0.95, 0.99, 0.999] as const;

/** Distance between the quartiles: a width that every shape has, the Cauchy shape too. 0 for a constant. */
export function quartileDistance(distribution: Distribution): number {
  return distribution.quantile(0.75) - distribution.quantile(0.25);
}

/**
 * Whether b has the shape of a, stretched and moved, and by how much. Undefined where it has another shape, or where a is
 * constant. Judged by eleven quantiles, so that any distribution can be asked.
 */
export function affineOf(a: Distribution, b: Distribution): Affine | undefined {
  if (a === b) return { scale: 1, shift: 0 };
  const widthA = quartileDistance(a);
  if (widthA === 0) return undefined;
  // Of one family the ratio is known outright, and opposite signs then cancel to nothing.
  const scale =
    isMember(a) && isMember(b) && a.shape === b.shape ? b.scale / a.scale : quartileDistance(b) / widthA;
  const shift = b.quantile(0.5) - scale * a.quantile(0.5);
  const slack = SAME_SHAPE * Math.abs(scale) * widthA;
  const same = PROBES.every((p) => Math.abs(shift + scale * a.quantile(p) - b.quantile(p)) <= slack);
  return same ? { scale, shift } : undefined;
}

/** Steps of the sum over ranks. */
const STEPS = 200;
/** Ranks beyond 1/2 +- 1/2 tanh(s) with this s (1 - 5e-15) add less than the shapes' own error. */
const REACH = 16.5;

/**
 * Mean over all ranks p of g(p): the integral over 0 to 1 by the trapezoidal rule in s with p = 1/(1 + e^-2s). That rule
 * converges exponentially for integrands that fade at both ends, and crowds its points where tails are.
 */
export function meanOverRanks(g: (p: number) => number): number {
  let sum = 0;
  let weight = 0;
  for (let i = -STEPS; i <= STEPS; i++) {
    const s = (i / STEPS) * REACH;
    const p = 1 / (1 + Math.exp(-2 * s));
    const w = 1 / Math.cosh(s) ** 2;
    sum += w * g(p);
    weight += w;
  }
  return sum / weight;
}

/**
 * Correlation coefficient of two quantities that move together by rank: 1 for one shape, less for two shapes (0.977 for
 * rectangular and normal: the square root of 3/pi). 1 where one of them has no standard deviation, since then no coefficient exists.
 */
export function comonotoneCorrelation(a: Distribution, b: Distribution): number {
  if (!a.standardDeviation || !b.standardDeviation || affineOf(a, b)) return 1;
  const [middleA, middleB] = [a.quantile(0.5), b.quantile(0.5)];
  const offA = (a.mean ?? middleA) - middleA;
  const offB = (b.mean ?? middleB) - middleB;
  const product = meanOverRanks((p) => (a.quantile(p) - middleA) * (b.quantile(p) - middleB));
  return Math.min(1, (product - offA * offB) / (a.standardDeviation * b.standardDeviation));
}
