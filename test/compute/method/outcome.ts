import { evaluate } from '../../../src/compute/evaluate.ts';
import type { MethodOutcome, OutOfRange } from '../../../src/compute/method/method.ts';
import type { Model } from '../../../src/compute/model.ts';
import type { Result, WholeDistribution } from '../../../src/compute/result.ts';
import type { Statement } from '../../../src/compute/statement.ts';

/** The model of an outcome that must be in range. */
export function modelOf(outcome: MethodOutcome): Model {
  if (!outcome.inRange) throw new Error(`out of range: ${outcome.reason.code}`);
  return outcome.model;
}

/** Why an outcome gives no number; undefined if it gives one. */
export function reasonOf(outcome: { inRange: true } | { inRange: false; reason: OutOfRange }) {
  return outcome.inRange ? undefined : outcome.reason;
}

/** The result at k = 2 of an outcome that must be in range. */
export function resultOf(outcome: MethodOutcome): Result {
  return evaluate({ model: modelOf(outcome), coverageFactor: 2 });
}

/** The whole distribution of an outcome at 95 %. */
export function wholeOf(outcome: MethodOutcome): WholeDistribution {
  const { whole } = evaluate({ model: modelOf(outcome), coverageProbability: 0.95 });
  if ('unavailable' in whole) throw new Error(whole.unavailable);
  return whole;
}

/** Limits of plus-minus `halfWidth`, nothing else known. */
export const within = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });

/** Influences under these ids in this order. */
export const idsOf = (outcome: MethodOutcome): string[] => modelOf(outcome).inputs.map(({ id }) => id);
