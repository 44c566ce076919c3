import { MethodWidget } from '../parts/MethodWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { detectorSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, cautionText, partsOf, summarise } from './words.ts';

export interface DetectorWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A peak detector across a load. After using it a reader can add the diode's drop back, say what forgetting it costs at a high and at a
 * low level, what harmonics do to a peak, and below which power there is no number without a curve taken with DC.
 */
export default function DetectorWidget({ instance }: DetectorWidgetProps) {
  const use = useFields(detectorSpec, instance);
  const { values } = use.state;
  return (
    <MethodWidget
      {...use}
      spec={detectorSpec}
      instance={instance}
      draw={() => figureOf(use.state)}
      pulls="detected"
      axes={strings.axes}
      answers={answersOf(values)}
      caution={cautionText(values)}
      parts={partsOf(values)}
      show={['detected', 'drop', 'known', 'from', 'load', 'harmonics']}
      words={strings}
      note={strings.note}
      summary={summarise(values)}
    />
  );
}
