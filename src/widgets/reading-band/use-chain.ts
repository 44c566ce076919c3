import { useEffect, useState } from 'preact/hooks';
import { type BandChain, bandChainOf } from '../../sheet/chain.ts';
import type { Sheet } from '../../sheet/sheet.ts';

type Evaluate = (sheet: Sheet) => BandChain;

/**
 * The chain of a sheet; with the whole distribution where it is wanted, once the part of the computation that makes it has
 * been fetched. Until then, and where nobody asks for it, strips and end marks are enough.
 */
export function useChain(sheet: Sheet, wanted: boolean): BandChain {
  const [evaluate, setEvaluate] = useState<Evaluate | undefined>(undefined);
  const missing = wanted && evaluate === undefined;
  useEffect(() => {
    if (!missing) return;
    // A function as state is handed over in a function: Preact would call it otherwise.
    void import('../../sheet/evaluated-chain.ts').then(({ chainOf }) => setEvaluate(() => chainOf));
  }, [missing]);
  return wanted && evaluate ? evaluate(sheet) : bandChainOf(sheet);
}
