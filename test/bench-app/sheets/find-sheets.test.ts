import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { findable, found } from '../../../src/bench/sheets/find-sheets.ts';
import type { SheetEntries } from '../../../src/sheet/entries.ts';
import type { Kept } from '../../../src/store/kept.ts';

const sheet = (name: string, change: Partial<SheetEntries> = {}): Kept<SheetEntries> => ({
  id: name,
  name,
  created: '2031-05-04T10:00:00.000Z',
  changed: '2031-06-07T11:12:00.000Z',
  revision: 1,
  value: { ...demonstrationEntries(), title: name, ...change },
});
const named = (sheets: readonly Kept<SheetEntries>[], query: string): readonly string[] =>
  found(sheets.map(findable), query).map(({ name }) => name);

const some = [
  sheet('Fox one', { by: 'The Tuesday group' }),
  sheet('Fox two', { remarks: 'after the new battery' }),
  sheet('Prüfsender', { date: 'last autumn' }),
];

describe('searching the kept sheets', () => {
  it.each([
    ['', ['Fox one', 'Fox two', 'Prüfsender']],
    ['   ', ['Fox one', 'Fox two', 'Prüfsender']],
    ['fox', ['Fox one', 'Fox two']],
    ['FOX TWO', ['Fox two']],
    ['two fox', ['Fox two']],
    ['battery', ['Fox two']],
    ['tuesday', ['Fox one']],
    ['autumn', ['Prüfsender']],
    ['pru\u0308f', ['Prüfsender']],
    ['2031-06', ['Fox one', 'Fox two', 'Prüfsender']],
    ['coax 3.58', ['Fox one', 'Fox two', 'Prüfsender']],
    ['11:12', []],
    ['.*', []],
    ['fox tuesday battery', []],
  ])('for “%s” finds what has every word', (query, names) => expect(named(some, query)).toEqual(names));

  it('never throws, keeps the order, and finds less the more is asked', () => {
    const texts = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(fc.uniqueArray(texts, { maxLength: 8 }), texts, texts, (names, first, second) => {
        const all = names.map((name) => sheet(name));
        const one = named(all, first);
        const both = named(all, `${first} ${second}`);
        expect(names.filter((name) => one.includes(name))).toEqual(one);
        expect(both.every((name) => one.includes(name))).toBe(true);
      }),
    );
  });

  it('finds every sheet by each word of its own name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        expect(named([sheet(name)], name)).toEqual([name]);
      }),
    );
  });
});
