import { FieldsWidget } from '../parts/FieldsWidget.tsx';
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
  const use = useFields(meansSpec, instance);
  const { state, send } = use;
  return (
    <FieldsWidget
      {...use}
      kind="ruler-widget"
      spec={meansSpec}
      instance={instance}
      figure={<MeansFigure state={state} send={send} />}
      answers={answersOf(state.values)}
      show={['first', 'second', 'third']}
      words={strings}
      summary={summarise(state.values)}
    />
  );
}
