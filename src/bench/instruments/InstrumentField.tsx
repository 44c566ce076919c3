import type { InstrumentEntries, InstrumentTextKey } from '../../instruments/instrument.ts';
import { Problem } from '../../widgets/parts/Problem.tsx';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import { LONGEST_LABEL, LONGEST_TEXT } from '../read/spec.ts';
import { problemAt } from '../views/context.ts';
import { fieldPath } from './read-instrument.ts';
import { instrumentStrings as strings } from './strings.ts';

export interface FormProps {
  readonly value: InstrumentEntries;
  readonly problems: readonly EntryProblem[];
  readonly onChange: (change: Partial<InstrumentEntries>) => void;
}

type TextProps = FormProps & {
  readonly name: InstrumentTextKey;
  readonly label?: string;
  readonly help?: string | undefined;
  readonly rows?: number;
  readonly maxLength?: number;
  readonly inputMode?: 'text' | 'decimal';
  readonly class?: string;
};

/** One text of an instrument, with its label, help and problem. */
export function InstrumentText({ value, problems, onChange, name, label, ...rest }: TextProps) {
  return (
    <TextField
      id={controlId(fieldPath(name))}
      label={label ?? strings.labels[name]}
      value={value[name]}
      maxLength={name === 'label' ? LONGEST_LABEL : LONGEST_TEXT}
      problem={problemAt(problems, fieldPath(name))}
      onText={(text) => onChange({ [name]: text })}
      {...rest}
    />
  );
}

type ChoiceKey = 'kind' | 'unit' | 'percentOf' | 'form' | 'reads' | 'source' | 'by';

/** One choice of an instrument. What is wrong with it, a unit say, stands below. */
export function InstrumentChoice<Key extends ChoiceKey>({
  value,
  problems,
  onChange,
  name,
  options,
  words,
  help,
}: FormProps & {
  readonly name: Key;
  readonly options: readonly InstrumentEntries[Key][];
  readonly words: Readonly<Record<InstrumentEntries[Key], string>>;
  readonly help?: string;
}) {
  const id = controlId(fieldPath(name));
  return (
    <div>
      <SelectField
        id={id}
        label={strings.labels[name]}
        help={help}
        about={`${id}-problem`}
        value={value[name]}
        options={options}
        words={words}
        onChoice={(chosen) => onChange({ [name]: chosen })}
      />
      <Problem id={`${id}-problem`}>{problemAt(problems, fieldPath(name))}</Problem>
    </div>
  );
}
