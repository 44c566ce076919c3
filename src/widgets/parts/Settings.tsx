import type { StateOf } from '../../address/field-spec.ts';
import type { PlainFields } from './fields.ts';
import { ChoiceRow, NumberRow, type SettingsWords } from './SettingRow.tsx';

export type { SettingsWords } from './SettingRow.tsx';

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
