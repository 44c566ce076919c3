import { useMemo } from 'preact/hooks';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import type { LinkSum } from '../../sheet/link-sum.ts';
import { useEvaluated } from '../parts/use-fetched.ts';

const fetched = async () => (await import('../../sheet/evaluated-link-sum.ts')).wholeSumOf;

/** The whole distribution of a sum. @param prepared of the sum that the page began with. */
export function useWholeSum(of: LinkSum, begun: LinkSum, prepared: WholeSum): WholeSum | undefined {
  const isPrepared = useMemo(() => JSON.stringify(of) === JSON.stringify(begun), [of, begun]);
  return useEvaluated({ of, isPrepared, prepared, fetched });
}
