import type { Correlation, Input, Model } from '../model.ts';
import { finite, rangeError } from '../quantity.ts';
import { checkedDegreesOfFreedom } from './input.ts';

/** Ids must name one input each: rows, drawings and links are told apart by them. */
function checkIds(where: string, inputs: readonly Input[]): void {
  const seen = new Set<string>();
  for (const input of inputs) {
    if (seen.has(input.id)) throw rangeError({ where, wish: 'ids of inputs must differ', got: input.id });
    seen.add(input.id);
    checkedDegreesOfFreedom(where, input);
  }
}

/** Each pair once, both known and apart, r from -1 to 1, and not also tied by a shared cause. */
function checkCorrelations(
  where: string,
  inputs: readonly Input[],
  correlations: readonly Correlation[],
): void {
  const byId = new Map(inputs.map((input) => [input.id, input]));
  const seen = new Set<string>();
  for (const { a, b, r } of correlations) {
    for (const id of [a, b])
      if (!byId.has(id)) throw rangeError({ where, wish: 'a correlation must name known inputs', got: id });
    if (a === b) throw rangeError({ where, wish: 'a correlation must name two inputs', got: a });
    if (!(Math.abs(r) <= 1)) throw rangeError({ where, wish: 'r must be from -1 to 1', got: r });
    const pair = JSON.stringify([a, b].sort());
    if (seen.has(pair)) throw rangeError({ where, wish: 'a pair must be given once', got: `${a}, ${b}` });
    seen.add(pair);
    const cause = byId.get(a)?.cause;
    if (cause !== undefined && cause === byId.get(b)?.cause)
      throw rangeError({ where, wish: 'a pair under one cause must not be given an r', got: `${a}, ${b}` });
  }
}

/**
 * Refuses a model that cannot be evaluated.
 * @throws RangeError for two inputs of one id, degrees of freedom not above zero, a sensitivity too many or too few or
 * not finite, and a correlation that names an unknown or the same input, comes twice, or lies outside -1 to 1.
 */
export function checkModel(where: string, model: Model): void {
  checkIds(where, model.inputs);
  checkCorrelations(where, model.inputs, model.correlations ?? []);
  if (model.kind === 'function') return;
  finite(where, 'constant', model.constant);
  if (model.sensitivities.length !== model.inputs.length)
    throw rangeError({
      where,
      wish: `there must be one sensitivity per input (${model.inputs.length})`,
      got: model.sensitivities.length,
    });
  for (const c of model.sensitivities) finite(where, 'sensitivity', c);
}
