import type { LinkEntries, LinkTextKey } from '../../sheet/entries.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import type { EntryProblem } from '../collector.ts';
import { controlId, linkPath } from '../keys.ts';
import type { BenchAction } from '../state.ts';
import { strings } from '../strings.ts';
import { problemAt } from './context.ts';

export interface LinkProps {
  readonly link: LinkEntries;
  readonly problems: readonly EntryProblem[];
  readonly send: (action: BenchAction) => void;
}

interface LinkFieldProps extends LinkProps {
  readonly name: LinkTextKey;
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  readonly class?: string;
}

/** One text of a link, with its label, help and problem. */
export function LinkField({ link, problems, send, name, ...rest }: LinkFieldProps) {
  const path = linkPath(link.id, name);
  const help: Readonly<Partial<Record<LinkTextKey, string>>> = strings.link.help;
  return (
    <TextField
      id={controlId(path)}
      label={name === 'amount' ? strings.link.amounts[link.form] : strings.link.labels[name]}
      value={link[name]}
      help={help[name]}
      problem={problemAt(problems, path)}
      onText={(text) => send(editLink(link.id, name, { [name]: text }))}
      {...rest}
    />
  );
}

/** The action that changes something of a link. */
export const editLink = (
  id: string,
  key: keyof LinkEntries,
  change: Partial<Omit<LinkEntries, 'id'>>,
): BenchAction => ({ type: 'editLink', id, path: linkPath(id, key), change });
