import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { SlipTable } from './SlipTable.tsx';
import { traceSpec } from './spec.ts';
import { strings } from './strings.ts';
import { TraceFigure } from './TraceFigure.tsx';
import { answersOf, summarise } from './words.ts';

export interface TraceWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A trace across a load. After using it a reader can say which of a wave's measures a formula for power wants, what each usual
 * slip costs as a factor and in dB, and why a formula made for sines fails on another shape.
 */
export default function TraceWidget({ instance }: TraceWidgetProps) {
  const use = useFields(traceSpec, instance);
  const { state, send } = use;
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={traceSpec}
      instance={instance}
      figure={<TraceFigure state={state} send={send} />}
      answers={answersOf(state.values)}
      show={['peakToPeak', 'load', 'wave', 'slip']}
      below={<SlipTable state={state.values} />}
      words={strings}
      note={strings.note}
      summary={summarise(state.values)}
    />
  );
}
