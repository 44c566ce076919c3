import type { CoverageWish } from './combine/coverage-factor.ts';
import { propagate } from './combine/propagate.ts';
import { estimateOf } from './combine/sensitivities.ts';
import { worstCaseOf } from './combine/worst-case.ts';
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
    return {
      estimate: estimateOf(prefix),
      worstCase: worstCaseOf({ model: prefix }),
      propagation: propagate({ model: prefix, ...wish }),
    };
  });
}
