import { type CoverageWish, coverageOf } from './combine/coverage-factor.ts';
import { estimateOf } from './combine/estimate.ts';
import { propagate } from './combine/propagate.ts';
import type { SumModel } from './model.ts';
import { weighedSum } from './weighed-sum.ts';

/** Two methods on one transmitter. Levels in the unit of the models, uncertainties too. */
export interface MethodsCompared {
  /** First less second. */
  readonly difference: number;
  /** Of the difference, what both share taken out. */
  readonly standardUncertainty: number;
  readonly expanded: number;
  /** Undefined if the difference has no uncertainty at all. */
  readonly normalisedError: number | undefined;
  readonly compatible: boolean;
  /** Standard uncertainty that both have in common: the root of the covariance; negative covariances count as none. */
  readonly shared: number;
  /** The mean with the least uncertainty, what they share counted, and the weight of the first method in it (0 to 1). */
  readonly mean: {
    readonly value: number;
    readonly standardUncertainty: number;
    readonly weightOfFirst: number;
  };
}

/** What is left of a difference of equal levels, by the arithmetic on the way to them; of levels within 1, as much as within 1. */
const NOISE = 1e-12;

/** How far the first is above the second: nothing where all that is left is noise. */
function differenceOf(first: number, second: number): number {
  const difference = first - second;
  return Math.abs(difference) <= NOISE * Math.max(1, Math.abs(first), Math.abs(second)) ? 0 : difference;
}

/**
 * Do two methods on one transmitter agree, and what do they say together? Inputs of the two models that name the same
 * cause are one and cancel from the difference; they do not cancel from the mean, which can never be better than they are.
 * E_n is the difference over its expanded uncertainty; compatible where |E_n| <= 1.
 * The mean takes the weights of least variance, kept from 0 to 1: a method is never weighed negatively on the strength of
 * a covariance that is itself only judged.
 * @throws RangeError as `propagate`, for either model.
 * Sources: ISO 13528 (E_n); M. G. Cox and others, Metrologia 43 (2006) S268 (correlated means).
 */
export function compareMethods({
  first,
  second,
  ...wish
}: { first: SumModel; second: SumModel } & CoverageWish): MethodsCompared {
  const [a, b] = [propagate({ model: first }), propagate({ model: second })];
  const apart = propagate({ model: weighedSum([first, second], [1, -1]) });
  const { coverageFactor } = coverageOf({ ...wish, degreesOfFreedom: apart.degreesOfFreedom });
  const difference = differenceOf(estimateOf(first), estimateOf(second));
  const [ua2, ub2, ud2] = [a, b, apart].map((p) => p.standardUncertainty ** 2) as [number, number, number];
  const covariance = (ua2 + ub2 - ud2) / 2;
  const expanded = coverageFactor * apart.standardUncertainty;
  const ratio = expanded === 0 ? undefined : difference / expanded;
  const weightOfFirst = ud2 === 0 ? 0.5 : Math.max(0, Math.min(1, (ub2 - covariance) / ud2));
  const together = weighedSum([first, second], [weightOfFirst, 1 - weightOfFirst]);
  return {
    difference,
    standardUncertainty: apart.standardUncertainty,
    expanded,
    normalisedError: ratio,
    compatible: ratio === undefined ? difference === 0 : Math.abs(ratio) <= 1,
    shared: Math.sqrt(Math.max(0, covariance)),
    mean: {
      value: estimateOf(together),
      standardUncertainty: propagate({ model: together }).standardUncertainty,
      weightOfFirst,
    },
  };
}
