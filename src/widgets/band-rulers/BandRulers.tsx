import { FieldsWidget } from '../parts/FieldsWidget.tsx';
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
  const use = useFields(bandRulersSpec, instance);
  const { state, send } = use;
  const half = state.values.even === 'decibels' ? 'halfDb' : 'halfPercent';
  return (
    <FieldsWidget
      {...use}
      kind="ruler-widget"
      spec={bandRulersSpec}
      instance={instance}
      figure={<BandRulersFigure state={state} send={send} />}
      answers={answersOf(state.values)}
      show={['even', half, 'level', 'claim']}
      words={strings}
      summary={summarise(state.values)}
    />
  );
}
