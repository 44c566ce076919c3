import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Sheet } from '../../sheet/sheet.ts';
import { bandSpec, fromAddressState, type Shown, toAddressState } from './spec.ts';
import type { BandAction, BandState } from './state.ts';

/** Rest before the address follows a change: browsers refuse more than about a hundred changes in half a minute. */
const REST_MS = 300;

/** Reading and writing addresses, fetched when there is one to read or to write. */
const codec = () => import('./address.ts');

/**
 * Reads the state from the query when the widget wakes, and keeps the query in step from then on, replacing and never adding
 * to the history. Returns what was wrong with the address, as sentences.
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
  const spec = useMemo(() => bandSpec(prepared.sheet, prepared), [prepared]);
  useEffect(() => {
    if (location.search === '') return;
    void codec().then(({ readQuery }) => {
      const found = readQuery(spec, location.search, instance);
      if (found.carried) send({ type: 'open', state: fromAddressState(prepared.sheet, found.state) });
      setProblems(found.problems.map(({ sentence }) => sentence));
    });
  }, [spec, prepared, instance, send]);
  useEffect(() => {
    // An address that came with the reader stays as it came, damaged or not, until the reader changes something.
    if (!state.touched || state.held) return;
    const timer = setTimeout(async () => {
      const { queryWith } = await codec();
      const now = toAddressState(state.sheet, state);
      const query = queryWith({ spec, state: now, query: location.search, instance });
      history.replaceState(null, '', `${location.pathname}${query}${location.hash}`);
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [state, spec, instance]);
  return problems;
}
