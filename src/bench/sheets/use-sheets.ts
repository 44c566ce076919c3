import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { Kept, KeptHead, KeptList, KeptStore, Outcome } from '../../store/kept.ts';
import { onReturned } from '../../store/returned.ts';
import { inLine } from '../keep/in-line.ts';
import { keptSheets } from '../keep/kept-sheets.ts';
import { type Shelf, withDuplicate, withRemoved, withRestored } from './changes.ts';

export interface Sheets {
  /** Undefined until it is known. */
  readonly list: Outcome<KeptList<SheetEntries>> | undefined;
  readonly shelf: Shelf;
  readonly duplicate: (sheet: Kept<SheetEntries>) => Promise<void>;
  readonly remove: (head: KeptHead) => Promise<void>;
  readonly restore: () => Promise<void>;
}

/** The kept sheets, as they are and as other tabs change them. */
export function useSheets(): Sheets {
  const [list, setList] = useState<Outcome<KeptList<SheetEntries>> | undefined>(undefined);
  const [shelf, setShelf] = useState<Shelf>({ removed: [], note: '' });
  const store = useRef<KeptStore<SheetEntries>>();
  // each change goes on from what the one before it left: two that were asked for at once are both remembered
  const latest = useRef(shelf);
  const { current: line } = useRef(inLine());
  const read = async (): Promise<void> => {
    if (store.current !== undefined) setList(await store.current.list());
  };
  useEffect(() => {
    const opened = keptSheets();
    store.current = opened;
    void read();
    const unwatch = opened.watch(() => void read());
    const unhear = onReturned(() => void read());
    return () => {
      unhear();
      unwatch();
      opened.close();
      store.current = undefined;
    };
  }, []);
  const change = (make: (of: KeptStore<SheetEntries>, from: Shelf) => Promise<Shelf>): Promise<void> =>
    line.add(async () => {
      if (store.current === undefined) return;
      latest.current = await make(store.current, latest.current);
      await read();
      setShelf(latest.current);
    });
  return {
    list,
    shelf,
    duplicate: (sheet) => change((of, from) => withDuplicate(of, from, sheet)),
    remove: (head) => change((of, from) => withRemoved(of, from, head)),
    restore: () => change(withRestored),
  };
}
