import { timeText } from '../../text/time-text.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId } from '../keys.ts';
import { LONGEST_TEXT } from '../spec.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

const words = strings.point.lock;

/** Since when specification and rule are locked. */
export function LockNote({ entries }: Pick<PartProps, 'entries'>) {
  const { lockedAt } = entries.log;
  return <p class="lock">{lockedAt === '' ? words.open : words.since(timeText(lockedAt))}</p>;
}

/** What was changed of one thing after the first reading, each with a field for the reason. */
export function LoggedChanges({
  entries,
  send,
  what,
}: Pick<PartProps, 'entries' | 'send'> & { what: string }) {
  const changes = entries.log.changes
    .map((change, index) => ({ ...change, index }))
    .filter((change) => change.what === what);
  if (changes.length === 0) return null;
  return (
    <ul class="logged">
      {changes.map(({ at, from, to, reason, index }) => (
        <li key={index}>
          <p>{words.change({ time: timeText(at), from, to })}</p>
          <TextField
            id={controlId(`reason-${index}`)}
            label={words.reason}
            help={words.reasonHelp}
            value={reason}
            maxLength={LONGEST_TEXT}
            onText={(text) => send({ type: 'giveReason', index, reason: text })}
          />
        </li>
      ))}
    </ul>
  );
}
