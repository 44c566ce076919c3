import { type BandChain, bandChainOf } from '../../sheet/chain.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { useFetched } from '../parts/use-fetched.ts';

const fetched = async (): Promise<(sheet: Sheet) => BandChain> =>
  (await import('../../sheet/evaluated-chain.ts')).chainOf;

/**
 * The chain of a sheet; with the whole distribution where it is wanted, once the part of the computation that makes it has
 * been fetched. Until then, and where nobody asks for it, strips and end marks are enough.
 */
export function useChain(sheet: Sheet, wanted: boolean): BandChain {
  const evaluate = useFetched(wanted, fetched, sheet);
  return wanted && evaluate ? evaluate(sheet) : bandChainOf(sheet);
}
