import type { SheetEntries } from '../../sheet/entries.ts';
import {
  type Kept,
  type KeptHead,
  type KeptRecord,
  type KeptStore,
  newId,
  type Outcome,
} from '../../store/kept.ts';
import { cleanText } from '../../text/clean.ts';
import { LONGEST_TEXT } from '../read/spec.ts';
import { sheetStrings as strings } from './strings.ts';

type Store = KeptStore<SheetEntries>;

/** Keeps the same sheet once more, under a name that says so. */
function duplicate(
  store: Pick<Store, 'put'>,
  { name, value }: Kept<SheetEntries>,
): Promise<Outcome<KeptHead>> {
  const title = cleanText(strings.duplicateOf(name).slice(0, LONGEST_TEXT)); // no half of a pair stays
  return store.put({ id: newId(), name: title, value: { ...value, title }, revision: undefined });
}

/** The list as the reader has it. */
export interface Shelf {
  /** What was deleted on this page, the latest last. */
  readonly removed: readonly KeptRecord[];
  /** What came of the last thing that was done. */
  readonly note: string;
}

/** Deletes a sheet, and keeps what brings it back. */
export async function withRemoved(
  store: Pick<Store, 'remove'>,
  shelf: Shelf,
  { id, name }: KeptHead,
): Promise<Shelf> {
  const outcome = await store.remove(id);
  if (!outcome.ok) return { ...shelf, note: strings.problems[outcome.problem] };
  return { removed: [...shelf.removed, outcome.value], note: strings.removed(name) };
}

/** Brings back what was deleted last. */
export async function withRestored(store: Pick<Store, 'restore'>, shelf: Shelf): Promise<Shelf> {
  const record = shelf.removed.at(-1);
  if (record === undefined) return shelf;
  const outcome = await store.restore(record);
  if (!outcome.ok) return { ...shelf, note: strings.problems[outcome.problem] };
  return { removed: shelf.removed.slice(0, -1), note: strings.restored(record.name) };
}

/** Duplicates a sheet, and says so. */
export async function withDuplicate(
  store: Pick<Store, 'put'>,
  shelf: Shelf,
  sheet: Kept<SheetEntries>,
): Promise<Shelf> {
  const outcome = await duplicate(store, sheet);
  const note = outcome.ok ? strings.duplicated(outcome.value.name) : strings.problems[outcome.problem];
  return { ...shelf, note };
}
