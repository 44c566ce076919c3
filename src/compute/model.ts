import type { Distribution } from './distribution/distribution.ts';

/** One input quantity of a measurement model. Words about it belong to the sheet; here it has an id. */
export interface Input {
  readonly id: string;
  /**
   * What is known of the input, in the model's own space. In a sum it is the deviation that the input brings (its mean
   * is a shift of the estimate); in a general model it is the quantity itself.
   */
  readonly distribution: Distribution;
  /**
   * Standard uncertainty as the budget counts it (for n readings s/sqrt(n), whatever the shape used in the whole
   * distribution). Where absent, the distribution's standard deviation.
   */
  readonly standardUncertainty?: number;
  /** Degrees of freedom of that standard uncertainty (GUM G.4); Infinity where it is taken as known. */
  readonly degreesOfFreedom: number;
  /** Name of a cause that other inputs share: inputs under one cause are one variable, moving together by rank. */
  readonly cause?: string;
}

/** Correlation coefficient r, -1 to 1, between two inputs named by id. */
export interface Correlation {
  readonly a: string;
  readonly b: string;
  readonly r: number;
}

/** y = constant + sum of sensitivity x input. Chains of levels and gains in dB are of this kind. */
export interface SumModel {
  readonly kind: 'sum';
  readonly constant: number;
  readonly inputs: readonly Input[];
  /** In the order of `inputs`; +1 or -1 in a chain of decibels. */
  readonly sensitivities: readonly number[];
  readonly correlations?: readonly Correlation[];
}

/** y = f(inputs), any smooth function; values in the order of `inputs`. */
export interface FunctionModel {
  readonly kind: 'function';
  readonly inputs: readonly Input[];
  readonly f: (values: readonly number[]) => number;
  readonly correlations?: readonly Correlation[];
}

export type Model = SumModel | FunctionModel;
