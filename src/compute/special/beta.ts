import { positive, rangeError } from '../quantity.ts';
import { deviance } from './deviance.ts';
import { stirlingError } from './gamma.ts';

/** Stands for 0 where Lentz's method would divide by it. */
const TINY = 1e-300;
/** A factor this near to 1 changes nothing. */
const CLOSE = 4e-16;

/** A place between 0 and 1 with its complement, each held to full relative accuracy: x + y = 1. */
interface Place {
  readonly x: number;
  readonly y: number;
}
interface Powers {
  readonly a: number;
  readonly b: number;
}

/** x^a y^b / B(a, b), by Loader's deviances: accurate also where both powers are large. */
function powerTerm({ x, y, a, b }: Place & Powers): number {
  const n = a + b;
  const exponent =
    stirlingError(n) -
    stirlingError(a) -
    stirlingError(b) -
    deviance({ a, m: n * x }) -
    deviance({ a: b, m: n * y });
  return Math.sqrt((a * b) / (2 * Math.PI * n)) * Math.exp(exponent);
}

/**
 * Continued fraction b0 + a1/(b1 + a2/(b2 + ...)) of A. R. DiDonato and A. H. Morris, "Algorithm 708", ACM Trans. Math.
 * Softw. 18 (1992), 360 to 373, equation 9, by the modified Lentz method; quick for x below (a + 1)/(a + b + 2). Written
 * with the smaller of x and y, so that nothing cancels where the other is close to 1.
 */
function fraction({ x, y, a, b }: Place & Powers): number {
  const start = x < y ? a + 1 - (a + b) * x : (a + b) * y + 1 - b;
  let value = (a * start) / (a + 1);
  let c = value;
  let d = 0;
  for (let m = 1; ; m++) {
    const step = a + 2 * m - 1;
    const above = ((m * (a + m - 1)) / step) * ((a + b + m - 1) / step) * (b - m) * x * x;
    const below = m + (m * (b - m) * x) / step + ((a + m) * (start + m * (1 + y))) / (step + 2);
    d = 1 / (below + above * d || TINY);
    c = below + above / c || TINY;
    value *= c * d;
    if (!(Math.abs(c * d - 1) >= CLOSE)) return value;
  }
}

/**
 * Share of a beta distribution below x, for a caller who holds x and its complement y = 1 - x both exactly (the
 * tail of Student's t would otherwise lose its digits). No checks; see `regularisedBeta`.
 */
export function betaShare({ x, y, a, b }: Place & Powers): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const scale = powerTerm({ x, y, a, b });
  if (x <= (a + 1) / (a + b + 2)) return scale / fraction({ x, y, a, b });
  return 1 - scale / fraction({ x: y, y: x, a: b, b: a });
}

/**
 * Regularised incomplete beta function I_x(a, b): the share of a beta distribution below x, 0 <= x <= 1, a, b > 0.
 *
 * Worst error against 50-digit values, 0.05 <= a, b <= 1e5: 1e-12, relative below one half and absolute above.
 * @throws RangeError outside those ranges.
 */
export function regularisedBeta({ x, a, b }: { x: number; a: number; b: number }): number {
  positive('regularisedBeta', 'a', a);
  positive('regularisedBeta', 'b', b);
  if (!(x >= 0 && x <= 1)) throw rangeError({ where: 'regularisedBeta', wish: 'x must be 0 to 1', got: x });
  return betaShare({ x, y: 1 - x, a, b });
}
