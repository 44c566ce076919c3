import { type BandResult, componentOf, type SumModel } from '#compute';
import { bandOf } from './band.ts';
import { limits } from './link.ts';

/** What is made of two values that have something in common. */
export const COMBINATIONS = ['sum', 'difference', 'mean'] as const;
export type Combination = (typeof COMBINATIONS)[number];

/** Two values: what each may be wrong by for itself, and what both are wrong by together. Limits to either side, in dB; invented. */
export interface SharedPair {
  readonly combined: Combination;
  readonly ownDb: number;
  readonly sharedDb: number;
}

/** The club's two pads of one batch, one behind the other. */
export const clubPair = (): SharedPair => ({ combined: 'sum', ownDb: 0.2, sharedDb: 0.4 });

const WEIGHTS: Readonly<Record<Combination, readonly [number, number]>> = {
  sum: [1, 1],
  difference: [1, -1],
  mean: [0.5, 0.5],
};

/** How often what is shared counts in the result: twice in a sum, not at all in a difference, once in a mean. */
export const timesCounted = (combined: Combination): number => {
  const [first, second] = WEIGHTS[combined];
  return first + second;
};

const part = (id: string, halfWidthDb: number) =>
  componentOf({ id, statement: limits(halfWidthDb), unit: 'dB' });

const resultOf = (inputs: SumModel['inputs'], sensitivities: readonly number[]): BandResult =>
  bandOf({ kind: 'sum', constant: 0, inputs, sensitivities });

/** The result with the common cause as a line of its own in the budget: no correlation is left (GUM F.1.2.4). */
export function withCause({ combined, ownDb, sharedDb }: SharedPair): BandResult {
  const inputs = [part('first', ownDb), part('second', ownDb), part('shared', sharedDb)];
  return resultOf(inputs, [...WEIGHTS[combined], timesCounted(combined)]);
}

/** The same two values as if they had nothing in common: each with all that it may be wrong by. */
export function asIndependent({ combined, ownDb, sharedDb }: SharedPair): BandResult {
  const inputs = ['first', 'second'].flatMap((id) => [part(id, ownDb), part(`${id}, shared`, sharedDb)]);
  const [first, second] = WEIGHTS[combined];
  return resultOf(inputs, [first, first, second, second]);
}

/** Correlation coefficient of the two values: the share of either one's variance that comes from the common cause. */
export function correlationOfPair({ ownDb, sharedDb }: SharedPair): number {
  const all = ownDb ** 2 + sharedDb ** 2;
  return all > 0 ? sharedDb ** 2 / all : 0;
}
