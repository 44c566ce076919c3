/** Hands out uniform random numbers, 0 <= x < 1. Always given by the caller: nothing here draws on its own. */
export type Random = () => number;

/** An interval, lower <= upper; an end is infinite where there is no limit. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/** Names of the shapes; used as codes, never shown. */
export type Shape =
  | 'constant'
  | 'rectangular'
  | 'triangular'
  | 'trapezoidal'
  | 'curvilinear'
  | 'arcsine'
  | 'normal'
  | 'student'
  | 'transformed'
  | 'mismatch'
  | 'rayleigh'
  | 'rice';

/** What stands behind every shape: a probability distribution of one real quantity, in the unit of that quantity. */
export interface Distribution {
  readonly shape: Shape;
  /** Where the shape is centred or, for lopsided ones, its mean; undefined where no mean exists (Student t, 1 degree). */
  readonly mean: number | undefined;
  /** Undefined where none exists (Student t with 2 degrees of freedom or fewer). */
  readonly standardDeviation: number | undefined;
  /** The limits outside which no value lies; infinite ends where there are none. */
  readonly limits: Interval;
  /** Probability density at x, per unit of x; 0 outside the limits; may be infinite at an end (arcsine). */
  density(x: number): number;
  /** Probability of a value <= x, 0 to 1. */
  shareBelow(x: number): number;
  /** The x with shareBelow(x) = share, 0 < share < 1 (0 and 1 give the limits). @throws RangeError outside 0 to 1. */
  quantile(share: number): number;
  /** One random value. */
  sample(random: Random): number;
}
