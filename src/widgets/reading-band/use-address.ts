import { useMemo } from 'preact/hooks';
import type { Sheet } from '../../sheet/sheet.ts';
import { useAddress } from '../parts/use-address.ts';
import { bandSpec, fromAddressState, type Shown, toAddressState } from './spec.ts';
import type { BandAction, BandState } from './state.ts';

/** Keeps the band in step with the query; returns what was wrong with the address, as sentences. */
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
  const spec = useMemo(() => bandSpec(prepared.sheet, prepared), [prepared]);
  // An address that came with the reader stays as it came, damaged or not, until the reader changes something.
  const own = useMemo(
    () => (state.touched && !state.held ? toAddressState(state.sheet, state) : undefined),
    [state],
  );
  return useAddress({
    spec,
    instance,
    state: own,
    open: (opened) => send({ type: 'open', state: fromAddressState(prepared.sheet, opened) }),
  });
}
