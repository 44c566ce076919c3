import { notNegative, positive } from '../quantity.ts';
import { scaledBesselI } from '../special/bessel-i.ts';
import { powerTerm, regularisedGamma } from '../special/gamma-share.ts';
import { normalQuantile } from '../special/normal.ts';
import { shareWithin } from '../special/share.ts';
import { solveRising } from '../special/solve.ts';
import type { Distribution } from './distribution.ts';
import { rayleigh } from './rayleigh.ts';

/** Taken for a uniform value of 0, whose quantile would be infinite. */
const TINY = 2 ** -54;
/** Poisson shares further from their mean than this many standard deviations are left out. */
const REACH = 9;

/** Beyond the offset by this many scales lies less than any double can tell from nothing: exp(-800). */
const FAR = 40;

/** Below this a share has lost digits, or all of itself: those next to it are not made from it. */
const FAINT = 1e-280;

/** Share of a Poisson distribution of the given mean at k. */
const poisson = (mean: number, k: number) => (k === 0 ? Math.exp(-mean) : powerTerm({ a: k, x: mean }) / k);

/** The share at k - 1 from that at k. */
const oneDown = (share: number, mean: number, k: number) =>
  share > FAINT ? (share * k) / mean : poisson(mean, k - 1);

/**
 * Share below r of the length of a vector of two unit normal components around `offset` > 0: a Poisson mixture of gamma
 * distributions (non-central chi-square of two degrees: M. Abramowitz and I. Stegun, 26.4.25).
 * From the highest term down P(k, y) = P(k + 1, y) + y^k e^-y / k!: every term is positive.
 */
function shareBelowUnit(offset: number, r: number): number {
  const mean = (offset * offset) / 2;
  const y = (r * r) / 2;
  const width = REACH * Math.sqrt(mean) + 30;
  const least = Math.max(0, Math.floor(mean - width));
  let k = Math.ceil(mean + width);
  let gamma = regularisedGamma({ a: k + 1, x: y }).below;
  let power = poisson(y, k);
  let weight = poisson(mean, k);
  let sum = weight * gamma;
  for (; k > least; k--) {
    gamma += power;
    power = oneDown(power, y, k);
    weight = oneDown(weight, mean, k);
    sum += weight * gamma;
  }
  return Math.min(1, sum);
}

/** Mean length for unit components (Laguerre function of order 1/2, by Bessel functions). */
function meanOfUnit(offset: number): number {
  const q = (offset * offset) / 2;
  const [i0, i1] = [scaledBesselI(0, q / 2), scaledBesselI(1, q / 2)];
  return Math.sqrt(Math.PI / 2) * ((1 + q) * i0 + q * i1);
}

function densityOfUnit(offset: number, r: number): number {
  return r * Math.exp(-((r - offset) ** 2) / 2) * scaledBesselI(0, r * offset);
}

/**
 * Length of a vector whose two components are independent normal values of standard deviation `scale` around a point at
 * distance `offset` from 0: the Rice distribution, as of a known reflection measured through directivity error or
 * noise. With offset 0 it is the Rayleigh distribution. Unit: that of offset and scale.
 *
 * Shares below within 1e-11, for offset up to 1000 scale. @throws RangeError unless offset >= 0 and scale > 0.
 */
export function rice({ offset, scale }: { offset: number; scale: number }): Distribution {
  notNegative('rice', 'offset', offset);
  positive('rice', 'scale', scale);
  if (offset === 0) return { ...rayleigh({ scale }), shape: 'rice' };
  const centre = offset / scale;
  const mean = meanOfUnit(centre);
  const standardDeviation = Math.sqrt(2 + centre * centre - mean * mean);
  const at = (r: number) => ({ value: shareBelowUnit(centre, r), slope: densityOfUnit(centre, r) });
  const quantile = (share: number) =>
    solveRising(at, {
      wanted: share,
      lower: 1e-12,
      upper: centre + FAR,
      start: mean,
      tolerance: 1e-13 * mean,
    });
  return {
    shape: 'rice',
    mean: scale * mean,
    standardDeviation: scale * standardDeviation,
    limits: { lower: 0, upper: Number.POSITIVE_INFINITY },
    density: (x) => (x > 0 ? densityOfUnit(centre, x / scale) / scale : 0),
    shareBelow: (x) => (x > 0 ? (x / scale > centre + FAR ? 1 : shareBelowUnit(centre, x / scale)) : 0),
    quantile: (share) => {
      shareWithin('quantile', share);
      if (share === 0 || share === 1) return share === 0 ? 0 : Number.POSITIVE_INFINITY;
      return scale * quantile(share);
    },
    sample: (random) => {
      const along = centre + normalQuantile(random() || TINY);
      const across = normalQuantile(random() || TINY);
      return scale * Math.sqrt(along * along + across * across);
    },
  };
}
