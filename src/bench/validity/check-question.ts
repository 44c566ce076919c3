import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import type { PointResult } from '../results/point-result.ts';
import type { CheckQuestion } from './check-reader.ts';

/** Whether anything at all has been typed for the checks. */
export const anyCheck = ({ checks }: Pick<SheetEntries, 'checks'>): boolean =>
  Object.values(checks).some((text) => text.trim() !== '');

/** What the checks of a sheet are asked of, with the result of one of its points. */
export const checkQuestion = (
  { checks }: Pick<SheetEntries, 'checks'>,
  measurement: Measurement,
  shown: PointResult,
): CheckQuestion => ({
  checks,
  measurement,
  uncertaintyDb: shown.inRange ? shown.result.chain.result.propagation.standardUncertainty : undefined,
});
