import { useEffect, useId, useReducer, useRef } from 'preact/hooks';
import { type Line, openLine, silent, windowLine } from './line.ts';

/** What the windows of a step tell each other of a figure: how it stands now, or that one asks for it. */
export type Mirrored = { readonly state: object } | { readonly asks: true };

/** Whether what came over the line is one of ours; how a figure stands has the same names everywhere. */
export const isMirrored =
  (like: object) =>
  (data: unknown): data is Mirrored => {
    if (typeof data !== 'object' || data === null) return false;
    const { state, asks } = data as Readonly<Record<string, unknown>>;
    if (asks === true) return true;
    return typeof state === 'object' && state !== null && Object.keys(like).every((name) => name in state);
  };

/** How a figure stands, and whether that came about here: only then are the other windows told. */
interface Kept<State> {
  readonly state: State;
  readonly from: 'begun' | 'here' | 'there';
}

const after = <State>(now: Kept<State>, state: State): Kept<State> =>
  state === now.state ? now : { state, from: 'here' };

type Act<State, Action> = { readonly does: Action } | { readonly told: State };

/**
 * A reducer whose state is the same in every window that shows its step: on the wall and in the notes. Whatever changes it is mirrored,
 * a press as well as a drag; who asks late is told what was changed before. Its state must be plain data.
 * @param found what this window already has when it wakes, which is no news to the others.
 */
export function useMirrored<State extends object, Action>(
  reduce: (state: State, action: Action) => State,
  begin: State,
  found?: () => State,
): readonly [State, (action: Action) => void] {
  // the same in every window, since each has the same page
  const id = useId();
  const [kept, act] = useReducer(
    (now: Kept<State>, action: Act<State, Action>): Kept<State> =>
      'told' in action ? { state: action.told, from: 'there' } : after(now, reduce(now.state, action.does)),
    { state: begin, from: 'begun' },
  );
  const latest = useRef(kept);
  latest.current = kept;
  const line = useRef<Line<Mirrored>>(silent);
  useEffect(() => {
    const own = openLine(`${windowLine()}:${id}`, isMirrored(begin), (told) => {
      // its names are those of our own state, and the same page wrote it
      if ('state' in told) act({ told: told.state as State });
      else if (latest.current.from !== 'begun') own.tell({ state: latest.current.state });
    });
    line.current = own;
    if (found) act({ told: found() });
    own.tell({ asks: true });
    return () => own.close();
  }, [id]);
  useEffect(() => {
    if (kept.from === 'here') line.current.tell({ state: kept.state });
  }, [kept]);
  return [kept.state, (does) => act({ does })];
}
