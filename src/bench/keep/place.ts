import type { SheetEntries } from '../../sheet/entries.ts';
import type { Kept, KeptHead, Outcome, StoreProblem } from '../../store/kept.ts';
import { cleanText } from '../../text/clean.ts';
import { strings } from '../strings.ts';

/** What the reader is told of the sheet on the page. */
export type KeepingState =
  /** Nothing to keep: as it was opened, and not kept. */
  | { readonly kind: 'unchanged' }
  /** Changed, and about to be kept. */
  | { readonly kind: 'waiting' }
  | { readonly kind: 'kept'; readonly head: KeptHead }
  /** The browser does not keep it. */
  | { readonly kind: 'failed'; readonly problem: 'refused' | 'full' }
  /** What is kept of it is no longer what was opened here; `mine` where something was changed here as well. */
  | { readonly kind: 'elsewhere'; readonly problem: 'changed' | 'missing' | 'newer'; readonly mine: boolean };

/** One sheet that was opened on this page, and where it is kept. */
export interface Place {
  readonly id: string;
  /** As it was opened: until it differs from this, nothing is kept. */
  readonly begun: SheetEntries;
  readonly latest: SheetEntries;
  /** What is kept under `head`, as it stood here; undefined where it is not kept, or not by this page. */
  readonly saved: SheetEntries | undefined;
  readonly head: KeptHead | undefined;
  /** The reader wants it kept also without a change. */
  readonly wanted: boolean;
  readonly problem: StoreProblem | undefined;
}

/** A sheet of that id that has just been opened and is not kept. */
export const placeOf = (id: string, entries: SheetEntries): Place => ({
  id,
  begun: entries,
  latest: entries,
  saved: undefined,
  head: undefined,
  wanted: false,
  problem: undefined,
});

/** A sheet that was opened from what is kept. */
export const placeKept = ({ value, ...head }: Kept<SheetEntries>): Place => ({
  ...placeOf(head.id, value),
  saved: value,
  head,
});

/** Whether something stands here that should be kept and is not. */
export const isDirty = ({ saved, latest, begun, wanted }: Place): boolean =>
  saved === undefined ? wanted || latest !== begun : latest !== saved;

/** Whether keeping would overwrite what somebody else made of it: the reader chooses first. */
export const isBlocked = ({ problem }: Place): boolean =>
  problem === 'changed' || problem === 'missing' || problem === 'newer';

/** The name under which a sheet is kept. */
export const nameOf = ({ title }: SheetEntries): string => cleanText(title).trim() || strings.untitled;

/** The place after an attempt to keep these entries. */
export function afterKeeping(place: Place, value: SheetEntries, outcome: Outcome<KeptHead>): Place {
  if (!outcome.ok) return { ...place, problem: outcome.problem };
  const { id, name, created, changed, revision } = outcome.value;
  return { ...place, saved: value, head: { id, name, created, changed, revision }, problem: undefined };
}

/** The place after somebody else kept it at that revision, or removed it. */
export function afterChange(place: Place, revision: number | undefined): Place {
  if (place.head === undefined) return place;
  if (revision === undefined) return { ...place, problem: 'missing' };
  if (revision > place.head.revision) return { ...place, problem: 'changed' };
  const restored = revision === place.head.revision && place.problem === 'missing';
  return restored ? { ...place, problem: undefined } : place;
}

const WAITING: KeepingState = { kind: 'waiting' };
export const UNCHANGED: KeepingState = { kind: 'unchanged' };

/** What the reader is told of it. */
export function stateOf(place: Place): KeepingState {
  const { problem, head } = place;
  switch (problem) {
    case 'changed':
    case 'missing':
    case 'newer':
      return { kind: 'elsewhere', problem, mine: isDirty(place) };
    case 'refused':
    case 'full':
      return { kind: 'failed', problem };
    default:
      if (isDirty(place)) return WAITING;
      return head === undefined ? UNCHANGED : { kind: 'kept', head };
  }
}
