import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import type { FieldPath } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { Grip } from './pull.ts';

/** A sheet of the history, and which of the sheets it is that were opened one after the other. */
export interface Step {
  readonly entries: SheetEntries;
  readonly sheet: number;
}

/** The last pull of a held handle, and the entries that it led to. */
interface Pulled {
  readonly id: string;
  readonly point: string;
  readonly grip: Grip;
  readonly entries: SheetEntries;
}

/** What is to come back when a held handle is given up, and what the next pull goes on from. */
interface Held {
  readonly entries: SheetEntries;
  readonly measurement: Measurement;
  readonly last?: Pulled;
}

/** Everything that the bench knows; results are computed from `measurement`, never kept here. */
export interface BenchState {
  /** Everything as typed. */
  readonly entries: SheetEntries;
  /** Which of the sheets opened so far this is, 0 for the first: undo may bring back an earlier one, which is kept for itself. */
  readonly sheet: number;
  /** How many were opened after the first. */
  readonly sheets: number;
  readonly problems: readonly EntryProblem[];
  /** Measurement of the last entries that were all usable: what figure and result show. */
  readonly measurement: Measurement;
  /** Which of the sheets that measurement is of: another one as long as the sheet that stands there was never usable. */
  readonly measured: number;
  /** Id of the point that is shown and edited; always one of `entries.points`. */
  readonly point: string;
  /** Measurement before the last change: what the ghost shows. */
  readonly before: Measurement | undefined;
  /** Field of the last change: what is typed letter by letter is one change, and one step of undo. */
  readonly lastPath: FieldPath | undefined;
  /** While a handle is held: the state to return to on cancel. */
  readonly held: Held | undefined;
  /** Entries to go back to, the latest last, and those to go forward to, the next last. */
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** What could not be read of the address that was opened. */
  readonly addressProblems: readonly string[];
  readonly showLimits: boolean;
  readonly showCurve: boolean;
}
