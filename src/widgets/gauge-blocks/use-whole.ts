import { useEffect, useMemo, useState } from 'preact/hooks';
import type { WholeClaim } from '../../sheet/evaluated-blocks.ts';
import type { Comparison } from '../../sheet/gauge-blocks.ts';

type Evaluate = (of: Comparison) => WholeClaim;

/**
 * The whole distribution of a comparison, once the part of the computation that makes it has been fetched. Until then the one that
 * was prepared, as long as it is still asked for.
 * @param prepared of the comparison that the page began with.
 */
export function useWhole(of: Comparison, isPrepared: boolean, prepared: WholeClaim): WholeClaim | undefined {
  const [evaluate, setEvaluate] = useState<Evaluate | undefined>(undefined);
  const missing = !isPrepared && evaluate === undefined;
  useEffect(() => {
    if (!missing) return;
    // A function as state is handed over in a function: Preact would call it otherwise.
    void import('../../sheet/evaluated-blocks.ts').then(({ wholeClaimOf }) =>
      setEvaluate(() => wholeClaimOf),
    );
  }, [missing]);
  return useMemo(() => (isPrepared ? prepared : evaluate?.(of)), [isPrepared, prepared, evaluate, of]);
}
