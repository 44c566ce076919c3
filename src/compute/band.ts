import { checkModel } from './combine/check-model.ts';
import type { CoverageWish } from './combine/coverage-factor.ts';
import { estimateOf } from './combine/estimate.ts';
import { propagated } from './combine/propagated.ts';
import { worstOfSum } from './combine/worst-sum.ts';
import type { SumModel } from './model.ts';
import { prefixOf } from './prefix.ts';
import type { Result } from './result.ts';

/** A result without the whole distribution. */
export type BandResult = Omit<Result, 'whole'>;

/**
 * As `evaluate`, but worst case and propagation only, at a fraction of the time: for a figure that follows a finger, or that draws many
 * results along an axis.
 * @throws RangeError as `evaluate`.
 */
export const evaluateBand = ({ model, ...wish }: { model: SumModel } & CoverageWish): BandResult =>
  bandOf('evaluateBand', model, wish);

/**
 * As `evaluatePrefixes`, but worst case and propagation only: how a band grows input by input.
 * @throws RangeError as `evaluate`.
 */
export const propagatePrefixes = ({ model, ...wish }: { model: SumModel } & CoverageWish): BandResult[] =>
  Array.from({ length: model.inputs.length + 1 }, (_, count) =>
    bandOf('propagatePrefixes', prefixOf(model, count), wish),
  );

function bandOf(where: string, model: SumModel, wish: CoverageWish): BandResult {
  checkModel(where, model);
  const estimate = estimateOf(model);
  const { sensitivities } = model;
  return {
    estimate,
    worstCase: worstOfSum(model),
    propagation: propagated(model, { sensitivities, estimate, ...wish }),
  };
}
