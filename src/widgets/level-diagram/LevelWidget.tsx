import { defaultState } from '../../address/field-spec.ts';
import { ABOVE_NOMINAL_DB } from '../../sheet/line-cautions.ts';
import { dbText } from '../../text/quantity-text.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { LevelFigure } from './LevelFigure.tsx';
import { LeftOutTable, PartsTable } from './LineTables.tsx';
import { fieldsFor, stairsSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, ratedText, summarise } from './words.ts';

export interface LevelWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Levels down a line. After using it a reader can say what level stands behind each part, which part gets hot, whether the input
 * survives and would survive without one of the pads, and what an antenna makes of the rest as EIRP and as ERP.
 */
export default function LevelWidget({ instance }: LevelWidgetProps) {
  const { state, send, problems } = useFields(stairsSpec, instance);
  const { values } = state;
  const { fields } = stairsSpec;
  const instrument = values.end === 'instrument';
  const note = strings.note({
    above: dbText('shown', { db: ABOVE_NOMINAL_DB, decimals: 1 }),
    first: ratedText('first'),
    second: ratedText('second'),
  });
  return (
    <figure class="plain-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <LevelFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(values)} />
      <Settings
        fields={fields}
        show={fieldsFor(values.end)}
        values={values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      <PartsTable state={values} />
      {instrument && <LeftOutTable state={values} />}
      <p class="small muted">{note}</p>
      <p class="no-script-only">{strings.noScript}</p>
      <p class="needs-script">
        <button type="button" onClick={() => send({ type: 'reset', values: defaultState(fields) })}>
          {strings.reset}
        </button>
      </p>
      <Announcer summary={summarise(values)} />
    </figure>
  );
}
