/** Nearer to each other than this part of their sum, plain terms would cancel: there the series is taken. */
const SERIES_BELOW = 0.1;

/**
 * a ln(a/m) + m - a, without the cancellation that plain terms suffer where `a` and `m` are close. Both > 0.
 * Source: C. Loader, "Fast and accurate computation of binomial probabilities" (2000), the deviance part.
 * Worst relative error about 1e-15.
 */
export function deviance({ a, m }: { a: number; m: number }): number {
  const difference = a - m;
  if (Math.abs(difference) >= SERIES_BELOW * (a + m)) return a * Math.log(a / m) - difference;
  const v = difference / (a + m);
  let sum = difference * v;
  let power = 2 * a * v;
  for (let odd = 3; ; odd += 2) {
    power *= v * v;
    const next = sum + power / odd;
    if (next === sum || Number.isNaN(next)) return next;
    sum = next;
  }
}
