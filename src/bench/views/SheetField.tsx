import type { SheetTextKey } from '../../sheet/entries.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId } from '../form/keys.ts';
import { readAs } from '../form/read-as.ts';
import { SETUP_SPECS } from '../read/setup-spec.ts';
import { SHEET_SPECS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { editText, type PartProps, problemAt } from './context.ts';

interface SheetFieldProps extends PartProps {
  readonly name: SheetTextKey;
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  readonly rows?: number;
}

const SPECS: Readonly<Partial<Record<SheetTextKey, ReadSpec>>> = { ...SHEET_SPECS, ...SETUP_SPECS };

/** One of the sheet's own fields, with its label, help and problem. */
export function SheetField({ name, entries, problems, send, ...rest }: SheetFieldProps) {
  const help: Readonly<Partial<Record<SheetTextKey, string>>> = strings.help;
  const spec = SPECS[name];
  return (
    <TextField
      id={controlId(name)}
      label={strings.labels[name]}
      value={entries[name]}
      help={help[name]}
      problem={problemAt(problems, name)}
      note={spec && readAs(entries[name], spec)}
      onText={(text) => send(editText(name, text))}
      {...rest}
    />
  );
}
