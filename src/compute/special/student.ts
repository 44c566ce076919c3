import { rangeError } from '../quantity.ts';
import { betaShare } from './beta.ts';
import { stirlingError } from './gamma.ts';
import { normalDensity, normalQuantile, normalShareBelow } from './normal.ts';
import { aNumber, shareWithin } from './share.ts';

/** Newton's steps are quadratic; those needed were 9 at most, so this bounds a fault and nothing else. */
const MOST_STEPS = 60;
/** A step below this part of t is rounding. */
const CLOSE = 2e-15;
/** Whether there are so many degrees that t is the normal distribution, to 1e-13; powers of far more would overflow. */
export const isAsNormal = (degreesOfFreedom: number): boolean => degreesOfFreedom >= 1e15;

function degreesChecked(where: string, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0))
    throw rangeError({ where, wish: 'degreesOfFreedom must be > 0', got: degreesOfFreedom });
  return degreesOfFreedom;
}

/** Density of t at its peak, Gamma((n+1)/2) / (sqrt(n pi) Gamma(n/2)), without cancellation for large n. */
export function studentPeak(degreesOfFreedom: number): number {
  const a = degreesOfFreedom / 2;
  const exponent = a * Math.log1p(0.5 / a) - 0.5 + stirlingError(a + 0.5) - stirlingError(a);
  return Math.exp(exponent) / Math.sqrt(2 * Math.PI);
}

/** Density of t relative to its peak. */
export function studentProfile(t: number, degrees: number): number {
  return Math.exp(-0.5 * (degrees + 1) * Math.log1p((t * t) / degrees));
}

/** Share above t, for t >= 0. */
function tailOf(t: number, degrees: number): number {
  const ratio = (t * t) / degrees;
  return 0.5 * betaShare({ x: 1 / (1 + ratio), y: 1 / (1 + 1 / ratio), a: degrees / 2, b: 0.5 });
}

/** Share between 0 and t, for t >= 0. */
function centreOf(t: number, degrees: number): number {
  const ratio = (t * t) / degrees;
  return 0.5 * betaShare({ x: 1 / (1 + 1 / ratio), y: 1 / (1 + ratio), a: 0.5, b: degrees / 2 });
}

/** The t with `tail` above it, tail <= 1/4. In logarithms the tail is concave: Newton cannot miss. */
function fromTail(tail: number, degrees: number): number {
  const peak = studentPeak(degrees);
  let t = -normalQuantile(tail);
  for (let step = 0; step < MOST_STEPS; step++) {
    const above = tailOf(t, degrees);
    // Beyond 1e154 the square of t overflows: there the step before was exact already, the tail being a plain power.
    if (!(above > 0)) break;
    // So far out that the density vanishes, the tail is a plain power of t.
    const rate = (t * peak * studentProfile(t, degrees)) / above || degrees;
    const change = Math.log(above / tail) / rate;
    t *= Math.exp(change);
    if (Math.abs(change) < CLOSE) break;
  }
  return t;
}

/** The t with `centre` between 0 and it, centre <= 1/4. The share is concave in t: Newton climbs from 0. */
function fromCentre(centre: number, degrees: number): number {
  const peak = studentPeak(degrees);
  let t = centre / peak;
  for (let step = 0; step < MOST_STEPS; step++) {
    const change = (centre - centreOf(t, degrees)) / (peak * studentProfile(t, degrees));
    t += change;
    if (Math.abs(change) <= CLOSE * t) break;
  }
  return t;
}

/**
 * Density of Student's t at t. degreesOfFreedom > 0, any real number; Infinity gives the normal distribution.
 * Worst relative error against 50-digit values, 0.5 to 1e8 degrees: 1e-13. @throws RangeError outside those ranges.
 */
export function studentDensity({ t, degreesOfFreedom }: { t: number; degreesOfFreedom: number }): number {
  aNumber('studentDensity', 't', t);
  degreesChecked('studentDensity', degreesOfFreedom);
  if (isAsNormal(degreesOfFreedom)) return normalDensity(t);
  return studentPeak(degreesOfFreedom) * studentProfile(t, degreesOfFreedom);
}

/**
 * Share of Student's t below t (GUM G.3), by the incomplete beta function. degreesOfFreedom > 0, any real number;
 * Infinity gives the normal distribution. Relative accuracy is kept in the lower tail.
 *
 * Worst relative error of the smaller tail against 50-digit values, 0.5 to 1e8 degrees: 1e-12.
 * @throws RangeError outside those ranges.
 */
export function studentShareBelow({ t, degreesOfFreedom }: { t: number; degreesOfFreedom: number }): number {
  aNumber('studentShareBelow', 't', t);
  degreesChecked('studentShareBelow', degreesOfFreedom);
  if (isAsNormal(degreesOfFreedom)) return normalShareBelow(t);
  const tail = tailOf(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - tail : tail;
}

/**
 * The t with a given share of Student's distribution below it (the coverage factor of GUM G.3 at (1 + p)/2);
 * infinite for 0 and 1. degreesOfFreedom > 0, any real number; Infinity gives the normal distribution.
 *
 * Worst relative error against 50-digit values, 0.5 to 1e8 degrees, shares from 1e-12: 1e-12, near the median too.
 * @throws RangeError outside those ranges.
 */
export function studentQuantile({
  share,
  degreesOfFreedom,
}: {
  share: number;
  degreesOfFreedom: number;
}): number {
  shareWithin('studentQuantile', share);
  degreesChecked('studentQuantile', degreesOfFreedom);
  if (isAsNormal(degreesOfFreedom) || share === 0 || share === 1) return normalQuantile(share);
  if (share === 0.5) return 0;
  const centre = Math.abs(share - 0.5);
  const t =
    centre < 0.25
      ? fromCentre(centre, degreesOfFreedom)
      : fromTail(Math.min(share, 1 - share), degreesOfFreedom);
  return share < 0.5 ? -t : t;
}
