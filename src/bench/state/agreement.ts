import {
  type AgreementLog,
  type LoggedChange,
  type PointEntries,
  RULE,
  type SheetEntries,
} from '../../sheet/entries.ts';
import { COLUMNS_OF } from '../../sheet/method.ts';
import { columnTexts } from '../read/column-texts.ts';
import { columnValues } from '../read/column-values.ts';
import { columnSpec } from '../read/point-spec.ts';
import { agreedRule, agreedSpecification } from './agreed-text.ts';

/** What stood on a sheet before, what stands there now, when it was changed, and whether that goes on where the last change stopped. */
interface Changed {
  readonly before: SheetEntries;
  readonly after: SheetEntries;
  readonly at: string | undefined;
  /** The same field is still being typed into. */
  readonly continued: boolean;
}

/**
 * The sheet with its log brought up to a change: the first reading that can be read locks rule and specification of its point; what
 * was agreed and is changed afterwards is logged. Without a time nothing is.
 */
export function logged(change: Changed): SheetEntries {
  const { after, at } = change;
  if (at === undefined || at === '') return after;
  const log = withReadings(withChanges(after.log, change, at), change, at);
  return log === after.log ? after : { ...after, log };
}

/** The points whose readings were just changed and can be read are agreed on from now on. */
function withReadings(log: AgreementLog, { before, after }: Changed, at: string): AgreementLog {
  const read = log.read ?? [];
  const fresh = after.points.filter((point) => {
    const old = before.points.find(({ id }) => id === point.id);
    return (
      old !== undefined && old !== point && !read.includes(point.id) && isFirstReading(old, point, after)
    );
  });
  if (fresh.length === 0) return log;
  return { ...log, lockedAt: log.lockedAt || at, read: [...read, ...fresh.map(({ id }) => id)] };
}

function isFirstReading(old: PointEntries, point: PointEntries, { method }: SheetEntries): boolean {
  if (COLUMNS_OF[method].every((column) => old[column] === point[column])) return false;
  const found = columnTexts(point, method);
  if (!found.clear) return false;
  return found.texts.some(([column, text]) => {
    const { values, problem } = columnValues(text, columnSpec(method, column));
    return problem === undefined && values.length > 0;
  });
}

function withChanges(log: AgreementLog, change: Changed, at: string): AgreementLog {
  if (log.lockedAt === '') return log;
  const { before, after, continued } = change;
  const wording: Pick<LoggedChange, 'what' | 'from' | 'to'>[] = [
    { what: RULE, from: agreedRule(before), to: agreedRule(after) },
    ...after.points.flatMap((point) => {
      const old = before.points.find(({ id }) => id === point.id);
      if (old === undefined || old === point || !(log.read ?? []).includes(point.id)) return [];
      return [{ what: point.id, from: agreedSpecification(old), to: agreedSpecification(point) }];
    }),
  ];
  const changes = wording
    .filter(({ from, to }) => from !== to)
    .reduce<readonly LoggedChange[]>(
      (all, one) => appended(all, { ...one, at, reason: '' }, continued),
      log.changes,
    );
  return changes === log.changes ? log : { ...log, changes };
}

/** What is still being typed goes on in its own entry, which goes where it comes back to what was agreed. */
function appended(
  changes: readonly LoggedChange[],
  change: LoggedChange,
  continued: boolean,
): readonly LoggedChange[] {
  const last = changes.at(-1);
  if (!continued || last?.what !== change.what || last.to !== change.from) return [...changes, change];
  const others = changes.slice(0, -1);
  return last.from === change.to ? others : [...others, { ...last, to: change.to, at: change.at }];
}
