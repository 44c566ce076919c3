import { checkModel } from './combine/check-model.ts';
import { isLimited } from './combine/input.ts';
import { evaluate } from './evaluate.ts';
import type { SumModel } from './model.ts';

/** Root of the sum of squared limits, and what such a range really holds. */
export interface RootSumSquare {
  /** Half-width, in the unit of the output, about the estimate. */
  readonly halfWidth: number;
  /** Probability that it covers the value, from the whole distribution; undefined where that does not apply. */
  readonly covers: number | undefined;
  /** How many combined standard uncertainties wide: the square root of 3 if all inputs are rectangular. Infinite if there are none. */
  readonly coverageFactor: number;
  /** Ids of inputs that have no limit and were left out. */
  readonly unlimited: readonly string[];
}

/**
 * The naive root-sum-square of limits, for teaching: limits are squared and added as if each were a standard uncertainty.
 * It guarantees nothing, and the probability that it covers hangs on the shapes. Shared causes are overlooked in the
 * root, as the naive way does, but not in `covers`.
 * @throws RangeError as `evaluate`.
 */
export function rootSumSquareOfLimits({ model }: { model: SumModel }): RootSumSquare {
  checkModel('rootSumSquareOfLimits', model);
  const halves = model.inputs.map((input, i) => {
    const { lower, upper } = input.distribution.limits;
    return isLimited(input) ? ((model.sensitivities[i] ?? 0) * (upper - lower)) / 2 : 0;
  });
  const halfWidth = Math.hypot(...halves);
  const { estimate, propagation, whole } = evaluate({ model });
  const exact = propagation.standardUncertainty === 0;
  const covers =
    'unavailable' in whole
      ? undefined
      : whole.shareBelow(estimate + halfWidth) - whole.shareBelow(estimate - halfWidth);
  return {
    halfWidth,
    covers: exact ? 1 : covers,
    coverageFactor: exact ? Number.POSITIVE_INFINITY : halfWidth / propagation.standardUncertainty,
    unlimited: model.inputs
      .filter((input, i) => !isLimited(input) && model.sensitivities[i] !== 0)
      .map(({ id }) => id),
  };
}
