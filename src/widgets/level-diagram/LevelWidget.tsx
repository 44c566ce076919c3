import { useMemo } from 'preact/hooks';
import { ABOVE_NOMINAL_DB } from '../../sheet/line-cautions.ts';
import { dbText } from '../../text/quantity-text.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { LevelFigure } from './LevelFigure.tsx';
import { AlongTable, LeftOutTable } from './LineTables.tsx';
import { fieldsFor, stairsSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, ratedText, summarise } from './words.ts';

export interface LevelWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
  /** What it begins with where a page has numbers of its own. */
  readonly start?: Start;
}

/**
 * Levels down a line. After using it a reader can say what level stands behind each part, which part gets hot, whether the input
 * survives and would survive without one of the pads, and what an antenna makes of the rest as EIRP and as ERP.
 */
export default function LevelWidget({ instance, start }: LevelWidgetProps) {
  const spec = useMemo(() => startingAt(stairsSpec, start), [start]);
  const use = useFields(spec, instance);
  const { state, send } = use;
  const { values } = state;
  const instrument = values.end === 'instrument';
  const note = strings.note({
    above: dbText('shown', { db: ABOVE_NOMINAL_DB, decimals: 1 }),
    first: ratedText('first'),
    second: ratedText('second'),
  });
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={spec}
      instance={instance}
      figure={<LevelFigure state={state} send={send} />}
      answers={answersOf(values)}
      show={fieldsFor(values.end)}
      below={
        <>
          <AlongTable state={values} />
          {instrument && <LeftOutTable state={values} />}
        </>
      }
      words={strings}
      note={note}
      summary={summarise(values)}
    />
  );
}
