import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roomWords } from '../../../src/bench/instruments/ShelfParts.tsx';
import {
  emptyShelf,
  MOST_INSTRUMENTS,
  reduceShelf,
  roomOn,
  type Shelf,
  type ShelfAction,
} from '../../../src/bench/instruments/shelf.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import type { InstrumentEntries } from '../../../src/instruments/instrument.ts';

const pad = (label: string): InstrumentEntries => ({ ...blankInstrument('pad'), label });
const shelfOf = (...labels: readonly string[]): Shelf =>
  labels.reduce(
    (shelf, label) => reduceShelf(shelf, { type: 'add', items: [{ id: label, value: pad(label) }] }),
    emptyShelf(),
  );
const ids = ({ items }: Shelf): readonly string[] => (items ?? []).map(({ id }) => id);
const kept = (id: string, label = id) => ({
  id,
  name: label,
  created: '',
  changed: '',
  revision: 1,
  value: pad(label),
});

const someId = fc.constantFrom('a', 'b', 'c', 'nobody');
const anyAction: fc.Arbitrary<ShelfAction> = fc.oneof(
  someId.map((id): ShelfAction => ({ type: 'open', id })),
  someId.map((id): ShelfAction => ({ type: 'remove', id })),
  someId.map((id): ShelfAction => ({ type: 'kept', id })),
  someId.map((id): ShelfAction => ({ type: 'notKept', id, problem: 'changed' })),
  someId.map((id): ShelfAction => ({ type: 'edit', id, change: { loss: '7' } })),
  someId.map((id): ShelfAction => ({ type: 'replace', id, value: pad('new') })),
  fc
    .tuple(someId, fc.nat())
    .map(([id, n]): ShelfAction => ({ type: 'duplicate', id, copy: `n${n}`, label: 'x' })),
  fc.nat().map((n): ShelfAction => ({ type: 'add', items: [{ id: `new${n}`, value: pad('y') }] })),
  fc.constant<ShelfAction>({ type: 'restore' }),
  fc.subarray(['a', 'b', 'c']).map(
    (waiting): ShelfAction => ({
      type: 'found',
      items: ['b', 'd'].map((id) => kept(id)),
      unreadable: 0,
      waiting,
    }),
  ),
);

describe('laws of the shelf', () => {
  it('whatever is done, the open form is one of an instrument that is there', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 12 }), (actions) => {
        const shelf = actions.reduce(reduceShelf, shelfOf('a', 'b', 'c'));
        if (shelf.open !== undefined) expect(ids(shelf)).toContain(shelf.open);
      }),
    );
  });

  it('a deletion and its undo leave everything as it was', () => {
    fc.assert(
      fc.property(someId, (id) => {
        const before = reduceShelf(shelfOf('a', 'b', 'c'), { type: 'open', id: 'b' });
        const after = reduceShelf(reduceShelf(before, { type: 'remove', id }), { type: 'restore' });
        expect(after.items).toEqual(before.items);
      }),
    );
  });

  it('what names nothing that is there changes nothing', () => {
    const shelf = shelfOf('a');
    for (const type of ['remove', 'kept'] as const)
      expect(reduceShelf(shelf, { type, id: 'nobody' })).toBe(shelf);
    expect(reduceShelf(shelf, { type: 'edit', id: 'nobody', change: { loss: '1' } })).toBe(shelf);
    expect(reduceShelf(shelf, { type: 'duplicate', id: 'nobody', copy: 'x', label: 'x' })).toBe(shelf);
    expect(reduceShelf(shelf, { type: 'restore' })).toBe(shelf);
  });
});

describe('what is found in the browser', () => {
  const found = (shelf: Shelf, items: readonly ReturnType<typeof kept>[], waiting: readonly string[] = []) =>
    reduceShelf(shelf, { type: 'found', items, unreadable: 2, waiting });

  it('stands in the order of its names, with numbers as numbers, and says what cannot be read', () => {
    const shelf = found(emptyShelf(), [kept('x', 'Pad 10'), kept('y', 'Pad 9'), kept('z', 'Cable')]);
    expect(ids(shelf)).toEqual(['z', 'y', 'x']);
    expect(shelf.unreadable).toBe(2);
  });

  it('moves nothing that stands there already, and takes no place of what is not kept yet', () => {
    const shelf = found(shelfOf('b', 'a'), [kept('a', 'zzz'), kept('c'), kept('b', 'kept')], ['b']);
    expect(ids(shelf)).toEqual(['b', 'a', 'c']);
    expect(shelf.items?.map(({ value }) => value.label)).toEqual(['b', 'zzz', 'c']);
  });

  it('lacks what another tab has deleted', () => {
    expect(ids(found(shelfOf('a', 'b'), [kept('a')]))).toEqual(['a']);
  });
});

describe('a copy', () => {
  const calibrated = {
    ...pad('Pad A'),
    serial: '7',
    basis: 'calibration',
    calibrated: '2026-05-09',
  } as const;
  const copied = (value: InstrumentEntries) =>
    reduceShelf(reduceShelf(emptyShelf(), { type: 'add', items: [{ id: 'a', value }] }), {
      type: 'duplicate',
      id: 'a',
      copy: 'b',
      label: 'Pad A, again',
    });

  it('stands right below, open, under a name of its own', () => {
    const shelf = copied(pad('Pad A'));
    expect(ids(shelf)).toEqual(['a', 'b']);
    expect(shelf.open).toBe('b');
    expect(shelf.items?.[1]?.value.label).toBe('Pad A, again');
  });

  it('has neither the number of the first nor the day of its calibration: it is another piece', () => {
    expect(copied(calibrated).items?.[1]?.value).toMatchObject({ serial: '', calibrated: '' });
    expect(copied({ ...calibrated, basis: 'dataSheet' }).items?.[1]?.value.calibrated).toBe('2026-05-09');
  });
});

describe('many instruments', () => {
  const some = (count: number) => Array.from({ length: count }, (_, n) => ({ id: `i${n}`, value: pad('x') }));

  it('come to an end', () => {
    const shelf = reduceShelf(emptyShelf(), { type: 'add', items: some(MOST_INSTRUMENTS) });
    expect(ids(shelf)).toHaveLength(MOST_INSTRUMENTS);
    expect(reduceShelf(shelf, { type: 'duplicate', id: 'i0', copy: 'more', label: 'x' })).toBe(shelf);
    expect(reduceShelf(shelf, { type: 'add', items: some(1) })).toBe(shelf);
  });

  it('are taken all or none, and which is told beside the list', () => {
    const shelf = reduceShelf(emptyShelf(), { type: 'add', items: some(MOST_INSTRUMENTS - 3) });
    expect(reduceShelf(shelf, { type: 'add', items: some(4) })).toBe(shelf);
    expect(roomWords(shelf, 3)).toBe('');
    expect(roomWords(shelf, 4)).toBe('The invented set brings 4 things, and there is room for 3 more.');
    const full = reduceShelf(shelf, { type: 'add', items: some(3) });
    expect(roomWords(full, 3)).toMatch(/^Your shelf has 500 things on it and takes no more\./);
  });

  it('that were kept elsewhere stay, however many they are', () => {
    const items = some(MOST_INSTRUMENTS + 3).map(({ id }) => kept(id));
    const shelf = reduceShelf(emptyShelf(), { type: 'found', items, unreadable: 0, waiting: [] });
    expect(ids(shelf)).toHaveLength(MOST_INSTRUMENTS + 3);
    expect(roomOn(shelf)).toBe(0);
    expect(roomWords(shelf, 1)).toContain('503 things');
  });

  it('added at once stay folded; one alone opens', () => {
    expect(shelfOf('a').open).toBe('a');
    const two = ['a', 'b'].map((id) => ({ id, value: pad(id) }));
    expect(reduceShelf(emptyShelf(), { type: 'add', items: two }).open).toBeUndefined();
  });
});
