import type { LinkEntries, LinkTextKey } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId, linkPath } from '../form/keys.ts';
import { gainAs } from '../form/read-as.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { BenchAction } from '../state/actions.ts';
import { strings } from '../strings.ts';
import { problemAt } from './context.ts';

export interface LinkProps {
  readonly link: LinkEntries;
  readonly method: MethodKind;
  readonly problems: readonly EntryProblem[];
  readonly send: (action: BenchAction) => void;
}

interface LinkFieldProps extends LinkProps {
  readonly name: LinkTextKey;
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  readonly rows?: number;
  readonly list?: string;
  readonly class?: string;
}

/** One text of a link, with its label, help and problem. */
export function LinkField({ link, method, problems, send, name, ...rest }: LinkFieldProps) {
  const path = linkPath(link.id, name);
  return (
    <TextField
      id={controlId(path)}
      label={name === 'amount' ? strings.link.amounts[link.form] : strings.link.labels[name]}
      value={link[name]}
      help={helpOf({ name, kind: link.kind, method })}
      note={name === 'loss' ? gainAs(link) : undefined}
      problem={problemAt(problems, path)}
      onText={(text) => send(editLink(link.id, name, { [name]: text }))}
      {...rest}
    />
  );
}

const HELP: Readonly<Partial<Record<LinkTextKey, string>>> = strings.link.help;

/** The sentence on what belongs into a field; of a limit's terms the unit hangs on the method. */
function helpOf({
  name,
  kind,
  method,
}: Pick<LinkEntries, 'kind'> & { name: LinkTextKey; method: MethodKind }): string | undefined {
  if (name === 'loss') return kind === 'amplifier' ? strings.link.gainHelp : undefined;
  if (name === 'fullScale' || name === 'step' || name === 'floor') return strings.link.termUnits[method];
  return HELP[name];
}

/** The action that changes something of a link. */
export const editLink = (
  id: string,
  key: keyof LinkEntries,
  change: Partial<Omit<LinkEntries, 'id' | 'assumed'>>,
): BenchAction => ({ type: 'editLink', id, path: linkPath(id, key), change });
