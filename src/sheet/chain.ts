import { evaluatePrefixes, type Result, type SumModel } from '#compute';
import type { Link, Sheet } from './sheet.ts';
import { READINGS_ID, toModel } from './to-model.ts';

/** Coverage factor of the expanded uncertainty for a bell, the convention of calibration certificates. */
export const COVERAGE_FACTOR = 2;

/**
 * The coverage probability that goes with it, 1 - 2 x (share of a bell beyond two standard deviations). All intervals hold it:
 * with few degrees of freedom the coverage factor is larger than 2 (GUM G.4), and propagation and whole distribution speak of
 * the same share.
 */
export const COVERAGE_PROBABILITY = 0.9544997361036416;

/** A rung of the chain with everything that has been added from the definition down to it. */
export interface Rung {
  readonly id: string;
  /** Absent for the scatter of the readings, which is no link. */
  readonly link?: Link;
  readonly cumulative: Result;
}

/** A sheet with its sums done: one cumulative result a rung, and the whole. */
export interface Chain {
  readonly sheet: Sheet;
  readonly model: SumModel;
  readonly rungs: readonly Rung[];
  readonly result: Result;
  /** Id of the input with the largest share of the variance; undefined if nothing adds any. */
  readonly dominantId: string | undefined;
}

/**
 * The chain of a sheet. Cumulative results are centred where the estimate stands after each rung; without any input the
 * result is the bare reading, exact.
 */
export function chainOf(sheet: Sheet): Chain {
  const model = toModel(sheet);
  const results = evaluatePrefixes({
    model,
    coverageProbability: COVERAGE_PROBABILITY,
  });
  const result = results.at(-1);
  if (result === undefined) throw new RangeError('chainOf: no result for the empty chain');
  const rungs = model.inputs.map(({ id }, index): Rung => {
    const cumulative = results[index + 1];
    if (cumulative === undefined) throw new RangeError(`chainOf: no result for ${id}`);
    const link = sheet.links.find((candidate) => candidate.id === id);
    return id === READINGS_ID || link === undefined ? { id, cumulative } : { id, link, cumulative };
  });
  return { sheet, model, rungs, result, dominantId: dominantOf(result) };
}

/** The input that brings most of the variance. */
export function dominantOf({ propagation }: Result): string | undefined {
  const rows = propagation.budget.filter(({ share }) => share > 0);
  return rows.reduce<(typeof rows)[number] | undefined>(
    (most, row) => (most && most.share >= row.share ? most : row),
    undefined,
  )?.id;
}
