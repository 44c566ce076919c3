import { useEffect, useRef, useState } from 'preact/hooks';
import { partStrings } from '../bench/part-strings.ts';
import { LONGEST_TEXT } from '../bench/read/spec.ts';
import type { InstrumentEntries } from '../instruments/instrument.ts';
import type { Kept, KeptStore } from '../store/kept.ts';
import { isolated } from '../text/isolate.ts';
import { saveStrings as strings } from './save-strings.ts';

/** Stands for an instrument that is not kept yet. */
export const NEW = 'new';

interface InstrumentsUse {
  /** Undefined until the reader asks for them. */
  readonly list: readonly Kept<InstrumentEntries>[] | undefined;
  readonly open: () => void;
  /** Keeps entries in the place of one that is kept, or as a new one. */
  readonly put: (kept: Kept<InstrumentEntries> | undefined, entries: InstrumentEntries) => void;
  /** What came of the last call, in words. */
  readonly told: string | undefined;
}

/** The reader's instruments, fetched with the store when they are asked for. */
export function useInstruments(): InstrumentsUse {
  const store = useRef<KeptStore<InstrumentEntries>>();
  const [list, setList] = useState<readonly Kept<InstrumentEntries>[]>();
  const [told, setTold] = useState<string>();
  const isPutting = useRef(false);
  const failed = (): void => setTold(partStrings.failed);
  useEffect(() => () => store.current?.close(), []);
  const refresh = async (): Promise<void> => {
    const { instrumentStore } = await import('../instruments/kept.ts');
    store.current ??= instrumentStore();
    const found = await store.current.list();
    setList(found.ok ? found.value.items : []);
    if (!found.ok) setTold(strings.problems[found.problem]);
  };
  const keep = async (
    kept: Kept<InstrumentEntries> | undefined,
    entries: InstrumentEntries,
  ): Promise<void> => {
    const { newId } = await import('../store/kept.ts');
    const name = entries.label.slice(0, LONGEST_TEXT);
    const id = kept?.id ?? newId();
    const outcome = await store.current?.put({ id, name, value: entries, revision: kept?.revision });
    if (outcome === undefined) return;
    setTold(outcome.ok ? strings.saved(isolated(name)) : strings.problems[outcome.problem]);
    await refresh();
  };
  const put = (kept: Kept<InstrumentEntries> | undefined, entries: InstrumentEntries): void => {
    if (isPutting.current) return; // pressed twice, it is still one instrument
    isPutting.current = true;
    void keep(kept, entries)
      .catch(failed)
      .finally(() => {
        isPutting.current = false;
      });
  };
  return {
    list,
    told,
    open: () => {
      setTold(strings.loading);
      void refresh().then(
        () => setTold((before) => (before === strings.loading ? undefined : before)),
        failed,
      );
    },
    put,
  };
}
