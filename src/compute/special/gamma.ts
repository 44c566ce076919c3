import { positive } from '../quantity.ts';

/** From here on the series to B16 holds what is promised. */
const ASYMPTOTIC_FROM = 10;
/** ln(2 pi)/2. */
export const HALF_LOG_TWO_PI = 0.9189385332046727;

/**
 * What Stirling's formula misses: ln Gamma(x) - [(x - 1/2) ln x - x + ln(2 pi)/2], for x > 0.
 *
 * Asymptotic series (DLMF 5.11.1, Bernoulli numbers to B16) from 10 up; below, the recurrence
 * d(x) = d(x + 1) + (x + 1/2) ln(1 + 1/x) - 1, whose terms are all positive, so nothing cancels.
 * Worst error 1e-15, absolute.
 */
export function stirlingError(x: number): number {
  let sum = 0;
  let from = x;
  for (; from < ASYMPTOTIC_FROM; from++) sum += (from + 0.5) * Math.log1p(1 / from) - 1;
  const q = 1 / (from * from);
  const tail = 1 / 1188 - q * (691 / 360360 - q * (1 / 156 - (q * 3617) / 122400));
  return sum + (1 / 12 - q * (1 / 360 - q * (1 / 1260 - q * (1 / 1680 - q * tail)))) / from;
}

/**
 * Natural logarithm of the gamma function, for x > 0. No unit.
 *
 * Worst error against 50-digit values for 1e-6 <= x <= 1e9: 1e-14, relative, or absolute where the logarithm is below 1
 * (it is zero at 1 and 2). @throws RangeError unless x is finite and > 0.
 */
export function logGamma(x: number): number {
  positive('logGamma', 'x', x);
  return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingError(x);
}
