import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { MeansFigure } from './MeansFigure.tsx';
import { meansSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface TwoMeansProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Three readings and their two means. After using it a reader can answer: should I average the decibels or the powers, and does
 * it make a difference here?
 */
export default function TwoMeans({ instance }: TwoMeansProps) {
  const { state, send, problems } = useFields(meansSpec, instance);
  const { fields } = meansSpec;
  return (
    <figure class="ruler-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <MeansFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['first', 'second', 'third']}
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
