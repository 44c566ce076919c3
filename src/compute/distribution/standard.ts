import { shareWithin } from '../special/share.ts';
import type { Distribution, Random, Shape } from './distribution.ts';

/** A shape symmetric about 0 in its own scale (half-width, standard deviation ...), from which the family is stretched and moved. */
export interface Standard {
  readonly shape: Shape;
  /** Whether a mean exists: it is then 0. */
  readonly hasMean: boolean;
  /** Undefined where none exists. */
  readonly standardDeviation: number | undefined;
  /** No value lies above this; Infinity where there is no limit. */
  readonly limit: number;
  density(z: number): number;
  /** Share below z, with full relative accuracy for z <= 0; never asked for z > 0. */
  lowerShare(z: number): number;
  /** The z <= 0 with this share below it, for 0 < share <= 1/2. */
  lowerQuantile(share: number): number;
  sample(random: Random): number;
  /** Of Student's t only. */
  readonly degreesOfFreedom?: number;
  /** Half-width of the top, of trapezoids only: 0 (triangle) to 1 (rectangle). */
  readonly topRatio?: number;
}

/** A member of the family of one standard shape, with what is needed to stretch and move it again. */
export interface Member extends Distribution {
  readonly standard: Standard;
  readonly location: number;
  readonly scale: number;
}

/** Moves a standard shape to `location` and stretches it by `scale` > 0; both in the quantity's unit. */
export function memberOf(
  standard: Standard,
  { location, scale }: { location: number; scale: number },
): Member {
  const { standardDeviation } = standard;
  const reach = standard.limit * scale;
  const limits = { lower: location - reach, upper: location + reach };
  return {
    standard,
    location,
    scale,
    shape: standard.shape,
    mean: standard.hasMean ? location : undefined,
    standardDeviation: standardDeviation === undefined ? undefined : standardDeviation * scale,
    limits,
    density: (x) =>
      x < limits.lower || x > limits.upper ? 0 : standard.density((x - location) / scale) / scale,
    shareBelow: (x) => shareBelow(standard, (x - location) / scale),
    quantile: (share) => location + scale * quantile(standard, share),
    sample: (random) => location + scale * standard.sample(random),
  };
}

function shareBelow(standard: Standard, z: number): number {
  if (Math.abs(z) >= standard.limit) return z > 0 ? 1 : 0;
  return z > 0 ? 1 - standard.lowerShare(-z) : standard.lowerShare(z);
}

function quantile(standard: Standard, share: number): number {
  shareWithin('quantile', share);
  if (share === 0) return -standard.limit;
  if (share === 1) return standard.limit;
  return share > 0.5 ? -standard.lowerQuantile(1 - share) : standard.lowerQuantile(share);
}

/** Whether a distribution is a standard shape stretched and moved. */
export function isMember(distribution: Distribution): distribution is Member {
  return 'standard' in distribution;
}

/** The x with `share` ABOVE it; small shares keep their accuracy where the shape is symmetric. */
export function quantileFromAbove(of: Distribution, share: number): number {
  return isMember(of) ? 2 * of.location - of.quantile(share) : of.quantile(1 - share);
}
