import { type BandResult, type CoverageWish, evaluateBand, type SumModel } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';

/** What intervals hold unless something else is wished for. */
const USUAL: CoverageWish = { coverageProbability: COVERAGE_PROBABILITY };

/** Worst case and propagation of a sum. @throws RangeError as `evaluateBand`. */
export const bandOf = (model: SumModel, wish: CoverageWish = USUAL): BandResult =>
  evaluateBand({ model, ...wish });
