import type { CoverageWish } from './combine/coverage-factor.ts';
import { evaluate } from './evaluate.ts';
import type { SumModel } from './model.ts';
import type { Result } from './result.ts';

/** The sum of the first `count` inputs, with the correlations that lie within them. */
export function prefixOf(model: SumModel, count: number): SumModel {
  const inputs = model.inputs.slice(0, count);
  const kept = new Set(inputs.map(({ id }) => id));
  return {
    kind: 'sum',
    constant: model.constant,
    inputs,
    sensitivities: model.sensitivities.slice(0, count),
    correlations: (model.correlations ?? []).filter(({ a, b }) => kept.has(a) && kept.has(b)),
  };
}

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
