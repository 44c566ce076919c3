import type { CoverageWish } from './combine/coverage-factor.ts';
import { estimateOf } from './combine/estimate.ts';
import { propagate } from './combine/propagate.ts';
import type { SumModel } from './model.ts';
import { rangeError } from './quantity.ts';
import type { Propagation } from './result.ts';
import { weighedSum } from './weighed-sum.ts';

/** What several methods on one quantity say together. */
export interface MeanOfMethods {
  readonly value: number;
  /** In the order of the methods; none below 0, their sum 1. */
  readonly weights: readonly number[];
  /** Of the mean; what methods share is counted once, whole. */
  readonly propagation: Propagation;
}

/** Weights that move by less than this in a whole turn stand. */
const SETTLED = 1e-13;
/** Methods that are nearly as good as each other settle slowly; this bounds the search. */
const MOST_TURNS = 10_000;

/** Variance of method i (i = j), or of the difference of two. */
function variances(methods: readonly SumModel[]): readonly (readonly number[])[] {
  const of = (i: number, j: number): number => {
    const weights = methods.map((_, at) => (at === i ? 1 : at === j ? -1 : 0));
    return propagate({ model: weighedSum(methods, weights) }).standardUncertainty ** 2;
  };
  return methods.map((_, i) => methods.map((__, j) => of(i, j)));
}

/**
 * Weights of least variance, none below 0: weight is moved between two methods at a time for as long as that helps. Methods whose
 * difference has no variance are as good as each other, and what they have stays.
 */
function leastVariance(between: readonly (readonly number[])[]): number[] {
  const count = between.length;
  const at = (i: number, j: number): number => between[i]?.[j] ?? 0;
  const covariance = (i: number, j: number): number =>
    i === j ? at(i, i) : (at(i, i) + at(j, j) - at(i, j)) / 2;
  const weights = between.map(() => 1 / count);
  const pull = (i: number): number => weights.reduce((sum, w, j) => sum + w * covariance(i, j), 0);
  const move = (i: number, j: number): number => {
    const spread = at(i, j);
    if (spread === 0) return 0;
    const [wi, wj] = [weights[i] ?? 0, weights[j] ?? 0];
    const step = Math.min(wj, Math.max(-wi, (pull(j) - pull(i)) / spread));
    weights[i] = wi + step;
    weights[j] = wj - step;
    return Math.abs(step);
  };
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    let moved = 0;
    for (let i = 0; i < count; i++) for (let j = 0; j < i; j++) moved = Math.max(moved, move(i, j));
    if (moved < SETTLED) break;
  }
  return weights;
}

/**
 * The mean of several methods on one transmitter with the least uncertainty, what they share counted: inputs that name the same cause
 * are one, and the mean can never be better than they are. Right only if the methods agree: see `compareMethods` for each pair.
 * For two methods it is the mean of `compareMethods`; for independent ones the weighted mean.
 * Levels in the unit of the models. No weight is negative: a covariance that is only judged shall not extrapolate.
 * @throws RangeError for fewer than two methods, and as `propagate`.
 * Source: M. G. Cox and others, Metrologia 43 (2006) S268 (least variance of correlated means).
 */
export function meanOfMethods({
  methods,
  ...wish
}: { methods: readonly SumModel[] } & CoverageWish): MeanOfMethods {
  if (methods.length < 2)
    throw rangeError({
      where: 'meanOfMethods',
      wish: 'there must be 2 or more methods',
      got: methods.length,
    });
  const weights = leastVariance(variances(methods));
  const model = weighedSum(methods, weights);
  return { value: estimateOf(model), weights, propagation: propagate({ model, ...wish }) };
}
