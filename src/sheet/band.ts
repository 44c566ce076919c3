import { type BandResult, type CoverageWish, propagatePrefixes, type SumModel } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';

/** What intervals hold unless something else is wished for. */
const USUAL: CoverageWish = { coverageProbability: COVERAGE_PROBABILITY };

/** Worst case and propagation of a sum, all of its inputs counted. @throws RangeError as `propagatePrefixes`. */
export function bandOf(model: SumModel, wish: CoverageWish = USUAL): BandResult {
  const band = propagatePrefixes({ model, ...wish }).at(-1);
  if (band === undefined) throw new RangeError('bandOf: a sum must have a result, got none');
  return band;
}
