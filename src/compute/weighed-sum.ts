import type { Correlation, Input, SumModel } from './model.ts';

/**
 * Several sums, each times a weight, as one: inputs under names of each sum's own (`0: pad`, `1: pad`), what is stated between them with
 * them; causes keep theirs, so that shared ones meet.
 */
export function weighedSum(models: readonly SumModel[], weights: readonly number[]): SumModel {
  const own = (index: number, id: string) => `${index}: ${id}`;
  return {
    kind: 'sum',
    constant: models.reduce((sum, { constant }, i) => sum + (weights[i] ?? 0) * constant, 0),
    inputs: models.flatMap(({ inputs }, i): Input[] =>
      inputs.map((input) => ({ ...input, id: own(i, input.id) })),
    ),
    sensitivities: models.flatMap(({ sensitivities }, i) => sensitivities.map((c) => c * (weights[i] ?? 0))),
    correlations: models.flatMap(({ correlations = [] }, i): Correlation[] =>
      correlations.map(({ a, b, r }) => ({ a: own(i, a), b: own(i, b), r })),
    ),
  };
}
