import { comonotoneSum } from './combine/comonotone-sum.ts';
import type { CoverageWish } from './combine/coverage-factor.ts';
import { estimateOf } from './combine/estimate.ts';
import { mergeCauses } from './combine/merge-causes.ts';
import { propagate } from './combine/propagate.ts';
import { wholeDistribution } from './combine/whole-distribution.ts';
import { worstCaseOf } from './combine/worst-case.ts';
import type { Model, SumModel } from './model.ts';
import type { NotWhole, Result } from './result.ts';

/** Whether a stated correlation ties two inputs that both count. */
function isCorrelated({ inputs, sensitivities, correlations = [] }: SumModel): boolean {
  const counting = new Set(inputs.filter((_, i) => sensitivities[i] !== 0).map(({ id }) => id));
  return correlations.some(({ a, b, r }) => r !== 0 && counting.has(a) && counting.has(b));
}

/** Why the distribution of the whole sum cannot be had, if it cannot: it needs a sum of independent terms. */
function whyNotWhole(model: Model): NotWhole | undefined {
  if (model.kind !== 'sum') return 'not-a-sum';
  return isCorrelated(model) ? 'correlated' : undefined;
}

function wholeOf(model: Model, coverageProbability: number): Result['whole'] {
  const unavailable = whyNotWhole(model);
  if (unavailable !== undefined || model.kind !== 'sum') return { unavailable: unavailable ?? 'not-a-sum' };
  const { constant, terms } = mergeCauses(model, comonotoneSum);
  return wholeDistribution({ constant, terms, coverageProbability });
}

/**
 * What a model gives, three ways at once: the worst case, the law of propagation of uncertainty, and the whole
 * distribution of the sum. Inputs under one cause are merged before the whole distribution, so that a cascade adds and a
 * ratio cancels; where that way does not apply (not a sum; stated correlations) it says why. Synchronous; the simulation,
 * which always applies, is a way of its own.
 * The whole distribution uses t shapes for few readings, propagation uses Welch-Satterthwaite: never both at once.
 * @param coverageProbability of all intervals, 0.95 if nothing is given; or else `coverageFactor`, whose probability then
 * holds for the whole distribution too.
 * @throws RangeError for a model that cannot be evaluated (see `propagate`); once `whole` is read also for a factor so large that its
 * probability is 1 in a double (above 8 for a bell).
 */
export function evaluate({ model, ...wish }: { model: Model } & CoverageWish): Result {
  const propagation = propagate({ model, ...wish });
  let whole: Result['whole'] | undefined;
  return {
    estimate: estimateOf(model),
    worstCase: worstCaseOf({ model }),
    propagation,
    // On first reading: a chain shown rung by rung asks most of its results for the interval alone.
    get whole() {
      whole ??= wholeOf(model, propagation.coverageProbability);
      return whole;
    },
  };
}
