import { useEffect } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { BenchAction } from '../actions.ts';
import type { BenchState } from '../state.types.ts';
import { openAddress } from '../use-address.ts';
import { useFetched } from '../views/use-fetched.ts';
import { lineStrings as strings } from './line-strings.ts';

export interface KeptLineProps {
  readonly state: BenchState;
  /** What the bench stood with when it woke. */
  readonly begun: SheetEntries;
  readonly send: (action: BenchAction) => void;
}

const load = () => import('./KeepingPart.tsx');

/**
 * What is kept of the sheet, in a line above it, and the way to all that is kept. What keeps it is fetched once the page is awake; it
 * opens the sheet that is kept, where one is asked for. Where it cannot be fetched, the address alone counts.
 */
export function KeptLine(props: KeptLineProps) {
  const { send } = props;
  const { module, failed } = useFetched(load, true);
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
