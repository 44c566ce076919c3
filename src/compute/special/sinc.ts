/** sin(x)/x, 1 at 0; any finite x. No unit. Below 1e-5 by its series, good to rounding. */
export function sinc(x: number): number {
  return Math.abs(x) < 1e-5 ? 1 - (x * x) / 6 : Math.sin(x) / x;
}
