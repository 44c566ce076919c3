import { centreOf } from './combine/input.ts';
import { scaled } from './distribution/scaled.ts';
import type { Input, Model } from './model.ts';
import { notNegative, rangeError } from './quantity.ts';

/** Inputs that can only be improved together: one alone, or all under one cause. */
export type LinkIds = readonly string[];

/** The links of a model, in its order. */
export function linksOf({ inputs }: Model): LinkIds[] {
  const byName = new Map<string, string[]>();
  for (const { id, cause } of inputs) {
    const name = JSON.stringify(cause === undefined ? { id } : { cause });
    byName.set(name, [...(byName.get(name) ?? []), id]);
  }
  return [...byName.values()];
}

/** An input `factor` times as uncertain about the same centre; 0 makes it a constant. */
export function narrowed(input: Input, factor: number): Input {
  const centre = centreOf(input);
  const { standardUncertainty } = input;
  return {
    ...input,
    distribution: scaled(input.distribution, { factor, shift: (1 - factor) * centre }),
    ...(standardUncertainty === undefined ? {} : { standardUncertainty: factor * standardUncertainty }),
  };
}

/**
 * The model with one link `factor` times as uncertain (0 perfect, 1/2 halved, 1 as it is), estimate and everything else kept.
 * @throws RangeError for a factor not >= 0 or an id that the model has not.
 */
export function improved<M extends Model>(model: M, link: LinkIds, factor: number): M {
  notNegative('improved', 'factor', factor);
  const known = new Set(model.inputs.map(({ id }) => id));
  for (const id of link)
    if (!known.has(id))
      throw rangeError({ where: 'improved', wish: 'link must name inputs of the model', got: id });
  return {
    ...model,
    inputs: model.inputs.map((input) => (link.includes(input.id) ? narrowed(input, factor) : input)),
  };
}

/** The model with inputs exchanged for others of the same id. @throws RangeError for an id that the model has not. */
export function exchanged<M extends Model>(model: M, others: readonly Input[]): M {
  const byId = new Map(others.map((input) => [input.id, input]));
  for (const { id } of others)
    if (!model.inputs.some((input) => input.id === id))
      throw rangeError({ where: 'exchanged', wish: 'input must stand for one of the model', got: id });
  return { ...model, inputs: model.inputs.map((input) => byId.get(input.id) ?? input) };
}
