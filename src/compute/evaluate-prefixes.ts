import type { CoverageWish } from './combine/coverage-factor.ts';
import { evaluate } from './evaluate.ts';
import type { SumModel } from './model.ts';
import { prefixOf } from './prefix.ts';
import type { Result } from './result.ts';

/**
 * How a sum's uncertainty grows input by input: the results for none, the first, the first two ... and all of its inputs,
 * in the order of the model. The last one is `evaluate` of the whole model.
 * @throws RangeError as `evaluate`.
 */
export function evaluatePrefixes({ model, ...wish }: { model: SumModel } & CoverageWish): Result[] {
  return Array.from({ length: model.inputs.length + 1 }, (_, count) =>
    evaluate({ model: prefixOf(model, count), ...wish }),
  );
}
