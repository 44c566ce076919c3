import { useMemo } from 'preact/hooks';
import { MethodWidget } from '../parts/MethodWidget.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { scopeSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, cautionText, partsOf, summarise } from './words.ts';

export interface ScopeWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
  /** What it begins with where a page has numbers of its own. */
  readonly start?: Start;
}

/**
 * An oscilloscope across a load. After using it a reader can turn a trace into a power with its band, say which part decides, what a
 * percentage of full scale costs, and from what frequency on the method gives no number.
 */
export default function ScopeWidget({ instance, start }: ScopeWidgetProps) {
  const spec = useMemo(() => startingAt(scopeSpec, start), [start]);
  const use = useFields(spec, instance);
  const { values } = use.state;
  return (
    <MethodWidget
      {...use}
      spec={spec}
      instance={instance}
      draw={() => figureOf(use.state)}
      pulls="frequency"
      axes={strings.axes}
      answers={answersOf(values)}
      caution={cautionText(values)}
      parts={partsOf(values)}
      show={['peakToPeak', 'load', 'end', 'frequency', 'scope', 'probe', 'gain', 'gainOf', 'screen']}
      words={strings}
      note={strings.note}
      summary={summarise(values)}
    />
  );
}
