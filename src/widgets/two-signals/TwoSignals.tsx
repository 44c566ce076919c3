import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { SignalsFigure } from './SignalsFigure.tsx';
import { signalsSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface TwoSignalsProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Two signals in one load. After using it a reader can answer: what do two signals come to together, when do powers add and
 * when volts, and why is it never the sum of their dBm?
 */
export default function TwoSignals({ instance }: TwoSignalsProps) {
  const { state, send, problems } = useFields(signalsSpec, instance);
  const { fields } = signalsSpec;
  return (
    <figure class="ruler-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <SignalsFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['first', 'second', 'phase', 'claim']}
        values={state.values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
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
