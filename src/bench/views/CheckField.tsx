import type { CheckKey } from '../../sheet/check-keys.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { checkPath, controlId } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { BenchAction } from '../state/actions.ts';
import { checkStrings as strings } from '../validity/check-strings.ts';
import { problemAt } from './context.ts';

interface CheckFieldProps {
  readonly name: CheckKey;
  readonly method: MethodKind;
  readonly text: string;
  readonly problems: readonly EntryProblem[];
  /** What an empty allowance stands for. */
  readonly note: string;
  readonly send: (action: BenchAction) => void;
}

/** Fields for several readings, one a line. */
const COLUMNS: readonly CheckKey[] = ['reconnections', 'warmUpMinutes', 'warmUpLevels'];
/** Allowances that have a usual value; a pad's own tolerance has none. */
const USUAL: readonly CheckKey[] = [
  'offAllowed',
  'reconnectionsAllowed',
  'warmUpAllowed',
  'harmonicsAllowed',
];
/** Readings of the method's main column. */
const READINGS: readonly CheckKey[] = ['stepWithout', 'stepWith', 'off', 'reconnections', 'warmUpLevels'];

/** One text of a validity check, with its label, unit, help and problem. */
export function CheckField({ name, method, text, problems, note, send }: CheckFieldProps) {
  const path = checkPath(name);
  const helps: Readonly<Partial<Record<CheckKey, string>>> = strings.help;
  const help = [
    helps[name],
    READINGS.includes(name) ? strings.units[method] : undefined,
    USUAL.includes(name) ? note : undefined,
  ].filter((part) => part !== undefined);
  return (
    <TextField
      id={controlId(path)}
      label={strings.labels[name]}
      value={text}
      help={help.length === 0 ? undefined : help.join(' ')}
      problem={problemAt(problems, path)}
      {...(COLUMNS.includes(name) && { rows: 3 })}
      onText={(typed) => send({ type: 'editCheck', key: name, text: typed })}
    />
  );
}
