import type { SheetEntries } from '../../sheet/entries.ts';
import { type KeptChange, type KeptStore, newId } from '../../store/kept.ts';
import { inLine } from './in-line.ts';
import { afterChange, afterKeeping, isBlocked, isDirty, nameOf, type Place, placeOf } from './place.ts';
import { type Listeners, type Places, placesOf } from './places.ts';
import { restTimer } from './rest-timer.ts';

type Store = Pick<KeptStore<SheetEntries>, 'get' | 'put'>;

/** Keeps the sheets of one page as they are changed, each for itself. */
export interface Keeper extends Pick<Places, 'expect' | 'expectAhead' | 'begin'>, Choices {
  /** What stands on the page now; `sheet` is another number for each sheet that was opened. */
  show(sheet: number, entries: SheetEntries): void;
  /** The page turns to another history entry: nothing is told of the old sheet any more. */
  leave(): void;
  /** Keeps at once what is waiting. */
  flush(): Promise<void>;
  /** Keeps the sheet on the page, also where nothing was changed. */
  keepNow(): Promise<void>;
  /** Looks whether somebody else has changed the sheet on the page. */
  check(): Promise<void>;
  /** Somebody else has kept or removed something. */
  heard(change: KeptChange): void;
  stop(): void;
}

/** What a reader may choose where somebody else has changed the sheet on the page as well. */
export interface Choices {
  /** What they kept, to be shown here; undefined where it cannot be had. */
  takeKept(): Promise<SheetEntries | undefined>;
  /** This one is kept beside the other. */
  keepBeside(): Promise<void>;
  /** This one is kept in place of the other. */
  keepInstead(): Promise<void>;
}

/** A keeper over a store. What it is asked is done in that order; nothing that another tab has changed is overwritten. */
export function keeper({ store, ...listeners }: Listeners & { readonly store: Store }): Keeper {
  const places = placesOf(listeners);
  const line = inLine();
  const timer = restTimer(() => void flush());
  const flush = (): Promise<void> => {
    timer.stop();
    const { current } = places;
    return current === undefined ? line.done() : line.add(() => keepPlace(store, places, current));
  };
  const change = (make: (place: Place) => Place): Promise<void> => {
    if (places.current !== undefined) places.set(places.current, make);
    return flush();
  };
  return {
    expect: places.expect,
    expectAhead: places.expectAhead,
    begin: places.begin,
    show(sheet, entries) {
      if (places.current !== sheet) void flush();
      if (isDirty(places.show(sheet, entries))) timer.start();
      else timer.stop();
    },
    leave() {
      void flush();
      places.leave();
    },
    flush,
    keepNow: () => change((place) => ({ ...place, wanted: true })),
    async check() {
      await line.done(); // what is under way comes first
      await checkPlace(store, places);
    },
    heard({ id, revision }) {
      for (const sheet of places.withId(id)) places.set(sheet, (place) => afterChange(place, revision));
      const place = places.get(places.current);
      if (place?.id === id && isDirty(place)) timer.start(); // what was deleted may be back
    },
    ...choicesOf(store, places, change),
    stop: timer.stop,
  };
}

async function keepPlace(store: Store, places: Places, sheet: number): Promise<void> {
  const place = places.get(sheet);
  if (place === undefined || !isDirty(place) || isBlocked(place)) return;
  const { id, latest: value, head } = place;
  const outcome = await store.put({ id, name: nameOf(value), value, revision: head?.revision });
  places.set(sheet, (now) => (now.id === id ? afterKeeping(now, value, outcome) : now));
  if (!outcome.ok) return;
  // the same sheet, opened on this page a second time, is behind now
  for (const twin of places.withId(id))
    if (twin !== sheet) places.set(twin, (now) => afterChange(now, outcome.value.revision));
}

async function checkPlace(store: Store, places: Places): Promise<void> {
  const { current } = places;
  const place = places.get(current);
  if (current === undefined || place?.head === undefined) return;
  const outcome = await store.get(place.id);
  if (!outcome.ok && outcome.problem !== 'missing') return;
  const revision = outcome.ok ? outcome.value.revision : undefined;
  places.set(current, (now) => (now.id === place.id ? afterChange(now, revision) : now));
}

function choicesOf(
  store: Store,
  places: Places,
  change: (make: (place: Place) => Place) => Promise<void>,
): Choices {
  return {
    async takeKept() {
      const { current } = places;
      const place = places.get(current);
      if (current === undefined || place === undefined) return undefined;
      const outcome = await store.get(place.id);
      if (!outcome.ok) {
        places.set(current, (now) => ({ ...now, problem: outcome.problem }));
        return undefined;
      }
      const { value, ...head } = outcome.value;
      places.set(current, (now) => ({ ...now, saved: value, latest: value, head, problem: undefined }));
      return value;
    },
    keepBeside: () => change(({ begun, latest }) => ({ ...placeOf(newId(), begun), latest, wanted: true })),
    async keepInstead() {
      const place = places.get(places.current);
      const outcome = place && (await store.get(place.id));
      const head = outcome?.ok ? outcome.value : undefined;
      await change((now) => ({ ...now, head, saved: undefined, wanted: true, problem: undefined }));
    },
  };
}
