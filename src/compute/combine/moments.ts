/** Count, mean and sum of squared deviations from it, of values seen so far. */
export interface Moments {
  readonly count: number;
  readonly mean: number;
  readonly squares: number;
}

export const NO_MOMENTS: Moments = { count: 0, mean: 0, squares: 0 };

/** Moments of a row of values: two passes, so that nothing cancels however far from 0 they lie. */
export function momentsOf(values: Float64Array): Moments {
  const count = values.length;
  let sum = 0;
  for (let k = 0; k < count; k++) sum += values[k] as number;
  const mean = sum / count;
  let squares = 0;
  for (let k = 0; k < count; k++) {
    const off = (values[k] as number) - mean;
    squares += off * off;
  }
  return { count, mean, squares };
}

/** Moments of two rows together (T. Chan, G. Golub, R. LeVeque, Amer. Statist. 37 (1983), 242 to 247). */
export function joinMoments(a: Moments, b: Moments): Moments {
  const count = a.count + b.count;
  const off = b.mean - a.mean;
  return {
    count,
    mean: a.mean + (off * b.count) / count,
    squares: a.squares + b.squares + (off * off * a.count * b.count) / count,
  };
}

/** Experimental standard deviation, with count - 1. */
export function deviationOf({ count, squares }: Moments): number {
  return Math.sqrt(squares / (count - 1));
}
