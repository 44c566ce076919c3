import { finite, positive, rangeError } from './quantity.ts';
import { chiSquareShareAbove } from './special/chi-square.ts';

/** A value with its expanded uncertainty, the same coverage for all that are compared. */
export interface ExpandedValue {
  readonly value: number;
  readonly expanded: number;
}

/** A value with its standard uncertainty. */
export interface StandardValue {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** Two independent results side by side. */
export interface Agreement {
  readonly difference: number;
  /** Of the difference. */
  readonly expanded: number;
  /** Normalised error E_n: difference over its expanded uncertainty. */
  readonly normalisedError: number;
  /** |E_n| <= 1. */
  readonly compatible: boolean;
}

/**
 * Do two independent results agree? E_n = (x - x_ref) / sqrt(U^2 + U_ref^2), compatible where |E_n| <= 1. Results that share
 * a cause are not independent: see `compareMethods`.
 * @throws RangeError unless the values are finite and both expanded uncertainties are above zero.
 * Source: ISO 13528; ISO/IEC 17043, annex B.
 */
export function normalisedError({
  result,
  reference,
}: {
  result: ExpandedValue;
  reference: ExpandedValue;
}): Agreement {
  for (const { value } of [result, reference]) finite('normalisedError', 'value', value);
  const expanded = Math.hypot(
    positive('normalisedError', 'expanded', result.expanded),
    positive('normalisedError', 'expanded', reference.expanded),
  );
  const difference = result.value - reference.value;
  const ratio = difference / expanded;
  return { difference, expanded, normalisedError: ratio, compatible: Math.abs(ratio) <= 1 };
}

/** Mean of several independent results, and whether they can be of one quantity. */
export interface WeightedMean {
  readonly value: number;
  /** (sum of 1/u^2)^-1/2: right only if the results are consistent. */
  readonly standardUncertainty: number;
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** Probability of a chi-square this large or larger if all are of one quantity and their uncertainties are right. */
  readonly probability: number;
  /** Probability of 5 % or more. */
  readonly consistent: boolean;
  /** sqrt(chi-square / degrees); above 1 the scatter is larger than the uncertainties say. */
  readonly birgeRatio: number;
}

/** Below this probability results are not taken to be of one quantity (CCQM and CCEM comparisons, common practice). */
const LEAST_PROBABILITY = 0.05;

/**
 * Weighted mean of independent results, weights 1/u^2, with the chi-square test of their consistency and the Birge ratio.
 * @throws RangeError for fewer than two results, a value not finite, or an uncertainty not above zero.
 * Sources: M. G. Cox, Metrologia 39 (2002) 589, procedure A; R. T. Birge, Phys. Rev. 40 (1932) 207.
 */
export function weightedMean(results: readonly StandardValue[]): WeightedMean {
  if (results.length < 2)
    throw rangeError({ where: 'weightedMean', wish: 'there must be 2 or more results', got: results.length });
  const weights = results.map(
    ({ standardUncertainty }) => positive('weightedMean', 'standardUncertainty', standardUncertainty) ** -2,
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const value = results.reduce(
    (sum, result, i) => sum + (finite('weightedMean', 'value', result.value) * (weights[i] ?? 0)) / total,
    0,
  );
  const chiSquare = results.reduce(
    (sum, result) => sum + ((result.value - value) / result.standardUncertainty) ** 2,
    0,
  );
  const degreesOfFreedom = results.length - 1;
  const probability = chiSquareShareAbove({ x: chiSquare, degreesOfFreedom });
  return {
    value,
    standardUncertainty: total ** -0.5,
    chiSquare,
    degreesOfFreedom,
    probability,
    consistent: probability >= LEAST_PROBABILITY,
    birgeRatio: Math.sqrt(chiSquare / degreesOfFreedom),
  };
}
