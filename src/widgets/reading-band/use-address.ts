import { useEffect, useMemo, useState } from 'preact/hooks';
import { decode } from '../../address/decode.ts';
import { encode } from '../../address/encode.ts';
import { type AddressSpec, defaultState, type Fields, type StateOf } from '../../address/field-spec.ts';
import { mergeQuery } from '../../address/merge.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { bandSpec, fromAddressState, type Shown, toAddressState } from './spec.ts';
import type { BandAction, BandState } from './state.ts';

/** Rest before the address follows a change: browsers refuse more than about a hundred changes in half a minute. */
const REST_MS = 300;

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
    const found = decode(spec, location.search, instance);
    if (found.carried) send({ type: 'open', state: fromAddressState(prepared.sheet, found.state) });
    setProblems(found.problems.map(({ sentence }) => sentence));
  }, [spec, prepared, instance, send]);
  useEffect(() => {
    // An address that came with the reader stays as it came, damaged or not, until the reader changes something.
    if (!state.touched || state.held) return;
    const timer = setTimeout(() => {
      const query = queryOf(spec, toAddressState(state.sheet, state), instance);
      history.replaceState(null, '', `${location.pathname}${query}${location.hash}`);
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [state, spec, instance]);
  return problems;
}

/** The query with this widget's part brought up to date; nothing where everything is as prepared. */
function queryOf(spec: AddressSpec, state: StateOf<Fields>, instance: string | undefined): string {
  const bare = encode(spec, defaultState(spec.fields), instance);
  const own = encode(spec, state, instance);
  const query = mergeQuery({
    query: location.search,
    encoded: own === bare ? '' : own,
    ...(instance !== undefined && { instance }),
  });
  return query === '' ? '' : `?${query}`;
}
