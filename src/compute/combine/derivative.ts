/** A value found numerically, and how far it may be off. */
export interface Approximation {
  readonly value: number;
  readonly errorBound: number;
}

/** Each step is this much smaller than the one before (Ridders' own choice). */
const SHRINK = 1.4;
/** So many steps at most: by then rounding outweighs what a smaller step gains. */
const STEPS = 12;
/** Extrapolation stops once it gets this much worse: from there on it is rounding that is extrapolated. */
const WORSENING = 2;

/**
 * The first derivative of f at x by central differences of shrinking steps, extrapolated to step zero, with the
 * difference of neighbouring extrapolations as error bound. For smooth f about 1e-11 relative.
 * @param step the first, largest distance from x; f must be finite from x - step to x + step.
 * Source: C. J. F. Ridders, "Accurate computation of F'(x) and F'(x)F''(x)", Adv. Eng. Software 4 (1982) 75.
 */
export function derivative({
  f,
  x,
  step,
}: {
  f: (x: number) => number;
  x: number;
  step: number;
}): Approximation {
  const slope = (h: number) => (f(x + h) - f(x - h)) / (2 * h);
  let row = [slope(step)];
  let best: Approximation = { value: row[0] ?? Number.NaN, errorBound: Number.POSITIVE_INFINITY };
  for (let i = 1; i < STEPS; i++) {
    const next = [slope(step / SHRINK ** i)];
    for (let j = 1; j <= i; j++) {
      const [finer, coarser] = [next[j - 1] ?? 0, row[j - 1] ?? 0];
      const value = finer + (finer - coarser) / (SHRINK ** (2 * j) - 1);
      const errorBound = Math.max(Math.abs(value - finer), Math.abs(value - coarser));
      if (errorBound <= best.errorBound) best = { value, errorBound };
      next.push(value);
    }
    if (Math.abs((next[i] ?? 0) - (row[i - 1] ?? 0)) >= WORSENING * best.errorBound) break;
    row = next;
  }
  return best;
}
