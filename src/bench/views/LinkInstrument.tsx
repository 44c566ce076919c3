import { useState } from 'preact/hooks';
import type { LinkEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import type { BenchAction } from '../state/actions.ts';
import { strings } from '../strings.ts';
import { Fetching } from './Fetching.tsx';
import { useFetched } from './use-fetched.ts';

export interface LinkInstrumentProps {
  readonly link: LinkEntries;
  readonly method: MethodKind;
  /** When it was measured, in the reader's own words. */
  readonly day: string;
  readonly send: (action: BenchAction) => void;
  readonly name: string;
}

const load = () => import('../instruments/LinkParts.tsx');

/** States a link by one of the reader's instruments, and says how old its calibration is; fetched when it is first wanted. */
export function LinkInstrument(props: LinkInstrumentProps) {
  const [open, setOpen] = useState(false);
  const dated = props.link.calibrated !== '';
  const { module: Parts, failed, again } = useFetched(load, open || dated);
  return (
    <>
      {dated && Parts && <Parts.LinkAge {...props} />}
      <details class="folded link-more" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          {strings.link.instrument}
          <span class="visually-hidden">{` ${strings.link.for(props.name)}`}</span>
        </summary>
        {open && Parts && <Parts.LinkChoice {...props} />}
        {open && !Parts && <Fetching failed={failed} again={again} />}
      </details>
    </>
  );
}
