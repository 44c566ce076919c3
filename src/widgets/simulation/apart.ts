import type { Interval } from '#compute';

/** How far the ends of two intervals lie apart at most, in dB. */
export const apartDb = (a: Interval, b: Interval): number =>
  Math.max(Math.abs(a.lower - b.lower), Math.abs(a.upper - b.upper));
