import type { EntryProblem } from '../../bench/read/collector.ts';
import type { BorrowEntries } from '../entries.ts';
import type { BorrowAction } from '../state.ts';

/** What each part of the form gets. */
export interface PartProps {
  readonly entries: BorrowEntries;
  readonly problems: readonly EntryProblem[];
  readonly send: (action: BorrowAction) => void;
}
