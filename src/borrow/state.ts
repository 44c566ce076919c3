import type { EntryProblem } from '../bench/read/collector.ts';
import { freeId } from '../bench/state/changed.ts';
import type { Checked } from './checked.ts';
import { type Demonstration, demonstrationEntries } from './demonstration.ts';
import {
  type BorrowEntries,
  type BorrowKind,
  blankEntries,
  MOST_PLACES,
  type PlaceEntries,
} from './entries.ts';
import { readEntries } from './read-entries.ts';
import { readTable } from './read-table.ts';
import { type Stepped, stepBack, stepOn, stepsAfter } from './steps.ts';

/** Everything that the page knows; results are computed from `checked`. */
export interface BorrowState extends Stepped<BorrowEntries> {
  readonly problems: readonly EntryProblem[];
  /** Of the last entries that were all usable: older than `entries` as long as there are problems. */
  readonly checked: Checked;
  readonly addressProblems: readonly string[];
}

export type BorrowAction =
  | { readonly type: 'edit'; readonly path: string; readonly change: Partial<BorrowEntries> }
  | {
      readonly type: 'editPlace';
      readonly id: string;
      readonly path: string;
      readonly change: Partial<Omit<PlaceEntries, 'id'>>;
    }
  | { readonly type: 'addPlace' }
  | { readonly type: 'removePlace'; readonly id: string }
  /** Puts a whole table that was pasted into one place's readings into places of its own. */
  | { readonly type: 'spread'; readonly id: string }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }
  | { readonly type: 'demonstration'; readonly name: Demonstration }
  | { readonly type: 'fresh'; readonly kind: BorrowKind }
  | { readonly type: 'open'; readonly entries: BorrowEntries; readonly problems: readonly string[] }
  | { readonly type: 'refuse'; readonly problems: readonly string[] };

/** What the page opens with. */
export function preparedBorrow(): BorrowState {
  const entries = demonstrationEntries('oneLevel');
  const { checked } = readEntries(entries);
  if (checked === undefined)
    throw new RangeError('preparedBorrow: every entry must be usable, got one that is not');
  return {
    entries,
    problems: [],
    checked,
    past: [],
    future: [],
    lastPath: undefined,
    addressProblems: [],
  };
}

/** Total and pure: what names nothing that is there changes nothing. */
export function reduceBorrow(state: BorrowState, action: BorrowAction): BorrowState {
  const { entries } = state;
  switch (action.type) {
    case 'edit':
      return stepped(state, { ...entries, ...action.change }, action.path);
    case 'editPlace':
      return withPlaces(
        state,
        entries.places.map((place) => (place.id === action.id ? { ...place, ...action.change } : place)),
        action.path,
      );
    case 'addPlace':
      return withPlaces(state, [
        ...entries.places,
        { id: freeId('place', entries.places), at: '', readings: '' },
      ]);
    case 'removePlace':
      return withPlaces(
        state,
        entries.places.filter(({ id }) => id !== action.id),
      );
    case 'spread':
      return spread(state, action.id);
    case 'undo':
      return moved(state, stepBack(state));
    case 'redo':
      return moved(state, stepOn(state));
    case 'demonstration':
      return stepped({ ...state, addressProblems: [] }, demonstrationEntries(action.name));
    case 'fresh':
      return stepped({ ...state, addressProblems: [] }, blankEntries(action.kind));
    case 'open':
      return { ...stepped(state, action.entries), addressProblems: action.problems };
    case 'refuse':
      return { ...state, addressProblems: action.problems };
  }
}

/** The state with these entries read; the last usable ones stay in sight while others are not. */
function withEntries(state: BorrowState, entries: BorrowEntries): BorrowState {
  const { checked = state.checked, problems } = readEntries(entries);
  return { ...state, entries, problems, checked };
}

function stepped(state: BorrowState, entries: BorrowEntries, path?: string): BorrowState {
  return { ...withEntries(state, entries), ...stepsAfter(state, path) };
}

function withPlaces(state: BorrowState, places: readonly PlaceEntries[], path?: string): BorrowState {
  const before = state.entries.places;
  const same = places.length === before.length && places.every((place, index) => place === before[index]);
  if (same || places.length === 0 || places.length > MOST_PLACES) return state;
  return stepped(state, { ...state.entries, places }, path);
}

function spread(state: BorrowState, id: string): BorrowState {
  const { places } = state.entries;
  const index = places.findIndex((place) => place.id === id);
  const table = readTable(places[index]?.readings ?? '');
  if (table === undefined) return state;
  const others = places.filter((place) => place.id !== id);
  const made: PlaceEntries[] = [];
  for (const place of table) made.push({ ...place, id: freeId('place', [...others, ...made]) });
  return withPlaces(state, [...places.slice(0, index), ...made, ...places.slice(index + 1)]);
}

/** The state at another step; the same where there is none. */
const moved = (state: BorrowState, to: Stepped<BorrowEntries> | undefined): BorrowState =>
  to === undefined ? state : { ...withEntries(state, to.entries), ...to };
