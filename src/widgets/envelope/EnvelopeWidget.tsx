import { useMemo } from 'preact/hooks';
import { PowerShares } from '../../figures/PowerShares.tsx';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { EnvelopeFigure } from './EnvelopeFigure.tsx';
import { shareRows } from './figure.ts';
import { PowersTable } from './PowersTable.tsx';
import { type KeyedFields, keyedSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface EnvelopeWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
  /** What it begins with where a page has numbers of its own. */
  readonly start?: Start;
}

const SHOWN: readonly (keyof KeyedFields)[] = [
  'keying',
  'peak',
  'kind',
  'delivery',
  'plane',
  'coax',
  'swr',
  'volts',
  'amperes',
  'slip',
];

/**
 * A keyed transmitter and its powers. After using it a reader can say which power a figure in watts means (mean, peak envelope or
 * carrier; on its way or delivered; at which place), what an averaging meter makes of keying, and what efficiency compares.
 */
export default function EnvelopeWidget({ instance, start }: EnvelopeWidgetProps) {
  const spec = useMemo(() => startingAt(keyedSpec, start), [start]);
  const use = useFields(spec, instance);
  const { state, send } = use;
  const { values } = state;
  const summary = summarise(values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={spec}
      instance={instance}
      figure={<EnvelopeFigure state={state} send={send} />}
      answers={answersOf(values)}
      between={
        <PowerShares
          rows={shareRows(values)}
          spoken={shareRows(values, 'spoken')}
          name={strings.shares.name}
        />
      }
      show={SHOWN}
      below={<PowersTable state={values} />}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
