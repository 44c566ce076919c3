import { useEffect, useRef, useState } from 'preact/hooks';
import type { AddressSpec, Fields, StateOf } from '../address/field-spec.ts';
import { whileOpening } from '../widgets/parts/opening.ts';

/** Reading and writing addresses, fetched when there is one to read or to write. */
const codec = () => import('../widgets/parts/address.ts');

interface QueryUse<Of extends Fields> {
  readonly spec: AddressSpec<Of>;
  /** What the address should carry; `undefined` where it should stay as it came. */
  readonly state: StateOf<Of> | undefined;
  /** Opens what the address brought. */
  readonly open: (state: StateOf<Of>) => void | Promise<void>;
}

/**
 * Reads what a query says when the page wakes, and keeps the query in step with what is changed. Unlike the hook of widgets it knows
 * of no instances and no dragging, and waits for what is opened. Returns what was wrong with the address, as sentences.
 */
export function useQuery<Of extends Fields>({ spec, state, open }: QueryUse<Of>): readonly string[] {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const latest = useRef(open);
  latest.current = open;
  useEffect(() => {
    if (location.search === '') return;
    void whileOpening(async () => {
      const { readQuery } = await codec();
      const found = readQuery(spec, location.search, undefined);
      setProblems(found.problems.map(({ sentence }) => sentence));
      if (found.carried) await latest.current(found.state);
    });
  }, [spec]);
  useEffect(() => {
    if (state === undefined) return;
    void codec().then(({ queryWith }) => {
      const query = queryWith({ spec, state, query: location.search, instance: undefined });
      history.replaceState(null, '', `${location.pathname}${query}${location.hash}`);
    });
  }, [state, spec]);
  return problems;
}
