import { useEffect, useMemo, useState } from 'preact/hooks';
import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import type { PadsInARow } from '../../sheet/pads-in-a-row.ts';

type Evaluate = (of: PadsInARow) => WholeRow;

/**
 * The whole distribution of a row, once the part of the computation that makes it has been fetched. Until then the one that was
 * prepared, as long as it is still asked for.
 */
export function useWholeRow(of: PadsInARow, isPrepared: boolean, prepared: WholeRow): WholeRow | undefined {
  const [evaluate, setEvaluate] = useState<Evaluate | undefined>(undefined);
  const missing = !isPrepared && evaluate === undefined;
  useEffect(() => {
    if (!missing) return;
    // A function as state is handed over in a function: Preact would call it otherwise.
    void import('../../sheet/evaluated-pads.ts').then(({ wholeRowOf }) => setEvaluate(() => wholeRowOf));
  }, [missing]);
  return useMemo(() => (isPrepared ? prepared : evaluate?.(of)), [isPrepared, prepared, evaluate, of]);
}
