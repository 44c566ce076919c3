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
 * As `evaluatePrefixes`, but worst case and propagation only: how a band grows input by input, at a fraction of the time,
 * for a figure that follows a finger.
 * @throws RangeError as `evaluate`.
 */
export function propagatePrefixes({ model, ...wish }: { model: SumModel } & CoverageWish): BandResult[] {
  return Array.from({ length: model.inputs.length + 1 }, (_, count) => {
    const prefix = prefixOf(model, count);
    checkModel('propagatePrefixes', prefix);
    const estimate = estimateOf(prefix);
    const { sensitivities } = prefix;
    return {
      estimate,
      worstCase: worstOfSum(prefix),
      propagation: propagated(prefix, { sensitivities, estimate, ...wish }),
    };
  });
}
