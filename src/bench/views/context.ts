import type { SheetEntries, SheetTextKey } from '../../sheet/entries.ts';
import type { EntryProblem } from '../collector.ts';
import type { FieldPath } from '../keys.ts';
import type { BenchAction } from '../state.ts';

/** What each part of the form gets. */
export interface PartProps {
  readonly entries: SheetEntries;
  readonly problems: readonly EntryProblem[];
  readonly send: (action: BenchAction) => void;
}

/** The sentence on what is wrong with a field, if anything is. */
export const problemAt = (problems: readonly EntryProblem[], path: FieldPath): string | undefined =>
  problems.find((problem) => problem.path === path)?.problem;

/** The action that puts a text into one of the sheet's own fields. */
export const editText = (key: SheetTextKey, text: string): BenchAction => ({
  type: 'edit',
  path: key,
  change: { [key]: text },
});
