import type { SumModel } from './model.ts';

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
