import { useMemo } from 'preact/hooks';
import type { FoundMean } from '../../sheet/evaluated-readings.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { ReadingsFigure } from './ReadingsFigure.tsx';
import { readingsSpec, repeatedOf } from './spec.ts';
import { strings } from './strings.ts';
import { useFoundMean } from './use-found.ts';
import { answersOf, readingsText, summarise } from './words.ts';

export interface FewReadingsProps {
  /** All that is known of what is prepared, so that nothing need be fetched to show it. */
  readonly prepared: FoundMean;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Readings taken again and again. After using it a reader can say what few readings are worth, what experience adds to them, and what no
 * repeating cures.
 */
export default function FewReadings({ prepared, instance }: FewReadingsProps) {
  const use = useFields(readingsSpec, instance);
  const { values } = use.state;
  const found = useFoundMean(
    useMemo(() => repeatedOf(values), [values]),
    prepared,
  );
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={readingsSpec}
      instance={instance}
      figure={<ReadingsFigure found={found} />}
      answers={answersOf(found)}
      between={<p>{readingsText(found)}</p>}
      show={['count', 'known', 'limits']}
      words={strings}
      note={strings.note}
      summary={summarise(found)}
    />
  );
}
