import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { inLineSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface InLineWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A directional meter in the line. After using it a reader can say what a percentage of full scale leaves of a reading, when forward less
 * reflected is the power in the load, and how far an SWR can be believed.
 */
export default function InLineWidget({ instance }: InLineWidgetProps) {
  const use = useFields(inLineSpec, instance);
  const { state } = use;
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={inLineSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="forward"
      axes={strings.axes}
      answers={answersOf(state.values)}
      show={['forward', 'reflected', 'scale', 'percent', 'directivity', 'wanted']}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
