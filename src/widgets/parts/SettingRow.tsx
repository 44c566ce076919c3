import { useId } from 'preact/hooks';
import type { ChoiceSpec, NumberSpec } from '../../address/field-spec.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import type { UnitName } from '../../text/units.ts';
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

interface RowProps<Field, Value> {
  readonly name: string;
  readonly field: Field;
  readonly value: Value;
  readonly words: SettingsWords;
  readonly onValue: (name: string, value: number | string) => void;
}

/** A number with its slider and its field. */
export function NumberRow({ name, field, value, words, onValue }: RowProps<NumberSpec, number>) {
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
            {...{ min, max, step, value }}
            valueText={quantityText('spoken', { value, decimals, unit })}
            onValue={set}
          />
          <NumberField
            label={label}
            shown={numberText('ascii', { value, decimals })}
            unit={unit}
            read={readerOf(field)}
            onValue={set}
          />
        </div>
      </td>
    </tr>
  );
}

/** A choice of one of several. */
export function ChoiceRow({ name, field, value, words, onValue }: RowProps<ChoiceSpec, string>) {
  const of = words.choices[name] ?? {};
  const id = useId();
  return (
    <tr>
      <th scope="row">{field.label}</th>
      <td>
        <span class="print-only">{of[value]}</span>
        <label for={id} class="visually-hidden needs-script">
          {field.label}
        </label>
        <select
          id={id}
          class="needs-script"
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
