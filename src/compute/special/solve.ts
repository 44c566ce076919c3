/** Halvings to the last bit of a double, and some. */
const MOST_STEPS = 200;

/** What is asked of `solveRising`: the value wanted, a bracket, and optionally a start and how close is close enough. */
export interface Search {
  readonly wanted: number;
  readonly lower: number;
  readonly upper: number;
  readonly start?: number;
  /** In the unit of x; without it, the last bit. */
  readonly tolerance?: number;
}

/**
 * The x between lower and upper at which a rising function reaches `wanted`: Newton's step where it stays inside the
 * bracket and shrinks fast enough, halving where it does not. `at` gives the value and its slope (0 or infinite slopes are allowed).
 */
export function solveRising(at: (x: number) => { value: number; slope: number }, search: Search): number {
  const { wanted, start, tolerance = 0 } = search;
  let low = search.lower;
  let high = search.upper;
  let x = start !== undefined && start > low && start < high ? start : low / 2 + high / 2;
  let lastStep = high - low;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { value, slope } = at(x);
    if (value === wanted) return x;
    if (value < wanted) low = x;
    else high = x;
    const newton = x + (wanted - value) / slope;
    const trusted = newton > low && newton < high && Math.abs(newton - x) < 0.5 * lastStep;
    const next = trusted ? newton : low / 2 + high / 2;
    lastStep = Math.abs(next - x);
    if (Math.abs(next - x) <= Math.max(tolerance, 2 ** -52 * Math.abs(x))) return next;
    if (next === low || next === high) return next;
    x = next;
  }
  return x;
}

/**
 * The place between lower and upper at which a rising function without known slope changes sign, to within `tolerance`: false
 * position with the Illinois rule, which halves the weight of an end that stays. An end where the sign is already
 * wrong is returned as it is.
 */
export function solveSign(
  at: (x: number) => number,
  { lower, upper, tolerance }: { lower: number; upper: number; tolerance: number },
): number {
  let low = { x: lower, value: at(lower) };
  let high = { x: upper, value: at(upper) };
  if (low.value >= 0) return lower;
  if (high.value <= 0) return upper;
  let stayed = 0;
  for (let step = 0; step < MOST_STEPS && high.x - low.x > tolerance; step++) {
    const chord = low.x + ((high.x - low.x) * -low.value) / (high.value - low.value);
    const x = chord > low.x && chord < high.x ? chord : low.x / 2 + high.x / 2;
    const value = at(x);
    if (value === 0) return x;
    if (value < 0) {
      if (Math.abs(x - low.x) < tolerance) return x;
      low = { x, value };
      high = { x: high.x, value: stayed === -1 ? high.value / 2 : high.value };
      stayed = -1;
    } else {
      if (Math.abs(x - high.x) < tolerance) return x;
      high = { x, value };
      low = { x: low.x, value: stayed === 1 ? low.value / 2 : low.value };
      stayed = 1;
    }
  }
  return low.x / 2 + high.x / 2;
}
