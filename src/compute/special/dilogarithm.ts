/** Terms below this part of the sum are left out. */
const LEAST = 1e-17;

/**
 * Sum over k >= 1 of factor(k) x^k / k^2, for 0 <= x < 1: with factor 1 the dilogarithm Li2(x) (DLMF 25.12.1). The factor
 * must lie between 0 and 1.
 */
export function dilogarithm(x: number, factor: (k: number) => number = () => 1): number {
  let sum = 0;
  let power = 1;
  for (let k = 1; ; k++) {
    power *= x;
    const term = power / (k * k);
    sum += factor(k) * term;
    if (term <= LEAST * sum || power === 0) return sum;
  }
}
