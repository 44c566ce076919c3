/** Halvings to the last bit of a double, and some. */
const MOST_STEPS = 200;

/**
 * The x between lower and upper at which a rising function reaches `wanted`: Newton's step where it stays inside the
 * bracket, halving where it does not. `at` gives the value and its slope (0 or infinite slopes are allowed).
 */
export function solveRising(
  at: (x: number) => { value: number; slope: number },
  { wanted, lower, upper, start }: { wanted: number; lower: number; upper: number; start?: number },
): number {
  let low = lower;
  let high = upper;
  let x = start !== undefined && start > low && start < high ? start : low / 2 + high / 2;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { value, slope } = at(x);
    if (value === wanted) return x;
    if (value < wanted) low = x;
    else high = x;
    const newton = x + (wanted - value) / slope;
    const next = newton > low && newton < high ? newton : low / 2 + high / 2;
    if (Math.abs(next - x) <= 2 ** -52 * Math.abs(x) || next === low || next === high) return next;
    x = next;
  }
  return x;
}
