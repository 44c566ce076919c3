import { timeText } from '../../text/time-text.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId, reasonPath } from '../form/keys.ts';
import { LONGEST_TEXT } from '../read/spec.ts';
import { strings } from '../strings.ts';
import type { PartProps, PointProps } from './context.ts';

const { lock } = strings.point;

/** Since when specification and rule are locked: the rule by the first reading of all, what is demanded at a point by its own. */
export function LockNote({ entries, point }: Pick<PointProps, 'entries' | 'point'>) {
  const { lockedAt, read = [] } = entries.log;
  const since = timeText(lockedAt);
  const words = read.includes(point.id) ? lock.since(since) : lockedAt === '' ? lock.open : lock.rule(since);
  return <p class="lock">{words}</p>;
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
          <p>{lock.change({ time: timeText(at), from, to })}</p>
          <TextField
            id={controlId(reasonPath(index))}
            label={lock.reason}
            help={lock.reasonHelp}
            value={reason}
            maxLength={LONGEST_TEXT}
            onText={(text) => send({ type: 'giveReason', index, reason: text })}
          />
        </li>
      ))}
    </ul>
  );
}
