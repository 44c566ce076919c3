/**
 * What a data sheet or certificate states about one part, as plain data. Turned into an input by `componentOf`.
 * All numbers of one statement are in one unit (`unit`).
 */
export type Statement =
  /**
   * Within +-halfWidth: nothing else known (rectangular), values near the middle likelier (triangular), or a sine-like influence of
   * unknown phase (arcsine).
   */
  | {
      readonly form: 'limits';
      readonly shape: 'rectangular' | 'triangular' | 'arcsine';
      readonly halfWidth: number;
    }
  /** Trapezoid: base +-halfWidth, top +-topRatio x halfWidth (beta, 0 to 1). */
  | { readonly form: 'trapezoid'; readonly halfWidth: number; readonly topRatio: number }
  /** Limits +-halfWidth that are themselves only known to +-limitHalfWidth (JCGM 101, 6.4.3). */
  | { readonly form: 'uncertainLimits'; readonly halfWidth: number; readonly limitHalfWidth: number }
  /** Between lower and upper, nothing else known; the middle is a shift of the estimate. */
  | { readonly form: 'asymmetric'; readonly lower: number; readonly upper: number }
  /** Expanded uncertainty U with its coverage factor k. */
  | {
      readonly form: 'expanded';
      readonly expanded: number;
      readonly coverageFactor: number;
      readonly degreesOfFreedom?: number;
    }
  /** Expanded uncertainty U with its coverage probability, 0 to 1. */
  | {
      readonly form: 'coverage';
      readonly expanded: number;
      readonly probability: number;
      readonly degreesOfFreedom?: number;
    }
  /** A standard uncertainty u. */
  | { readonly form: 'standard'; readonly standardUncertainty: number; readonly degreesOfFreedom?: number }
  /** Mean of `count` readings that scatter with experimental standard deviation s. */
  | { readonly form: 'readings'; readonly standardDeviation: number; readonly count: number }
  /** One step of a display. */
  | { readonly form: 'displayStep'; readonly step: number }
  /** Half of the values lie within +-halfWidth (GUM 4.3.5). */
  | { readonly form: 'halfWithin'; readonly halfWidth: number };

/** Unit of a statement about a link of a chain in decibels. */
export type StatementUnit = 'dB' | 'percentOfPower' | 'percentOfVolts';

/** What a percentage is a percentage of: of the reading, or of the true value. */
export type PercentOf = 'reading' | 'trueValue';

/** Where a statement comes from. */
export type Source = 'specification' | 'certificate' | 'measured' | 'borrowed' | 'judged';
