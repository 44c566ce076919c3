import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { SlipTable } from './SlipTable.tsx';
import { traceSpec } from './spec.ts';
import { strings } from './strings.ts';
import { TraceFigure } from './TraceFigure.tsx';
import { answersOf, summarise } from './words.ts';

export interface TraceWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A trace across a load. After using it a reader can say which of a wave's measures a formula for power wants, what each usual
 * slip costs as a factor and in dB, and why a formula made for sines fails on another shape.
 */
export default function TraceWidget({ instance }: TraceWidgetProps) {
  const { state, send, problems } = useFields(traceSpec, instance);
  const { fields } = traceSpec;
  return (
    <figure class="plain-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <TraceFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['peakToPeak', 'load', 'wave', 'slip']}
        values={state.values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      <SlipTable state={state.values} />
      <p class="small muted">{strings.note}</p>
      <p class="no-script-only">{strings.noScript}</p>
      <p class="needs-script">
        <button type="button" onClick={() => send({ type: 'reset', values: defaultState(fields) })}>
          {strings.reset}
        </button>
      </p>
      <Announcer summary={summarise(state.values)} />
    </figure>
  );
}
