import { notNegative, positive } from '../quantity.ts';
import { deviance } from './deviance.ts';
import { stirlingError } from './gamma.ts';

/** Stands for 0 where Lentz's method would divide by it. */
const TINY = 1e-300;
/** A term below this part of the sum changes nothing. */
const CLOSE = 1e-16;
const TWO_PI = 2 * Math.PI;

/** x^a e^-x / Gamma(a), for a > 0 and x > 0, kept accurate where `a` and `x` are large and close. */
export function powerTerm({ a, x }: { a: number; x: number }): number {
  return Math.sqrt(a / TWO_PI) * Math.exp(-deviance({ a, m: x }) - stirlingError(a));
}

/** Series of DLMF 8.11.4, for x below a + 1: every term is positive. */
function lowerSeries({ a, x }: { a: number; x: number }): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > sum * CLOSE; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Continued fraction of DLMF 8.9.2 by the modified Lentz method, for x from a + 1 up. */
function upperFraction({ a, x }: { a: number; x: number }): number {
  let b = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / b;
  let value = d;
  for (let n = 1; ; n++) {
    const an = n * (a - n);
    b += 2;
    d = an * d + b;
    if (d === 0) d = TINY;
    c = b + an / c;
    if (c === 0) c = TINY;
    d = 1 / d;
    const step = d * c;
    value *= step;
    if (!(Math.abs(step - 1) >= 4 * CLOSE)) return value;
  }
}

/**
 * Regularised incomplete gamma functions: `below` = P(a, x) and `above` = Q(a, x) = 1 - P, each computed so that
 * the smaller of the two keeps its relative accuracy. a > 0, x >= 0 (or infinite). No unit.
 *
 * Worst relative error of the smaller one against 50-digit values, 0.01 <= a <= 1e5: 1e-12.
 * @throws RangeError outside those ranges.
 */
export function regularisedGamma({ a, x }: { a: number; x: number }): { below: number; above: number } {
  positive('regularisedGamma', 'a', a);
  if (x === Number.POSITIVE_INFINITY) return { below: 1, above: 0 };
  notNegative('regularisedGamma', 'x', x);
  if (x === 0) return { below: 0, above: 1 };
  const scale = powerTerm({ a, x });
  if (x < a + 1) {
    const below = scale * lowerSeries({ a, x });
    return { below, above: 1 - below };
  }
  const above = scale * upperFraction({ a, x });
  return { below: 1 - above, above };
}
