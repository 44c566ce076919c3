import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
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
  const { state, send, problems } = useFields(meterSpec, instance);
  const { fields } = meterSpec;
  const summary = summarise(state.values);
  return (
    <figure class="plain-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <LineBandFigure
        figure={figureOf(state)}
        words={strings.axes}
        name={strings.name}
        description={strings.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(value) => send({ type: 'set', name: 'reading', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['treatment', 'reading', 'months', 'permissible']}
        values={state.values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      <CertificateTable />
      <p class="small muted">{strings.note}</p>
      <p class="no-script-only">{strings.noScript}</p>
      <p class="needs-script">
        <button type="button" onClick={() => send({ type: 'reset', values: defaultState(fields) })}>
          {strings.reset}
        </button>
      </p>
      <Announcer summary={summary} />
    </figure>
  );
}
