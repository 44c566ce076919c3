import type { InstrumentEntries } from '../../instruments/instrument.ts';
import type { Kept, StoreProblem } from '../../store/kept.ts';
import { byName } from './by-name.ts';

/** One instrument on the page. */
export interface ShelfItem {
  readonly id: string;
  readonly value: InstrumentEntries;
  /** Why its last change could not be kept. */
  readonly problem?: StoreProblem | undefined;
}

/** Everything that the page of instruments knows. */
export interface Shelf {
  /** Undefined until the browser has answered. */
  readonly items: readonly ShelfItem[] | undefined;
  /** Things that are kept and cannot be read. */
  readonly unreadable: number;
  /** Why nothing can be kept at all. */
  readonly problem?: StoreProblem | undefined;
  /** Id of the one whose form is open. */
  readonly open?: string | undefined;
  /** What was deleted last, and where it stood. */
  readonly removed?: { readonly item: ShelfItem; readonly place: number } | undefined;
}

export type ShelfAction =
  | {
      readonly type: 'found';
      readonly items: readonly Kept<InstrumentEntries>[];
      readonly unreadable: number;
      /** Ids whose changes are not kept yet: what stands on the page counts. */
      readonly waiting: readonly string[];
    }
  | { readonly type: 'refused'; readonly problem: StoreProblem }
  | {
      readonly type: 'add';
      readonly items: readonly { readonly id: string; readonly value: InstrumentEntries }[];
    }
  | { readonly type: 'edit'; readonly id: string; readonly change: Partial<InstrumentEntries> }
  | { readonly type: 'open'; readonly id: string | undefined }
  | { readonly type: 'duplicate'; readonly id: string; readonly copy: string; readonly label: string }
  | { readonly type: 'remove'; readonly id: string }
  | { readonly type: 'restore' }
  | { readonly type: 'kept'; readonly id: string }
  | { readonly type: 'notKept'; readonly id: string; readonly problem: StoreProblem }
  /** What is kept in place of what stands on the page. */
  | { readonly type: 'replace'; readonly id: string; readonly value: InstrumentEntries };

/** The page before the browser has answered. */
export const emptyShelf = (): Shelf => ({ items: undefined, unreadable: 0 });

/** More instruments than this nobody keeps on a shelf. What others brought beyond it stays; only what is added here is held to it. */
export const MOST_INSTRUMENTS = 500;

/** For how many more the shelf has room. */
export const roomOn = ({ items = [] }: Pick<Shelf, 'items'>): number =>
  Math.max(0, MOST_INSTRUMENTS - items.length);

/** Total and pure: what names nothing that is there changes nothing. */
export function reduceShelf(shelf: Shelf, action: ShelfAction): Shelf {
  const items = shelf.items ?? [];
  const changeItem = (id: string, change: (item: ShelfItem) => ShelfItem): Shelf =>
    items.some((item) => item.id === id)
      ? { ...shelf, items: items.map((item) => (item.id === id ? change(item) : item)) }
      : shelf;
  switch (action.type) {
    case 'found':
      return found(shelf, action);
    case 'refused':
      return { ...shelf, items, problem: action.problem };
    case 'add':
      return added(shelf, action.items);
    case 'edit':
      return changeItem(action.id, (item) => ({ ...item, value: { ...item.value, ...action.change } }));
    case 'open':
      return { ...shelf, open: items.some(({ id }) => id === action.id) ? action.id : undefined };
    case 'duplicate':
      return duplicated(shelf, action);
    case 'remove':
      return removed(shelf, action.id);
    case 'restore':
      return restored(shelf);
    case 'kept':
      return changeItem(action.id, (item) => ({ ...item, problem: undefined }));
    case 'notKept':
      return changeItem(action.id, (item) => ({ ...item, problem: action.problem }));
    case 'replace':
      return changeItem(action.id, ({ id }) => ({ id, value: action.value }));
  }
}

/** What is kept, by name; what is not kept yet stays as it stands. */
function found(shelf: Shelf, { items, unreadable, waiting }: Extract<ShelfAction, { type: 'found' }>): Shelf {
  const mine = (shelf.items ?? []).filter(({ id }) => waiting.includes(id));
  const known = (shelf.items ?? []).map(({ id }) => id);
  const place = (id: string): number => (known.includes(id) ? known.indexOf(id) : known.length);
  const kept = items
    .filter(({ id }) => !waiting.includes(id))
    .map(({ id, value }): ShelfItem => ({ id, value }))
    .toSorted((a, b) => byName(a.value.label, b.value.label));
  const all = [...kept, ...mine].toSorted((a, b) => place(a.id) - place(b.id));
  const open = all.some(({ id }) => id === shelf.open) ? shelf.open : undefined;
  return { ...shelf, items: all, unreadable, problem: undefined, open };
}

/** All of it, or nothing where there is no room for all: the page says which before it is asked for. */
function added(shelf: Shelf, news: Extract<ShelfAction, { type: 'add' }>['items']): Shelf {
  const [first] = news;
  if (first === undefined || news.length > roomOn(shelf)) return shelf;
  return {
    ...shelf,
    items: [...(shelf.items ?? []), ...news],
    ...(news.length === 1 && { open: first.id }),
  };
}

function duplicated(shelf: Shelf, { id, copy, label }: Extract<ShelfAction, { type: 'duplicate' }>): Shelf {
  const items = shelf.items ?? [];
  const place = items.findIndex((item) => item.id === id);
  const item = items[place];
  if (item === undefined || roomOn(shelf) === 0) return shelf;
  // another piece has another number, and was not calibrated on the day of the first: its form asks for that
  const calibrated = item.value.basis === 'calibration' ? '' : item.value.calibrated;
  const value = { ...item.value, label, serial: '', calibrated };
  return { ...shelf, items: items.toSpliced(place + 1, 0, { id: copy, value }), open: copy };
}

function removed(shelf: Shelf, id: string): Shelf {
  const items = shelf.items ?? [];
  const place = items.findIndex((item) => item.id === id);
  const item = items[place];
  if (item === undefined) return shelf;
  return {
    ...shelf,
    items: items.toSpliced(place, 1),
    open: shelf.open === id ? undefined : shelf.open,
    removed: { item, place },
  };
}

function restored(shelf: Shelf): Shelf {
  if (shelf.removed === undefined) return shelf;
  const { item, place } = shelf.removed;
  return { ...shelf, items: (shelf.items ?? []).toSpliced(place, 0, item), removed: undefined };
}
