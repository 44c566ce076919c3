import type { SheetEntries } from '../../sheet/entries.ts';
import { type Kept, type KeptHead, newId } from '../../store/kept.ts';
import { isDirty, type KeepingState, type Place, placeKept, placeOf, stateOf } from './place.ts';
import type { Standing } from './set-mark.ts';

/** Who is told of the sheet that stands on the page, and of what is kept of it. */
export interface Listeners {
  readonly onState: (state: KeepingState) => void;
  readonly onStanding: (standing: Standing) => void;
}

/** The sheets that were opened on a page, by the number that the bench gives each, and which of them stands there. */
export interface Places {
  /** Says that these very entries, once they are shown, are a sheet that is kept. */
  expect(kept: Kept<SheetEntries>): void;
  /** Says that these very entries, once shown, are what a kept sheet has become since: they are to be kept as well. */
  expectAhead(head: KeptHead, entries: SheetEntries): void;
  /** Says as what a sheet began, where it may have been changed before it is shown here for the first time. */
  begin(sheet: number, entries: SheetEntries): void;
  show(sheet: number, entries: SheetEntries): Place;
  /** Nothing stands there until something is shown. */
  leave(): void;
  readonly current: number | undefined;
  get(sheet: number | undefined): Place | undefined;
  /** Changes a sheet, and tells if it is the one on the page. */
  set(sheet: number, change: (place: Place) => Place): void;
  /** The numbers of the sheets with that id. */
  withId(id: string): readonly number[];
}

/** No sheets yet. */
export function placesOf({ onState, onStanding }: Listeners): Places {
  const places = new Map<number, Place>();
  const expected = new WeakMap<SheetEntries, Place>();
  let current: number | undefined;
  const tell = (place: Place): void => {
    onStanding({ id: place.id, revision: place.head?.revision, clean: !isDirty(place) });
    onState(stateOf(place));
  };
  return {
    expect: (kept) => void expected.set(kept.value, placeKept(kept)),
    expectAhead: (head, entries) =>
      void expected.set(entries, { ...placeOf(head.id, entries), head, wanted: true }),
    begin: (sheet, entries) => void places.set(sheet, placeOf(newId(), entries)),
    show(sheet, entries) {
      current = sheet;
      const known = places.get(sheet) ?? expected.get(entries) ?? placeOf(newId(), entries);
      const place = { ...known, latest: entries };
      places.set(sheet, place);
      tell(place);
      return place;
    },
    leave() {
      current = undefined;
    },
    get current() {
      return current;
    },
    get: (sheet) => (sheet === undefined ? undefined : places.get(sheet)),
    set(sheet, change) {
      const place = places.get(sheet);
      if (place === undefined) return;
      const next = change(place);
      places.set(sheet, next);
      if (sheet === current) tell(next);
    },
    withId: (id) => [...places].flatMap(([sheet, place]) => (place.id === id ? [sheet] : [])),
  };
}
