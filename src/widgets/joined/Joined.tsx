import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { alongOf, joinedSpec, shownFields } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface JoinedProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A meter joins a circuit. After using it a reader can say what a meter's resistance, a waveform and a probe's capacitance do to a
 * reading, and at which frequency a meter stops to be one.
 */
export default function Joined({ instance }: JoinedProps) {
  const use = useFields(joinedSpec, instance);
  const { state } = use;
  const along = alongOf(state.values.meter);
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={joinedSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls={along}
      axes={strings.axes[along]}
      answers={answersOf(state.values)}
      show={shownFields(state.values)}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
