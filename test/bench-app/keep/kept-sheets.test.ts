import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demonstrationEntries, freshEntries } from '../../../src/bench/entries/fresh.ts';
import { keptSheets, SHEET_FORM, sheetFrom } from '../../../src/bench/keep/kept-sheets.ts';
import { blankSheet } from '../../../src/sheet/blank-sheet.ts';
import { blankLink, blankPoint, type SheetEntries } from '../../../src/sheet/entries.ts';
import { METHODS } from '../../../src/sheet/method.ts';
import { freshDatabase } from '../../store/fresh-database.ts';
import { anyEntries } from '../any-entries.ts';

const demonstration = demonstrationEntries();
/** The demonstration with something changed that may be anything. */
const altered = (change: object): unknown => ({ ...demonstration, ...change });
const withLink = (change: object): unknown =>
  altered({ links: [{ ...blankLink('link1'), ...change }, ...demonstration.links] });

/** What each version has kept, as it lay in the database: it is to be read for ever. */
const corpus = JSON.parse(
  readFileSync(new URL('../../corpus/kept-sheets.json', import.meta.url), 'utf8'),
) as readonly { readonly version: number; readonly value: SheetEntries }[];

describe('a kept sheet', () => {
  it('of any version that was ever out opens with everything that was typed', () => {
    for (const { version, value } of corpus) expect(SHEET_FORM.read(value, version)).toMatchObject(value);
    expect(new Set(corpus.map(({ version }) => version)).size, 'each version has its example').toBe(
      SHEET_FORM.version,
    );
  });

  it('comes back as it was typed, usable or not', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        expect(sheetFrom(structuredClone(entries))).toEqual(entries);
      }),
    );
    for (const method of METHODS) expect(sheetFrom(freshEntries(method))).toEqual(freshEntries(method));
  });

  it('keeps its log: since when it is agreed, for which points, and what was changed', () => {
    const log = {
      lockedAt: '2031-05-04T10:00:00Z',
      read: ['point1'],
      changes: [{ at: '2031-05-04T11:00:00Z', what: 'rule', from: 'a', to: 'b', reason: 'c' }],
    };
    expect(sheetFrom(altered({ log }))).toEqual({ ...demonstration, log });
  });

  it('of an older version gets blanks for what was not asked for then', () => {
    const keys = Object.keys(blankSheet('padsIntoMeter')).filter(
      (key) => !['points', 'links', 'log', 'checks', 'method'].includes(key),
    ) as (keyof SheetEntries)[];
    for (const key of keys) {
      const { [key]: _, ...rest } = demonstration;
      expect(sheetFrom(rest)).toEqual({ ...demonstration, [key]: blankSheet('padsIntoMeter')[key] });
    }
    const { better: _, ...old } = blankLink('link1');
    expect(sheetFrom(altered({ links: [old] }))).toEqual(altered({ links: [blankLink('link1')] }));
    const { above: __, ...point } = blankPoint('point1');
    expect(sheetFrom(altered({ points: [point] }))).toEqual(altered({ points: [blankPoint('point1')] }));
  });

  it('keeps texts that this version does not ask for', () => {
    const sheet = withLink({ certificate: 'A 17', flag: true });
    expect(sheetFrom(sheet)).toEqual(sheet);
  });

  it.each([
    ['a number for a text', altered({ title: 7 })],
    ['a method that nobody knows', altered({ method: 'witchcraft' })],
    ['a unit that nobody knows', withLink({ unit: 'furlong' })],
    ['a table by nothing that is known', withLink({ by: 'moon' })],
    ['a part that nobody knows', withLink({ part: 'handle' })],
    ['a text for yes or no', withLink({ off: 'yes' })],
    ['two links of one id', altered({ links: [blankLink('a'), blankLink('a')] })],
    ['no points', altered({ points: [] })],
    ['points that are none', altered({ points: [7] })],
    ['links that are no list', altered({ links: {} })],
    [
      'a form of specification that nobody knows',
      altered({ points: [{ ...blankPoint('a'), specification: 'x' }] }),
    ],
    ['no log', altered({ log: undefined })],
    ['a log without its changes', altered({ log: { lockedAt: '' } })],
    ['a log with changes that are none', altered({ log: { lockedAt: '', changes: ['x'] } })],
    ['a log with points that are none', altered({ log: { lockedAt: '', changes: [], read: [7] } })],
    ['a check that is no text', altered({ checks: { ...demonstration.checks, off: 3 } })],
    ['no checks', altered({ checks: null })],
  ])('with %s is damaged, and nothing is guessed', (_, sheet) => expect(sheetFrom(sheet)).toBeUndefined());

  it('is read without a throw whatever lies there', () => {
    fc.assert(
      fc.property(fc.anything(), fc.constantFrom(...Object.keys(demonstration)), (value, key) => {
        expect(() => SHEET_FORM.read(value, 1)).not.toThrow();
        expect(() => SHEET_FORM.read(altered({ [key]: value }), 1)).not.toThrow();
      }),
    );
  });

  it('does not change what objects are, whatever its keys say', () => {
    const hostile: unknown = JSON.parse(
      JSON.stringify(demonstration).replace(
        '"title"',
        '"__proto__":{"polluted":"yes"},"constructor":"x","title"',
      ),
    );
    expect(sheetFrom(hostile)?.title).toBe(demonstration.title);
    expect({}).not.toHaveProperty('polluted');
  });
});

describe('the store of sheets', () => {
  beforeEach(() => {
    freshDatabase();
  });
  const opened: ReturnType<typeof keptSheets>[] = [];
  afterEach(() => {
    for (const store of opened.splice(0)) store.close();
  });

  it('keeps what is typed, with names that are nothing but text', async () => {
    const store = keptSheets(() => '2031-05-04T10:00:00.000Z');
    opened.push(store);
    const name = '<script>alert(1)</script>\u202e"; DROP TABLE';
    const value = { ...demonstration, title: name };
    await store.put({ id: 'a', name, value, revision: undefined });
    const found = await store.get('a');
    expect(found.ok && found.value).toMatchObject({ name, value });
  });
});
