import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { BandRulersFigure } from './BandRulersFigure.tsx';
import { bandRulersSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface BandRulersProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * One band on three rulers. After using it a reader can answer: what is so many dB in percent of power and of volts, at which
 * end is it more, and what is a percentage in dB?
 */
export default function BandRulers({ instance }: BandRulersProps) {
  const { state, send, problems } = useFields(bandRulersSpec, instance);
  const { fields } = bandRulersSpec;
  const half = state.values.even === 'decibels' ? 'halfDb' : 'halfPercent';
  return (
    <figure class="ruler-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <BandRulersFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['even', half, 'level', 'claim']}
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
