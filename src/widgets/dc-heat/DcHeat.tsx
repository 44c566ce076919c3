import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { heatSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

/** Every field, in the order of the two runs. */
const SHOWN = [
  'waitedRf',
  'waitedDc',
  'timeConstant',
  'room',
  'riseRf',
  'riseDc',
  'within',
  'volts',
  'amperes',
] as const;

export interface DcHeatProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A load that is warmed by RF and then by direct current. After using it a reader can say what the result hangs on, how long to wait,
 * what a room that changes does, and which part decides.
 */
export default function DcHeat({ instance }: DcHeatProps) {
  const use = useFields(heatSpec, instance);
  const { state } = use;
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={heatSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="waitedRf"
      axes={strings.axes}
      answers={answersOf(state.values)}
      show={SHOWN}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
