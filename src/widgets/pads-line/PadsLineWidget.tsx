import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { padsSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface PadsLineWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A line through a pad into a meter. After using it a reader can say what the result is worth and which part decides, what a real pad
 * does for the match and what not, and what one more pad tells of overload.
 */
export default function PadsLineWidget({ instance }: PadsLineWidgetProps) {
  const use = useFields(padsSpec, instance);
  const { state } = use;
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={padsSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="pad"
      axes={strings.axes}
      answers={answersOf(state.values)}
      show={['reading', 'moved', 'pad', 'within', 'padSwr', 'source', 'meter']}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
