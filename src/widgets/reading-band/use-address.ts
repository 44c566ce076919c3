import { useEffect, useState } from 'preact/hooks';
import type { Sheet } from '../../sheet/sheet.ts';
import { whileOpening } from '../parts/opening.ts';
import { ADDRESS_REST_MS } from '../parts/use-address.ts';
import type { Shown } from './spec.ts';
import type { BandAction, BandState } from './state.ts';

/** What the band's address says, and how it is read, fetched when there is one to read or to write. */
const codec = () => import('./band-address.ts');

/**
 * Reads the band from the query when it wakes, and keeps the query in step from then on. Returns what was wrong with the address,
 * as sentences. As `useAddress`, but that the specification, too, is fetched on first use: this is the heaviest page.
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
  const [problems, setProblems] = useState<readonly string[]>([]);
  useEffect(() => {
    if (location.search === '') return;
    void whileOpening(async () => {
      const { readBand } = await codec();
      const found = readBand(prepared, location.search, instance);
      if (found.opened) send({ type: 'open', state: found.opened });
      setProblems(found.problems);
    });
  }, [prepared, instance, send]);
  useEffect(() => {
    // An address that came with the reader stays as it came, damaged or not, until the reader changes something.
    if (!state.touched || state.held) return;
    const timer = setTimeout(async () => {
      const { queryWithBand } = await codec();
      const query = queryWithBand({ prepared, state, query: location.search, instance });
      history.replaceState(null, '', `${location.pathname}${query}${location.hash}`);
    }, ADDRESS_REST_MS);
    return () => clearTimeout(timer);
  }, [state, prepared, instance]);
  return problems;
}
