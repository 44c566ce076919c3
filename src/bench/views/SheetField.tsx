import type { SheetTextKey } from '../../sheet/entries.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId } from '../keys.ts';
import { readAs } from '../read-as.ts';
import { strings } from '../strings.ts';
import { editText, type PartProps, problemAt } from './context.ts';

interface SheetFieldProps extends PartProps {
  readonly name: SheetTextKey;
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  readonly rows?: number;
  readonly note?: string | undefined;
}

/** One of the sheet's own fields, with its label, help and problem. */
export function SheetField({ name, entries, problems, send, note, ...rest }: SheetFieldProps) {
  const help: Readonly<Partial<Record<SheetTextKey, string>>> = strings.help;
  return (
    <TextField
      id={controlId(name)}
      label={strings.labels[name]}
      value={entries[name]}
      help={help[name]}
      problem={problemAt(problems, name)}
      note={note ?? readAs(name, entries[name])}
      onText={(text) => send(editText(name, text))}
      {...rest}
    />
  );
}
