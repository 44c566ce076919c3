import { type BandResult, dominantInputs, propagatePrefixes, type Result, type SumModel } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';
import { meterModel } from './meter-model.ts';
import { READINGS_ID } from './meter-scatter.ts';
import type { Link, Sheet } from './sheet.ts';

/** A rung of the chain with everything that has been added from the definition down to it. */
export interface Rung<Of extends BandResult = Result> {
  readonly id: string;
  /** Absent for the scatter of the readings, which is no link. */
  readonly link?: Link;
  readonly cumulative: Of;
}

/** A sheet with its sums done: one cumulative result a rung, and the whole. */
export interface Chain<Of extends BandResult = Result> {
  readonly sheet: Sheet;
  readonly model: SumModel;
  readonly rungs: readonly Rung<Of>[];
  readonly result: Of;
  /** Ids of the inputs with the largest share of the variance: several where they are level, none if nothing adds any. */
  readonly dominantIds: readonly string[];
}

/** A result that may lack the whole distribution: enough for strips and end marks. */
export type Cumulative = BandResult & { readonly whole?: Result['whole'] };

/** A chain of such results. */
export type BandChain = Chain<Cumulative>;

/**
 * The chain of a prepared sheet (pads and cable into a meter) with worst case and propagation. Cumulative results are centred where
 * the estimate stands after each rung; without any input the result is the bare reading, exact.
 */
export function bandChainOf(sheet: Sheet): Chain<BandResult> {
  const known = chains.get(sheet);
  if (known !== undefined) return known;
  const model = meterModel(sheet);
  const chain = chainFrom({
    sheet,
    model,
    results: propagatePrefixes({ model, coverageProbability: COVERAGE_PROBABILITY }),
  });
  chains.set(sheet, chain);
  return chain;
}

/** Sheets are never changed in place, and one is drawn, pulled on and spoken of: its sums are done once. */
const chains = new WeakMap<Sheet, Chain<BandResult>>();

/** A chain put together from the results for none, the first, the first two ... and all inputs of its model. */
export function chainFrom<Of extends BandResult>({
  sheet,
  model,
  results,
}: {
  sheet: Sheet;
  model: SumModel;
  results: readonly Of[];
}): Chain<Of> {
  const result = results.at(-1);
  if (result === undefined) throw new RangeError('chainFrom: results must not be empty, got none');
  const rungs = model.inputs.map(({ id }, index): Rung<Of> => {
    const cumulative = results[index + 1];
    if (cumulative === undefined)
      throw new RangeError(`chainFrom: every input must have a result, got none for ${id}`);
    const link = sheet.links.find((candidate) => candidate.id === id);
    return id === READINGS_ID || link === undefined ? { id, cumulative } : { id, link, cumulative };
  });
  return { sheet, model, rungs, result, dominantIds: dominantInputs(result.propagation) };
}
