import { notNegative, positive } from '../quantity.ts';
import { deviance } from './deviance.ts';
import { HALF_LOG_TWO_PI, stirlingError } from './gamma.ts';
import { regularisedGamma } from './gamma-share.ts';
import { normalQuantile } from './normal.ts';
import { shareWithin } from './share.ts';

/** Newton's steps are quadratic; this bounds a fault and nothing else. */
const MOST_STEPS = 100;
/** A step below this part of x is rounding. */
const CLOSE = 2e-15;

interface At {
  readonly x: number;
  readonly degreesOfFreedom: number;
}

function checked(where: string, { x, degreesOfFreedom }: At): { a: number; x: number } {
  positive(where, 'degreesOfFreedom', degreesOfFreedom);
  if (x !== Number.POSITIVE_INFINITY) notNegative(where, 'x', x);
  return { a: degreesOfFreedom / 2, x: x / 2 };
}

/**
 * Share of the chi-square distribution below x; x >= 0 (or infinite), degreesOfFreedom > 0, any real number.
 * Accuracy as `regularisedGamma`. @throws RangeError outside those ranges.
 */
export function chiSquareShareBelow(at: At): number {
  return regularisedGamma(checked('chiSquareShareBelow', at)).below;
}

/** Share of the chi-square distribution above x, small shares to full relative accuracy. Ranges and errors as `chiSquareShareBelow`. */
export function chiSquareShareAbove(at: At): number {
  return regularisedGamma(checked('chiSquareShareAbove', at)).above;
}

/** A start for Newton: Wilson and Hilferty's cube (1931), or the leading power of x where that is not above zero. */
function start(share: number, a: number): number {
  const cube = 1 - 1 / (9 * a) + normalQuantile(share) / Math.sqrt(9 * a);
  const leading =
    Math.exp((Math.log(share) + Math.log(a) / 2 + HALF_LOG_TWO_PI + stirlingError(a)) / a - 1) * a;
  return cube > 0.3 ? a * cube ** 3 : leading;
}

/**
 * The x with a given share of the chi-square distribution below it; 0 for 0, Infinity for 1. degreesOfFreedom > 0.
 *
 * Newton on the logarithm of the smaller tail over ln x, where it is concave, so that no start can miss.
 * Worst relative error against 50-digit values, 0.5 to 1e5 degrees, shares 1e-10 to 1 - 1e-10: 1e-12.
 * @throws RangeError outside those ranges.
 */
export function chiSquareQuantile({
  share,
  degreesOfFreedom,
}: {
  share: number;
  degreesOfFreedom: number;
}): number {
  shareWithin('chiSquareQuantile', share);
  const a = positive('chiSquareQuantile', 'degreesOfFreedom', degreesOfFreedom) / 2;
  if (share === 0) return 0;
  if (share === 1) return Number.POSITIVE_INFINITY;
  const lower = share < 0.5;
  const wanted = lower ? share : 1 - share;
  let x = start(share, a);
  for (let step = 0; step < MOST_STEPS && x > 0; step++) {
    const { below, above } = regularisedGamma({ a, x });
    const reached = lower ? below : above;
    const density = Math.sqrt(a / (2 * Math.PI)) * Math.exp(-deviance({ a, m: x }) - stirlingError(a));
    const change = ((lower ? -1 : 1) * Math.log(reached / wanted) * reached) / density;
    x *= Math.exp(change);
    if (Math.abs(change) < CLOSE) break;
  }
  return 2 * x;
}
