import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { KeptStore, StoreProblem } from '../../store/kept.ts';
import { openingOf } from '../fragment.ts';
import { writeAddress } from '../use-address.ts';
import { arrive } from './arrive.ts';
import type { KeptLineProps } from './KeptLine.tsx';
import { type Keeper, keeper } from './keeper.ts';
import { keptSheets } from './kept-sheets.ts';
import { markIn } from './mark.ts';
import { type KeepingState, UNCHANGED } from './place.ts';
import { type Standing, setMark } from './set-mark.ts';

export interface Keeping {
  /** Nothing before it is known what the bench opens with. */
  readonly keeper: Keeper | undefined;
  readonly told: KeepingState;
  /** Why the kept sheet that was asked for is not open. */
  readonly problem: StoreProblem | undefined;
}

export type KeepingProps = KeptLineProps & {
  /** What the bench stood with when it woke. */
  readonly begun: SheetEntries;
};

/** Opens what is kept, and keeps what stands on the bench from then on. */
export function useKeeping({ state, send, begun }: KeepingProps): Keeping {
  const { sheet, entries } = state;
  const [told, setTold] = useState<KeepingState>(UNCHANGED);
  const [problem, setProblem] = useState<StoreProblem | undefined>(undefined);
  const [ready, setReady] = useState<Keeper | undefined>(undefined);
  const latest = useRef({ sheet, entries });
  latest.current = { sheet, entries };
  useEffect(() => {
    const store = keptSheets();
    let standing: Standing | undefined;
    const onStanding = (now: Standing): void => {
      standing = now;
      setMark(now);
    };
    const made = keeper({ store, onState: setTold, onStanding });
    made.begin(0, begun);
    const isUntouched = (): boolean => latest.current.entries === begun;
    const come = async (): Promise<void> => {
      setProblem(await arrive({ store, keeper: made, send, isUntouched }));
      setReady(() => made);
    };
    const turn = async (): Promise<void> => {
      made.leave();
      const show = (): void => made.show(latest.current.sheet, latest.current.entries);
      const mark = markIn(history.state);
      if (mark === undefined && !location.hash.startsWith('#kept-')) {
        if (openingOf(location.hash)?.type !== 'open') show();
      } else if (mark !== undefined && mark.id === standing?.id) {
        show();
        await writeAddress(latest.current.entries);
      } else {
        await made.flush();
        await come();
        show();
      }
    };
    void come();
    addEventListener('hashchange', turn);
    const stop = listen(store, made);
    return () => {
      removeEventListener('hashchange', turn);
      stop();
    };
  }, [send, begun]);
  useEffect(() => ready?.show(sheet, entries), [ready, sheet, entries]);
  return { keeper: ready, told, problem };
}

/** Hears of other tabs, and keeps at once what is waiting when the page is left. Answers with what ends it. */
function listen(store: KeptStore<SheetEntries>, made: Keeper): () => void {
  const onSight = (): void => void (document.visibilityState === 'hidden' ? made.flush() : made.check());
  const onLeave = (): void => void made.flush();
  const onReturn = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) void made.check();
  };
  document.addEventListener('visibilitychange', onSight);
  addEventListener('pagehide', onLeave);
  addEventListener('pageshow', onReturn);
  const unwatch = store.watch(made.heard);
  return () => {
    document.removeEventListener('visibilitychange', onSight);
    removeEventListener('pagehide', onLeave);
    removeEventListener('pageshow', onReturn);
    unwatch();
    made.stop();
    store.close();
  };
}
