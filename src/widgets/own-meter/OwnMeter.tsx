import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { CertificateTable } from './CertificateTable.tsx';
import { figureOf } from './figure.ts';
import { meterSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface OwnMeterProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A meter with a table of corrections. After using it a reader can say what a calibration gives and what it leaves as it was, what
 * a result gains by using the table and loses by turning the screw instead, and how long the table may be trusted.
 */
export default function OwnMeter({ instance }: OwnMeterProps) {
  const use = useFields(meterSpec, instance);
  const { state } = use;
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={meterSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="reading"
      axes={strings.axes}
      answers={answersOf(state.values)}
      show={['treatment', 'reading', 'months', 'permissible']}
      below={<CertificateTable />}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
