import { dbToAmplitudeRatio, dbToPowerRatio, gainDb } from '#compute';
import { ratioText } from '../../text/factor-text.ts';
import { amountText } from '../../text/statement-text.ts';
import { NumberField, type NumberFieldProps } from '../parts/NumberField.tsx';
import { readerOf } from '../parts/read-amount.ts';
import { Slider } from '../parts/Slider.tsx';
import { GAIN, TYPED } from './spec.ts';
import type { RatioAction, RatioState } from './state.ts';
import { strings } from './strings.ts';
import { dbWords, powerFactor, voltsFactor } from './words.ts';

const readDb = readerOf({ kind: 'gain', min: GAIN.min, max: GAIN.max, decimals: 0 });
const readPower = readerOf(TYPED.power);
const readVolts = readerOf(TYPED.volts);

/** The figure's twin as a table: the ratio in each of its forms, each to be set. */
export function RatioTable({ state, send }: { state: RatioState; send: (action: RatioAction) => void }) {
  const { gainDb: db } = state;
  const typed = (ratio: number): string => ratioText('ascii', { ratio, digits: 4 });
  const set = (value: number): void => send({ type: 'set', gainDb: value });
  return (
    <table class="rungs">
      <caption>{strings.controls}</caption>
      <thead>
        <tr>
          <th scope="col">{strings.formColumn}</th>
          <th scope="col">{strings.setColumn}</th>
          <th scope="col" class="number">
            {strings.valueColumn}
          </th>
        </tr>
      </thead>
      <tbody>
        <FormRow
          title={strings.decibels}
          value={dbWords('shown', db)}
          slider={
            <Slider
              label={strings.slider}
              {...GAIN}
              value={db}
              valueText={dbWords('spoken', db)}
              onValue={set}
            />
          }
          field={{ label: strings.fieldDb, shown: amountText(db), unit: 'dB', read: readDb, onValue: set }}
        />
        <FormRow
          title={strings.power}
          value={powerFactor('shown', db)}
          field={{
            label: strings.fieldPower,
            shown: typed(dbToPowerRatio(gainDb(db))),
            unit: 'none',
            read: readPower,
            onValue: (ratio) => send({ type: 'ratio', of: 'power', ratio }),
          }}
        />
        <FormRow
          title={strings.volts}
          value={voltsFactor('shown', db)}
          field={{
            label: strings.fieldVolts,
            shown: typed(dbToAmplitudeRatio(gainDb(db))),
            unit: 'none',
            read: readVolts,
            onValue: (ratio) => send({ type: 'ratio', of: 'volts', ratio }),
          }}
        />
      </tbody>
    </table>
  );
}

function FormRow({
  title,
  value,
  slider,
  field,
}: {
  title: string;
  value: string;
  slider?: preact.JSX.Element;
  field: NumberFieldProps;
}) {
  return (
    <tr>
      <th scope="row">{title}</th>
      <td>
        <div class="rung-control">
          {slider}
          <NumberField {...field} />
        </div>
      </td>
      <td class="number" data-label={strings.valueColumn}>
        {value}
      </td>
    </tr>
  );
}
