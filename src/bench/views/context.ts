import type { PointEntries, PointTextKey, SheetEntries, SheetTextKey } from '../../sheet/entries.ts';
import { type FieldPath, pointPath } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { BenchAction } from '../state/actions.ts';

/** What each part of the form gets. */
export interface PartProps {
  readonly entries: SheetEntries;
  readonly problems: readonly EntryProblem[];
  readonly send: (action: BenchAction) => void;
}

/** What a part of the form gets that shows one point. */
export interface PointProps extends PartProps {
  readonly point: PointEntries;
}

/** The sentence on what is wrong with a field, if anything is. */
export const problemAt = (problems: readonly EntryProblem[], path: FieldPath): string | undefined =>
  problems.find((problem) => problem.path === path)?.problem;

/** Whether something is wrong with one of these fields. */
export const faultyAt = (problems: readonly EntryProblem[], paths: readonly FieldPath[]): boolean =>
  problems.some(({ path }) => paths.includes(path));

/** The action that puts a text into one of the sheet's own fields. */
export const editText = (key: SheetTextKey, text: string): BenchAction => ({
  type: 'edit',
  path: key,
  change: { [key]: text },
});

/** The action that puts a text into a field of a point. */
export const editPointText = (id: string, key: PointTextKey, text: string): BenchAction => ({
  type: 'editPoint',
  id,
  path: pointPath(id, key),
  change: { [key]: text },
});
