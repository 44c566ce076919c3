import { erfc } from './erf.ts';
import { polynomial } from './rational.ts';
import { aNumber, shareWithin } from './share.ts';

const ONE_OVER_ROOT_TWO_PI = 0.3989422804014327;

/** Density of the standard normal distribution at z, any z (infinite too). No unit. */
export function normalDensity(z: number): number {
  return ONE_OVER_ROOT_TWO_PI * Math.exp(-0.5 * z * z);
}

/**
 * Share of the standard normal distribution below z, any z (infinite too); relative accuracy kept in the lower tail.
 * Worst relative error against 50-digit values, -37 <= z <= 10: 1e-13. @throws RangeError for NaN.
 */
export function normalShareBelow(z: number): number {
  return 0.5 * erfc(-aNumber('normalShareBelow', 'z', z) * Math.SQRT1_2);
}

/** Wichura's three fits, each the quotient of two polynomials of degree 7, highest power first. */
function centralFit(r: number): number {
  const top = [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ];
  const bottom = [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ];
  return polynomial(r, top) / polynomial(r, bottom);
}

function middleFit(r: number): number {
  const top = [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ];
  const bottom = [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ];
  return polynomial(r, top) / polynomial(r, bottom);
}

function farFit(r: number): number {
  const top = [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ];
  const bottom = [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ];
  return polynomial(r, top) / polynomial(r, bottom);
}

/**
 * The z with a given share of the standard normal distribution below it; -Infinity for 0, Infinity for 1.
 *
 * Source: M. J. Wichura, "Algorithm AS 241: the percentage points of the normal distribution", Appl. Statist. 37
 * (1988), 477 to 484. Worst relative error against 50-digit values, share >= 1e-300: 1e-14 (above one half, that of
 * the share's own last digit). @throws RangeError outside 0 to 1.
 */
export function normalQuantile(share: number): number {
  shareWithin('normalQuantile', share);
  if (share === 0) return Number.NEGATIVE_INFINITY;
  if (share === 1) return Number.POSITIVE_INFINITY;
  const q = share - 0.5;
  if (Math.abs(q) <= 0.425) return q * centralFit(0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? share : 1 - share));
  const z = r <= 5 ? middleFit(r - 1.6) : farFit(r - 5);
  return q < 0 ? -z : z;
}
