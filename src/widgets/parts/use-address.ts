import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { AddressSpec, Fields, StateOf } from '../../address/field-spec.ts';
import { LOST_ADDRESS, tellUnfetched, whileOpening } from './opening.ts';

/** Rest before the address follows a change: browsers refuse more than about a hundred changes in half a minute. */
const REST_MS = 300;

/** How a query is read and written. */
export interface QueryCodec<State, Opened = State> {
  /** Nothing opened where the query carries nothing of the kind. */
  read(query: string): { readonly opened: Opened | undefined; readonly problems: readonly string[] };
  /** Puts this state into the address; what else it carries stays. */
  write(state: State): void;
}

interface QueryUse<State, Opened = State> {
  /** Fetched when there is a query to read or to write. The same function on every call, until what is prepared changes. */
  readonly codec: () => Promise<QueryCodec<State, Opened>>;
  /** The state that the address should carry; `undefined` where it should stay as it came: nothing changed yet, or a handle is held. */
  readonly state: State | undefined;
  /** Opens a state that an address brought. */
  readonly open: (opened: Opened) => void | Promise<void>;
  readonly restMs?: number;
}

/**
 * Reads a state from the query when the page wakes, and keeps the query in step from then on, replacing and never adding to the
 * history. Returns what was wrong with the address, as sentences.
 */
export function useQuery<State, Opened = State>({
  codec,
  state,
  open,
  restMs = REST_MS,
}: QueryUse<State, Opened>): readonly string[] {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const latest = useRef(open);
  latest.current = open;
  useEffect(() => {
    if (location.search === '') return;
    whileOpening(async () => {
      const { opened, problems: told } = (await codec()).read(location.search);
      setProblems(told);
      if (opened !== undefined) await latest.current(opened);
    }).catch(() => setProblems([LOST_ADDRESS]));
  }, [codec]);
  useEffect(() => {
    if (state === undefined) return;
    const timer = setTimeout(() => codec().then(({ write }) => write(state), tellUnfetched), restMs);
    return () => clearTimeout(timer);
  }, [state, codec, restMs]);
  return problems;
}

interface AddressUse<Of extends Fields> extends Omit<QueryUse<StateOf<Of>>, 'codec'> {
  /** The same object as long as nothing is prepared anew: what it reads is read once for each. */
  readonly spec: AddressSpec<Of>;
  /** Name of this widget in the address, where two share a page. */
  readonly instance: string | undefined;
}

/** The query kept by a specification of fields. */
export function useAddress<Of extends Fields>({ spec, instance, ...use }: AddressUse<Of>): readonly string[] {
  const codec = useMemo(
    () => async (): Promise<QueryCodec<StateOf<Of>>> => {
      const { readQuery, writeQuery } = await import('./address.ts');
      return {
        read: (query) => {
          const { carried, state, problems } = readQuery(spec, query, instance);
          return {
            opened: carried ? state : undefined,
            problems: problems.map(({ sentence }) => sentence),
          };
        },
        write: (state) => writeQuery({ spec, state, instance }),
      };
    },
    [spec, instance],
  );
  return useQuery({ codec, ...use });
}
