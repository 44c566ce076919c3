import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeEntries, encodeEntries } from '../../src/bench/address/address.ts';
import { carriedOf } from '../../src/bench/address/carried.ts';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { sheetFileForm, sheetsAsFile, sheetsInFile } from '../../src/bench/export/sheet-file.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { bytesOf, fileOf } from '../exchange/demonstration.ts';
import { anyEntries, usableEntries } from './any-entries.ts';

const SAVED = '2026-05-09T10:00:00.000Z';
const club = demonstrationEntries();

function textOf(sheets: readonly SheetEntries[]): string {
  const written = sheetsAsFile(sheets, SAVED);
  if (!written.ok) throw new Error(written.problem);
  return written.text;
}

function sheetsOf(bytes: Uint8Array): readonly SheetEntries[] {
  const read = sheetsInFile(bytes);
  if (!read.ok) throw new Error(read.problem);
  expect(read.notes).toEqual([]);
  return read.sheets;
}

/** Ids are given anew by place: they are no part of what was typed. */
const renumbered = (entries: SheetEntries): SheetEntries => ({
  ...entries,
  links: entries.links.map((link, index) => ({ ...link, id: `link${index + 1}` })),
  points: entries.points.map((point, index) => ({ ...point, id: `point${index + 1}` })),
});

describe('a sheet in a file', () => {
  it('comes back as it was typed', () => {
    fc.assert(
      fc.property(fc.array(usableEntries, { minLength: 1, maxLength: 3 }), (sheets) => {
        expect(sheetsOf(bytesOf(textOf(sheets)))).toEqual(sheets.map(renumbered));
      }),
      { numRuns: 40 },
    );
  });

  it('brings back also what cannot be used, and then no longer changes from file to file', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const once = sheetsOf(bytesOf(textOf([entries])));
        expect(sheetsOf(bytesOf(textOf(once)))).toEqual(once);
        expect(once[0]?.method).toBe(entries.method);
        expect(once[0]?.links.map(({ off }) => off)).toEqual(entries.links.map(({ off }) => off));
      }),
      { numRuns: 50 },
    );
  });

  it('says the same as in an address, where both can hold it', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { entries: opened } = decodeEntries(encodeEntries(entries) ?? '');
        expect(sheetsOf(bytesOf(textOf([entries])))).toEqual([opened]);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps columns that no address holds', () => {
    const readings = Array.from({ length: 20_000 }, (_, index) => (7 + (index % 100) / 1000).toFixed(3)).join(
      '\n',
    );
    const long = { ...club, points: club.points.map((point) => ({ ...point, readings })) };
    expect(encodeEntries(long)).toBeUndefined();
    expect(sheetsOf(bytesOf(textOf([long])))[0]?.points[0]?.readings).toBe(readings);
  });

  it('keeps what was agreed, read and changed', () => {
    const log = {
      lockedAt: SAVED,
      read: ['point1'],
      changes: [{ at: SAVED, what: 'rule', from: 'a', to: 'b', reason: 'slip of the pen' }],
    };
    expect(sheetsOf(bytesOf(textOf([{ ...club, log }])))[0]?.log).toEqual(log);
  });

  it.each(METHODS)('by %s is a small file that a person can read', (method) => {
    const text = textOf([freshEntries(method)]);
    expect(text.length).toBeLessThan(3000);
    expect(JSON.parse(text).sheets[0]).toMatchObject(
      method === 'padsIntoMeter' ? { points: [{}] } : { method, points: [{}] },
    );
  });

  it('without anything in it is a blank one with a point', () => {
    expect(sheetsOf(fileOf({ sheets: [{}] }, 1))[0]?.points).toHaveLength(1);
  });

  it('tells the first fault with its place', () => {
    const read = sheetsInFile(fileOf({ sheets: [{}, { points: [{ readings: [7, 7.1] }] }] }, 1));
    expect(read.ok ? '' : read.problem).toBe(
      'Sheet 2, point 1, \u201creadings\u201d: a text in quotation marks is expected here, and a list stands there.',
    );
  });

  it('runs nothing of hostile names and notes, and brings them back letter by letter', () => {
    const hostile = '<img src=x onerror=alert(1)> "=1+1" \u2028 {{a}} \\u003cscript>';
    const remarks = `${hostile}\n</script><script>alert(1)</script>`;
    const [back] = sheetsOf(bytesOf(textOf([{ ...club, title: hostile, remarks }])));
    expect(back?.title).toBe(hostile.replace('\u2028', ' '));
    expect(back?.remarks).toBe(remarks.replace('\u2028', ' '));
  });
});

describe('files once saved', () => {
  const folder = new URL('../corpus/files/', import.meta.url);
  const files = readdirSync(folder);
  const form = sheetFileForm();

  it.each(files)('%s opens for ever, with what is written beside it', (file) => {
    const bytes = readFileSync(new URL(file, folder));
    const { opens, ...content } = JSON.parse(bytes.toString());
    const sheets = sheetsOf(bytesOf(JSON.stringify(content)));
    expect(sheets.map(carriedOf)).toMatchObject(opens);
  });

  it('are there of every version', () => {
    const versions = files.map((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')).version);
    expect([...new Set(versions)].sort()).toEqual(
      Array.from({ length: form.version }, (_, index) => index + 1),
    );
  });
});
