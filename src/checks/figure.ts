import type { Figure } from './check.ts';

/** A figure that agrees to the printed digits, in one line. */
export const figure = (what: string, printed: string, unit: string, compute: () => number): Figure => ({
  what,
  printed,
  unit,
  compute,
});
