import type { Distribution } from '../distribution/distribution.ts';
import { isMember, type Member } from '../distribution/standard.ts';

/**
 * Standard deviations beyond which nothing is left of a sum of bounded and normal parts: their tails fall at least as
 * fast as the normal's, exp(-7.5^2/2) = 6e-13.
 */
const NORMAL_REACH = 7.5;
/** Up to these degrees of freedom a t has tails too long for a period that fits the rest; its tails are taken apart. */
const HEAVY_BELOW = 40;
const HEAVY_CORE = 8;
/** Two long tails meet far out: the period must hold the slower one, for t of two degrees to 1e-6. */
const TWO_HEAVY_CORE = 60;
/** Standard deviations of the rest at which its own shape no longer shows in a long tail: the error falls as the fifth power. */
const REST_REACH = 20;
/**
 * What is left out at either end of a part without a formula: the least share with which the cells stay fine enough. The share is
 * then taken to lie at the end.
 */
const FAR_SHARES = [1e-7, 1e-6, 1e-5, 1e-4] as const;
/** Cells that cover a period, at most; and cells to a standard deviation, at least. */
export const MOST_CELLS = 2 ** 14;
export const FINENESS = 20;

/** How wide a sum is, and how to cut it into a period. */
export interface Extent {
  /** Sum of the parts' centres. */
  readonly centre: number;
  /** Spread near the middle, for starts of searches. */
  readonly spread: number;
  readonly period: number;
  /** Parts of Student's t whose long tails need care. */
  readonly heavy: readonly Member[];
  /** Variance of all other parts. */
  readonly lightVariance: number;
}

/** Whether a part is a t with long tails. */
export function isHeavy(part: Distribution): part is Member {
  return isMember(part) && (part.standard.degreesOfFreedom ?? Number.POSITIVE_INFINITY) < HEAVY_BELOW;
}

/** Where a part is placed: its mean, or its median where it has none. */
export function centreOf(part: Distribution): number {
  return isMember(part) ? part.location : (part.mean ?? part.quantile(0.5));
}

/** Half the width that holds the middle 68 %: a standard deviation where there is none. */
export function spreadOf(part: Distribution): number {
  if (isMember(part) && part.shape === 'student') return part.scale;
  return part.standardDeviation ?? (part.quantile(0.84) - part.quantile(0.16)) / 2;
}

const isBounded = ({ limits }: Distribution) => Number.isFinite(limits.upper - limits.lower);

/** Half-width of a part about its centre. */
function reachOf(part: Distribution, farShare = 0): number {
  const { lower, upper } = part.limits;
  if (isBounded(part)) return Math.max(upper - centreOf(part), centreOf(part) - lower);
  const far = Math.max(
    part.quantile(1 - farShare) - centreOf(part),
    centreOf(part) - part.quantile(farShare),
  );
  return isMember(part) ? Math.max(far, 10 * part.scale) : far;
}

const varianceOf = (parts: readonly Distribution[]) => sumOf(parts.map((part) => spreadOf(part) ** 2));
const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Measures a sum of two parts or more. */
export function extentOf(parts: readonly Distribution[]): Extent {
  const [least, ...larger] = FAR_SHARES;
  let extent = extentWith(parts, least);
  for (const share of larger) {
    if (extent.period * FINENESS <= MOST_CELLS * extent.spread) break;
    extent = extentWith(parts, share);
  }
  return extent;
}

function extentWith(parts: readonly Distribution[], farShare: number): Extent {
  const heavy = parts.filter(isHeavy);
  const light = parts.filter((part) => !isHeavy(part));
  const tame = light.filter((part) => isBounded(part) || part.shape === 'normal');
  const wild = light.filter((part) => !tame.includes(part));
  const tameVariance = varianceOf(tame);
  const normalReach = NORMAL_REACH * Math.sqrt(varianceOf(tame.filter((part) => !isBounded(part))));
  const lightVariance = tameVariance + varianceOf(wild);
  const tameReach = Math.min(
    sumOf(tame.filter(isBounded).map((part) => reachOf(part))) + normalReach,
    NORMAL_REACH * Math.sqrt(tameVariance),
  );
  const reach = tameReach + sumOf(wild.map((part) => reachOf(part, farShare)));
  const core = sumOf(heavy.map((part) => part.scale)) * (heavy.length > 1 ? TWO_HEAVY_CORE : HEAVY_CORE);
  // With long tails the remainder of their treatment must die out within the period as well.
  const half =
    heavy.length > 0 ? Math.max(2 * reach, REST_REACH * Math.sqrt(lightVariance)) + core : 1.02 * reach;
  return {
    centre: sumOf(parts.map(centreOf)),
    spread: Math.sqrt(lightVariance + sumOf(heavy.map((part) => part.scale ** 2))),
    period: 2 * half,
    heavy,
    lightVariance,
  };
}
