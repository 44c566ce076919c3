import type { Interval } from './distribution/distribution.ts';

/** The worst case: limits added up. Unit: the model's. */
export interface WorstCase {
  /** Ends reached when every bounded input sits at its unfavourable limit. */
  readonly interval: Interval;
  /** Ids of inputs without a limit (normal, t): the ends then guarantee nothing and are drawn open. */
  readonly unlimited: readonly string[];
}

/** One row of the budget (GUM 4.1 to 5.1). Units: the input's own, but `contribution` in the output's. */
export interface BudgetRow {
  readonly id: string;
  readonly standardUncertainty: number;
  readonly sensitivity: number;
  /** |sensitivity| x standardUncertainty. */
  readonly contribution: number;
  /** Signed share of the combined variance, covariances split evenly between the two; the rows sum to 1 (0 if no variance). */
  readonly share: number;
  readonly degreesOfFreedom: number;
}

/** Law of propagation of uncertainty (GUM 5, G.4). */
export interface Propagation {
  readonly standardUncertainty: number;
  /** Effective degrees of freedom, Welch-Satterthwaite on unrounded values; Infinity where all are. */
  readonly degreesOfFreedom: number;
  readonly coverageProbability: number;
  readonly coverageFactor: number;
  readonly expanded: number;
  readonly interval: Interval;
  readonly budget: readonly BudgetRow[];
}

/** Distribution of the sum of independent inputs of any shape, on a grid. */
export interface WholeDistribution {
  readonly mean: number | undefined;
  readonly standardDeviation: number | undefined;
  /** Interval with equal tails. */
  readonly symmetric: Interval;
  /** Shortest interval; undefined where it is not one interval (a U shape). */
  readonly shortest: Interval | undefined;
  shareBelow(x: number): number;
  quantile(share: number): number;
  /** Points for drawing: x ascending, density per unit of x. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** Why the whole distribution does not apply, as a code for `text/` to put into words. */
export type NotWhole = 'not-a-sum' | 'correlated';

export interface Result {
  readonly estimate: number;
  readonly worstCase: WorstCase;
  readonly propagation: Propagation;
  readonly whole: WholeDistribution | { readonly unavailable: NotWhole };
}
