import { useEffect, useRef, useState } from 'preact/hooks';
import { partStrings } from '../bench/part-strings.ts';
import type { SheetEntries } from '../sheet/entries.ts';
import type { Kept, KeptStore } from '../store/kept.ts';
import { strings } from './strings.ts';

interface KeptUse {
  /** Undefined until the reader asks for them. */
  readonly list: readonly Kept<SheetEntries>[] | undefined;
  readonly open: () => void;
  /** The address of a kept sheet, handed on; what is too long for one is told. */
  readonly take: (sheet: Kept<SheetEntries>) => void;
  /** What came of the last call, in words. */
  readonly told: string | undefined;
}

/** The sheets that are kept in this browser, fetched with the store when they are asked for. */
export function useKept(onAddress: (address: string) => void): KeptUse {
  const store = useRef<KeptStore<SheetEntries>>();
  const [list, setList] = useState<readonly Kept<SheetEntries>[]>();
  const [told, setTold] = useState<string>();
  useEffect(() => () => store.current?.close(), []);
  const look = async (): Promise<void> => {
    const { keptSheets } = await import('../bench/keep/kept-sheets.ts');
    store.current ??= keptSheets();
    const found = await store.current.list();
    setList(found.ok ? found.value.items : []);
    if (!found.ok) setTold(strings.kept.refused);
    else setTold(found.value.items.length === 0 ? strings.kept.none : undefined);
  };
  const take = async ({ id, value }: Kept<SheetEntries>): Promise<void> => {
    const { encodeEntries } = await import('../bench/address/address.ts');
    // as it is kept by now: another tab may have gone on with it since it was listed
    const now = await store.current?.get(id);
    const address = encodeEntries(now?.ok ? now.value.value : value);
    setTold(address === undefined ? strings.kept.tooLong : undefined);
    if (address !== undefined) onAddress(address);
  };
  const failed = (): void => setTold(partStrings.failed);
  return {
    list,
    told,
    open: () => void look().catch(failed),
    take: (sheet) => void take(sheet).catch(failed),
  };
}
