import { useEffect, useState } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { BenchAction } from '../state/actions.ts';
import type { BenchState } from '../state/state.types.ts';
import { openAddress } from '../use-address.ts';
import { useInUse } from '../use-answering.ts';
import { useFetched } from '../views/use-fetched.ts';
import { anythingKept } from './anything-kept.ts';
import { lineStrings as strings } from './line-strings.ts';

export interface KeptLineProps {
  readonly state: BenchState;
  /** What the bench stood with when it woke. */
  readonly begun: SheetEntries;
  readonly send: (action: BenchAction) => void;
}

const load = () => import('./KeepingPart.tsx');

/** Whether there may be a sheet to open: from the start where something is kept or the address says so, else as soon as the page is in use. */
function useWanted(): boolean {
  const inUse = useInUse();
  const [kept, setKept] = useState(false);
  useEffect(() => {
    let left = false;
    void anythingKept().then((found) => !left && found && setKept(true));
    return () => {
      left = true;
    };
  }, []);
  return inUse || kept;
}

/**
 * What is kept of the sheet, in a line above it, and the way to all that is kept. What keeps it is fetched when there may be something to
 * open or to keep; it opens the sheet that is kept, where one is asked for. Where it cannot be fetched, the address alone counts.
 */
export function KeptLine(props: KeptLineProps) {
  const { send } = props;
  const { module, failed } = useFetched(load, useWanted());
  useEffect(() => {
    if (failed && location.hash !== '') void openAddress(send);
  }, [failed, send]);
  if (module !== undefined) return <module.KeepingPart {...props} />;
  return (
    // Until the part listens, a script that waits for the page sees `late` and not `woken`.
    <div class={failed ? 'kept-line needs-script' : 'kept-line needs-script late'}>
      <p class="small">
        <a href={strings.allAt}>{strings.all}</a>
      </p>
    </div>
  );
}
