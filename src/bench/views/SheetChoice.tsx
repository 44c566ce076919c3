import type { SheetEntries } from '../../sheet/entries.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId } from '../form/keys.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

/** Fields of a sheet that are chosen from a few. */
type ChoiceKey = 'power' | 'delivery' | 'keying' | 'shows' | 'terminated' | 'curve' | 'rule';

interface SheetChoiceProps<Key extends ChoiceKey> extends PartProps {
  readonly name: Key;
  readonly options: readonly SheetEntries[Key][];
  readonly words: Readonly<Record<SheetEntries[Key], string>>;
  readonly help?: string;
  readonly class?: string;
}

/** One of the sheet's own choices, with its label and help. */
export function SheetChoice<Key extends ChoiceKey>(props: SheetChoiceProps<Key>) {
  const { name, entries, options, words, send } = props;
  const help: Readonly<Partial<Record<ChoiceKey, string>>> = strings.help;
  return (
    <SelectField
      id={controlId(name)}
      label={strings.labels[name]}
      help={props.help ?? help[name]}
      value={entries[name]}
      options={options}
      words={words}
      onChoice={(choice) => send({ type: 'edit', path: name, change: { [name]: choice } })}
      {...(props.class !== undefined && { class: props.class })}
    />
  );
}
