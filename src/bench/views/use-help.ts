import { useEffect, useState } from 'preact/hooks';
import type { Help } from '../help/help.ts';
import { type HelpFound, helpWork, NOTHING_FOUND } from '../help/help-work.ts';
import { inSlices } from '../slices.ts';

/** What would help, as far as it is found: computed in slices while `wanted`, begun anew for another question. */
export function useHelp(help: Help, wanted: boolean): HelpFound {
  const [state, setState] = useState<{ readonly of: Help; readonly found: HelpFound } | undefined>(undefined);
  const complete = state?.of === help && state.found.cheapest !== undefined;
  useEffect(() => {
    if (!wanted || complete) return;
    const stop = new AbortController();
    const steps = helpWork(help, (found) => setState({ of: help, found }));
    void inSlices({ steps, signal: stop.signal });
    return () => stop.abort();
  }, [help, wanted, complete]);
  return state?.of === help ? state.found : NOTHING_FOUND;
}
