import { useCallback, useEffect, useReducer, useRef, useState } from 'preact/hooks';
import { instrumentStore } from '../../instruments/kept.ts';
import { onReturned } from '../../store/returned.ts';
import { type Keeper, keeper } from './keeper.ts';
import { emptyShelf, reduceShelf, type Shelf, type ShelfAction } from './shelf.ts';

/** What the page of instruments works with. */
export interface ShelfTools {
  readonly shelf: Shelf;
  /** The shelf at this moment, later than the drawing that asks. */
  readonly latest: () => Shelf;
  readonly send: (action: ShelfAction) => void;
  /** Takes what is kept in place of what stands on the page. */
  readonly reread: (id: string) => void;
  /** Whether something waits to be kept. */
  readonly waiting: boolean;
}

/** The shelf as it is, and a way to change it: every change is kept in this browser by itself. */
export function useShelf(): ShelfTools {
  const [shelf, reduce] = useReducer(reduceShelf, undefined, emptyShelf);
  const [waiting, setWaiting] = useState(false);
  const latest = useRef(shelf);
  const keep = useRef<Keeper | undefined>(undefined);
  useEffect(() => {
    const store = instrumentStore();
    const own = keeper({ store, send: apply, onWaiting: setWaiting });
    keep.current = own;
    void own.load();
    const end = store.watch(() => void own.load());
    const unhear = onReturned(() => void own.load());
    const leave = (): void => void own.flush();
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', leave);
    return () => {
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', leave);
      unhear();
      end();
      void own.flush().then(() => store.close());
    };
  }, []);
  // what is kept follows from the state after the action, which the next drawing would be too late for
  function apply(action: ShelfAction): void {
    latest.current = reduceShelf(latest.current, action);
    reduce(action);
  }
  const send = useCallback((action: ShelfAction) => {
    const before = latest.current;
    apply(action);
    if (keep.current !== undefined) keepChange(keep.current, action, before, latest.current);
  }, []);
  const reread = useCallback((id: string) => void keep.current?.reread(id), []);
  const now = useCallback(() => latest.current, []);
  return { shelf, latest: now, send, reread, waiting };
}

/** Has what an action changed kept. */
function keepChange(keep: Keeper, action: ShelfAction, before: Shelf, after: Shelf): void {
  const known = new Map((before.items ?? []).map((item) => [item.id, item.value]));
  switch (action.type) {
    case 'add':
    case 'edit':
    case 'duplicate':
      for (const { id, value } of after.items ?? []) if (known.get(id) !== value) keep.change(id, value);
      return;
    case 'remove':
      if (known.has(action.id)) void keep.remove(action.id);
      return;
    case 'restore':
      if (before.removed !== undefined) void keep.restore(before.removed.item.id, before.removed.item.value);
      return;
    default:
      return;
  }
}
