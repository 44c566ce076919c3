import { controlId } from '../../bench/form/keys.ts';
import { problemAt } from '../../bench/views/context.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import type { BorrowTextKey } from '../entries.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

interface EntryFieldProps extends PartProps {
  readonly name: BorrowTextKey;
  readonly rows?: number;
  readonly class?: string;
}

const HELP: Readonly<Partial<Record<string, string>>> = strings.help;
/** Longest text that a field takes; a column of readings takes what its address bears. */
const LONGEST = 400;

/** One text of the form, with its label, help and what is wrong with it. */
export function EntryField({ name, entries, problems, send, rows, ...rest }: EntryFieldProps) {
  return (
    <TextField
      id={controlId(name)}
      label={strings.labels[name]}
      value={entries[name]}
      help={HELP[name]}
      problem={problemAt(problems, name)}
      onText={(text) => send({ type: 'edit', path: name, change: { [name]: text } })}
      {...(rows === undefined ? { maxLength: LONGEST } : { rows })}
      {...rest}
    />
  );
}

/** Several of them in a row. */
export function EntryFields({ names, ...props }: PartProps & { readonly names: readonly BorrowTextKey[] }) {
  return (
    <div class="fields">
      {names.map((name) => (
        <EntryField key={name} {...props} name={name} />
      ))}
    </div>
  );
}
