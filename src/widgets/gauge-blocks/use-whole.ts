import type { WholeClaim } from '../../sheet/evaluated-blocks.ts';
import type { Comparison } from '../../sheet/gauge-blocks.ts';
import { useEvaluated } from '../parts/use-fetched.ts';

const fetched = async () => (await import('../../sheet/evaluated-blocks.ts')).wholeClaimOf;

/** The whole distribution of a comparison. @param prepared of the comparison that the page began with. */
export const useWhole = (of: Comparison, isPrepared: boolean, prepared: WholeClaim): WholeClaim | undefined =>
  useEvaluated({ of, isPrepared, prepared, fetched });
