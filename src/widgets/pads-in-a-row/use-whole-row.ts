import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import type { PadsInARow } from '../../sheet/pads-in-a-row.ts';
import { useEvaluated } from '../parts/use-fetched.ts';

const fetched = async () => (await import('../../sheet/evaluated-pads.ts')).wholeRowOf;

/** The whole distribution of a row. @param prepared of the row that the page began with. */
export const useWholeRow = (of: PadsInARow, isPrepared: boolean, prepared: WholeRow): WholeRow | undefined =>
  useEvaluated({ of, isPrepared, prepared, fetched });
