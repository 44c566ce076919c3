import { defaultState } from '../../address/field-spec.ts';
import { PowerShares } from '../../figures/PowerShares.tsx';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
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
export default function EnvelopeWidget({ instance }: EnvelopeWidgetProps) {
  const { state, send, problems } = useFields(keyedSpec, instance);
  const { values } = state;
  const { fields } = keyedSpec;
  const summary = summarise(values);
  return (
    <figure class="plain-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <EnvelopeFigure state={state} send={send} />
      <PlainAnswers answers={answersOf(values)} />
      <PowerShares rows={shareRows(values)} name={strings.shares.name} description={summary} />
      <Settings
        fields={fields}
        show={SHOWN}
        values={values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      <PowersTable state={values} />
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
