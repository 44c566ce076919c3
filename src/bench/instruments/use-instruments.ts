import { useEffect, useState } from 'preact/hooks';
import type { InstrumentEntries } from '../../instruments/instrument.ts';
import { instrumentStore } from '../../instruments/kept.ts';
import type { KeptList, Outcome } from '../../store/kept.ts';
import { onReturned } from '../../store/returned.ts';

/** What is kept, as it is now in this browser; undefined until the browser has answered. */
export function useKeptInstruments(): Outcome<KeptList<InstrumentEntries>> | undefined {
  const [outcome, setOutcome] = useState<Outcome<KeptList<InstrumentEntries>> | undefined>(undefined);
  useEffect(() => {
    const store = instrumentStore();
    let left = false;
    const ask = async (): Promise<void> => {
      const answer = await store.list();
      if (!left) setOutcome(answer);
    };
    void ask();
    const end = store.watch(() => void ask());
    const unhear = onReturned(() => void ask());
    return () => {
      left = true;
      unhear();
      end();
      store.close();
    };
  }, []);
  return outcome;
}
