import { useEffect, useRef, useState } from 'preact/hooks';
import type { AddressSpec, Fields, StateOf } from '../../address/field-spec.ts';
import { whileOpening } from './opening.ts';

/** Rest before the address follows a change: browsers refuse more than about a hundred changes in half a minute. */
export const ADDRESS_REST_MS = 300;

/** Reading and writing addresses, fetched when there is one to read or to write. */
const codec = () => import('./address.ts');

export interface AddressUse<Of extends Fields> {
  /** The same object as long as nothing is prepared anew: what it reads is read once for each. */
  readonly spec: AddressSpec<Of>;
  /** Name of this widget in the address, where two share a page. */
  readonly instance: string | undefined;
  /** The state that the address should carry; `undefined` where it should stay as it came: nothing changed yet, or a handle is held. */
  readonly state: StateOf<Of> | undefined;
  /** Opens a state that an address brought. */
  readonly open: (state: StateOf<Of>) => void;
}

/**
 * Reads a widget's state from the query when it wakes, and keeps the query in step from then on, replacing and never adding to
 * the history. Returns what was wrong with the address, as sentences.
 */
export function useAddress<Of extends Fields>(use: AddressUse<Of>): readonly string[] {
  const { spec, instance, state, open } = use;
  const [problems, setProblems] = useState<readonly string[]>([]);
  const latest = useRef(open);
  latest.current = open;
  useEffect(() => {
    if (location.search === '') return;
    void whileOpening(async () => {
      const { readQuery } = await codec();
      const found = readQuery(spec, location.search, instance);
      if (found.carried) latest.current(found.state);
      setProblems(found.problems.map(({ sentence }) => sentence));
    });
  }, [spec, instance]);
  useEffect(() => {
    if (state === undefined) return;
    const timer = setTimeout(async () => {
      const { queryWith } = await codec();
      const query = queryWith({ spec, state, query: location.search, instance });
      history.replaceState(null, '', `${location.pathname}${query}${location.hash}`);
    }, ADDRESS_REST_MS);
    return () => clearTimeout(timer);
  }, [state, spec, instance]);
  return problems;
}
