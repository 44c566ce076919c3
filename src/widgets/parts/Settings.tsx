import type { ChoiceSpec, NumberSpec, StateOf } from '../../address/field-spec.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import { type UnitName, unitText } from '../../text/units.ts';
import type { PlainFields } from './fields.ts';
import { NumberField } from './NumberField.tsx';
import { readerOf } from './read-amount.ts';
import { Slider } from './Slider.tsx';

/** Words of a table of settings. */
export interface SettingsWords {
  readonly caption: string;
  /** Heads of the two columns: what is set, and to what. */
  readonly columns: readonly [string, string];
  /** Name of a number's slider, made of its label. */
  readonly slide: (label: string) => string;
  /** Words of each code, by the name of the choice. */
  readonly choices: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Unit of each number, by its name. */
  readonly units: Readonly<Record<string, UnitName>>;
}

export interface SettingsProps<Of extends PlainFields> {
  readonly fields: Of;
  /** Names of the fields to show, in order. */
  readonly show: readonly (keyof Of & string)[];
  readonly values: StateOf<Of>;
  readonly words: SettingsWords;
  readonly onValue: (name: string, value: number | string) => void;
}

/** What can be set, as a table: on the screen each row has its controls, on paper and without script its value in words. */
export function Settings<Of extends PlainFields>({
  fields,
  show,
  values,
  words,
  onValue,
}: SettingsProps<Of>) {
  const row = (name: keyof Of & string) => {
    const field = fields[name];
    const value = values[name];
    if (field?.type === 'number' && typeof value === 'number')
      return <NumberRow key={name} {...{ name, field, value, words, onValue }} />;
    if (field?.type === 'choice' && typeof value === 'string')
      return <ChoiceRow key={name} {...{ name, field, value, words, onValue }} />;
    return null;
  };
  return (
    <table class="rungs settings">
      <caption>{words.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.columns[0]}</th>
          <th scope="col">{words.columns[1]}</th>
        </tr>
      </thead>
      <tbody>{show.map(row)}</tbody>
    </table>
  );
}

interface RowProps<Field, Value> {
  readonly name: string;
  readonly field: Field;
  readonly value: Value;
  readonly words: SettingsWords;
  readonly onValue: (name: string, value: number | string) => void;
}

function NumberRow({ name, field, value, words, onValue }: RowProps<NumberSpec, number>) {
  const unit = words.units[name] ?? 'none';
  const { label, min, max, step, decimals } = field;
  const set = (next: number): void => onValue(name, next);
  return (
    <tr>
      <th scope="row">{label}</th>
      <td>
        <span class="print-only">{quantityText('shown', { value, decimals, unit })}</span>
        <div class="rung-control">
          <Slider
            label={words.slide(label)}
            labelHidden
            {...{ min, max, step, value }}
            valueText={quantityText('spoken', { value, decimals, unit })}
            onValue={set}
          />
          <NumberField
            label={label}
            labelHidden
            shown={numberText('ascii', { value, decimals })}
            unit={unitText('shown', unit, '2')}
            read={readerOf(field)}
            onValue={set}
          />
        </div>
      </td>
    </tr>
  );
}

function ChoiceRow({ name, field, value, words, onValue }: RowProps<ChoiceSpec, string>) {
  const of = words.choices[name] ?? {};
  return (
    <tr>
      <th scope="row">{field.label}</th>
      <td>
        <span class="print-only">{of[value]}</span>
        <select
          class="needs-script"
          aria-label={field.label}
          value={value}
          onChange={(event) => onValue(name, event.currentTarget.value)}
        >
          {Object.keys(field.choices).map((code) => (
            <option key={code} value={code} selected={code === value}>
              {of[code]}
            </option>
          ))}
        </select>
      </td>
    </tr>
  );
}
