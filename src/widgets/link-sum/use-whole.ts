import { useEffect, useMemo, useState } from 'preact/hooks';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import type { LinkSum } from '../../sheet/link-sum.ts';

type Evaluate = (sum: LinkSum) => WholeSum;

/**
 * The whole distribution of a sum, once the part of the computation that makes it has been fetched. Until then the one that was
 * prepared, as long as it is still asked for.
 */
export function useWholeSum(sum: LinkSum, begun: LinkSum, prepared: WholeSum): WholeSum | undefined {
  const isPrepared = useMemo(() => JSON.stringify(sum) === JSON.stringify(begun), [sum, begun]);
  const [evaluate, setEvaluate] = useState<Evaluate | undefined>(undefined);
  const missing = !isPrepared && evaluate === undefined;
  useEffect(() => {
    if (!missing) return;
    // A function as state is handed over in a function: Preact would call it otherwise.
    void import('../../sheet/evaluated-link-sum.ts').then(({ wholeSumOf }) => setEvaluate(() => wholeSumOf));
  }, [missing]);
  return useMemo(() => (isPrepared ? prepared : evaluate?.(sum)), [isPrepared, prepared, evaluate, sum]);
}
