import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instrumentsAsFile } from '../../../src/bench/instruments/instrument-file.ts';
import { readInstrument } from '../../../src/bench/instruments/read-instrument.ts';
import { emptyShelf, reduceShelf, type Shelf } from '../../../src/bench/instruments/shelf.ts';
import { nameless, noRoom, placed } from '../../../src/bench/instruments/shelf-file.ts';
import type { Known } from '../../../src/bench/instruments/take.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { clubInstruments } from '../../../src/instruments/club.ts';
import { INSTRUMENT_KINDS } from '../../../src/instruments/instrument.ts';
import { anyId, anyInstrument } from './any-instrument.ts';

const id = (number: number): string => number.toString(16).padStart(24, '0');
const pad = (number: number, label = `Pad ${number}`): Known => ({
  id: id(number),
  value: { ...blankInstrument('pad'), label },
});
const shelfOf = (...items: readonly Known[]): Shelf =>
  reduceShelf({ ...emptyShelf(), items: [] }, { type: 'add', items });

/** Ids that nothing has: each is another. */
function freshIds(): () => string {
  let number = 0;
  return () => {
    number += 1;
    return `fresh${number}`;
  };
}

const known = fc.record({
  id: fc.oneof(anyId, fc.constantFrom(id(1), id(2), '', 'x" onclick')),
  value: anyInstrument,
});

describe('opening instruments', () => {
  it('changes nothing that is on the shelf, and gives each an id of its own', () => {
    fc.assert(
      fc.property(fc.array(known, { maxLength: 5 }), anyInstrument, (file, value) => {
        const shelf = shelfOf({ id: id(1), value }, pad(2));
        const { items, same } = placed(file, shelf, freshIds());
        const after = reduceShelf(shelf, { type: 'add', items }).items ?? [];
        expect(after.slice(0, 2)).toEqual(shelf.items);
        expect(after.slice(2).map((item) => item.value)).toEqual(items.map((item) => item.value));
        expect(new Set(after.map((item) => item.id)).size).toBe(after.length);
        expect(items.length + same).toBe(file.length);
        for (const item of items) expect(item.id).toMatch(/^(?:[0-9a-f]{24}|fresh\d+)$/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the id by which sheets know an instrument that is not there', () => {
    expect(placed([pad(3)], shelfOf(pad(1)), freshIds())).toEqual({ items: [pad(3)], beside: 0, same: 0 });
  });

  it('adds one that is stated otherwise beside the one that is there', () => {
    const changed = pad(1, 'Pad 1, mended');
    expect(placed([changed], shelfOf(pad(1)), freshIds())).toEqual({
      items: [{ ...changed, id: 'fresh1' }],
      beside: 1,
      same: 0,
    });
  });

  it('adds nothing of a file that says what is there already', () => {
    const all = [pad(1), pad(2)];
    expect(placed(all, shelfOf(...all), freshIds())).toEqual({ items: [], beside: 0, same: 2 });
  });

  it('leaves the id free of one that was deleted and may be brought back', () => {
    const shelf = reduceShelf(shelfOf(pad(1), pad(2)), { type: 'remove', id: id(1) });
    const { items } = placed([pad(1)], shelf, freshIds());
    const after = reduceShelf(reduceShelf(shelf, { type: 'add', items }), { type: 'restore' });
    expect((after.items ?? []).map((item) => item.id).sort()).toEqual([id(1), id(2), 'fresh1'].sort());
  });

  it('is refused as a whole where the shelf has no room for all', () => {
    const placing = placed([pad(1), pad(2)], emptyShelf(), freshIds());
    expect(noRoom(placing, 2)).toBeUndefined();
    expect(noRoom(placing, 1)).toBe(
      'The file brings 2 instruments, and there is room for 1 more. Nothing was added: delete some first.',
    );
  });
});

describe('instruments without names', () => {
  const SECRET = 'Quux-4711';
  const club = clubInstruments().map(
    (value, index): Known => ({
      id: id(index + 1),
      value: { ...value, label: `${SECRET} ${value.label}`, serial: SECRET, from: SECRET, notes: SECRET },
    }),
  );

  it('say nothing of who and which, not even by the id', () => {
    const written = instrumentsAsFile(nameless(club), '');
    const text = written.ok ? written.text : '';
    expect(text).toContain('"Instrument 4"');
    expect(text).not.toContain(SECRET);
    expect(text).not.toContain('"id"');
  });

  it('state the same, with the same days', () => {
    for (const [index, { value }] of nameless(club).entries()) {
      const before = club[index]?.value;
      expect(readInstrument(value)).toEqual(before && readInstrument(before));
      expect([value.calibrated, value.interval]).toEqual([before?.calibrated, before?.interval]);
    }
  });

  it('have a name of their own each, by kind', () => {
    const all = INSTRUMENT_KINDS.flatMap((kind) => [blankInstrument(kind), blankInstrument(kind)]);
    const labels = nameless(all.map((value) => ({ id: '', value }))).map(({ value }) => value.label);
    expect(new Set(labels).size).toBe(all.length);
    expect(labels.slice(0, 4)).toEqual(['Instrument 1', 'Instrument 2', 'Pad 1', 'Pad 2']);
  });
});
