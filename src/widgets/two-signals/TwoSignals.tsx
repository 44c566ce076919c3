import { FieldsWidget } from '../parts/FieldsWidget.tsx';
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
  const use = useFields(signalsSpec, instance);
  const { state, send } = use;
  return (
    <FieldsWidget
      {...use}
      kind="ruler-widget"
      spec={signalsSpec}
      instance={instance}
      figure={<SignalsFigure state={state} send={send} />}
      answers={answersOf(state.values)}
      show={['first', 'second', 'phase', 'claim']}
      words={strings}
      summary={summarise(state.values)}
    />
  );
}
