import { useCallback, useMemo } from 'preact/hooks';
import type { Sheet } from '../../sheet/sheet.ts';
import { useQuery } from '../parts/use-address.ts';
import type { Shown } from './spec.ts';
import type { BandAction, BandState } from './state.ts';

/**
 * Keeps the band in the query, as `useAddress` does a widget's fields, but that the specification, too, is fetched on first use: this
 * is the heaviest page. Returns what was wrong with the address, as sentences.
 */
export function useBandAddress({
  state,
  send,
  prepared,
  instance,
}: {
  state: BandState;
  send: (action: BandAction) => void;
  prepared: Shown & { sheet: Sheet };
  instance?: string | undefined;
}): readonly string[] {
  const codec = useCallback(async () => {
    const { readBand, writeBand } = await import('./band-address.ts');
    return {
      read: (query: string) => readBand(prepared, query, instance),
      write: (now: BandState) => writeBand({ prepared, state: now, instance }),
    };
  }, [prepared, instance]);
  // An address that came with the reader stays as it came, damaged or not, until the reader changes something.
  const own = useMemo(() => (state.touched && !state.held ? state : undefined), [state]);
  return useQuery({ codec, state: own, open: (onto) => send({ type: 'open', onto }) });
}
