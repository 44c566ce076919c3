import { csvParseRows, dsvFormat } from 'd3';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cell, csvText, type Row } from '../../src/exchange/csv.ts';
import { fileName } from '../../src/exchange/file-name.ts';
import { cleanText } from '../../src/text/clean.ts';
import { anyText } from '../text/any-text.ts';

const anyNumber = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer());
const words = fc.oneof(
  anyText(20),
  fc.constantFrom('a, b', 'a; b', 'say "so"', 'two\nlines', '7,1', "it's", 'Ω', ''),
);
/** Rows of equal length with two cells at least: one empty cell alone would be no row to a reader. */
const table = (cell: fc.Arbitrary<Cell>) =>
  fc
    .integer({ min: 2, max: 5 })
    .chain((width) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
    );
const readPoint = (text: string): readonly (readonly string[])[] => csvParseRows(text.replace(/^\ufeff/, ''));
const readComma = (text: string): readonly (readonly string[])[] =>
  dsvFormat(';').parseRows(text.replace(/^\ufeff/, ''));
/** A cell without the apostrophe that stands before words which a spreadsheet would compute. */
const told = (text: string): string => text.replace(/^'(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/, '');

describe('a table as CSV', () => {
  test('brings back every number to the last bit, with a point or with a comma', () => {
    fc.assert(
      fc.property(table(anyNumber), (rows) => {
        const same = rows.map((row) => row.map((cell) => Number(cell) + 0));
        expect(readPoint(csvText(rows, 'point')).map((row) => row.map(Number))).toEqual(same);
        const commas = readComma(csvText(rows, 'comma'));
        expect(commas.map((row) => row.map((cell) => Number(cell.replace(',', '.'))))).toEqual(same);
      }),
    );
  });

  test('brings back every text, clean and in one line', () => {
    fc.assert(
      fc.property(table(words), (rows) => {
        const clean = rows.map((row) => row.map((cell) => told(cleanText(String(cell)).trim())));
        for (const read of [readPoint(csvText(rows, 'point')), readComma(csvText(rows, 'comma'))])
          expect(read.map((row) => row.map(told))).toEqual(clean);
      }),
    );
  });

  test('has no cell of words that a spreadsheet would compute', () => {
    const sly = fc
      .tuple(
        fc.constantFrom('', ' ', '\t', '\u00a0', '\r', '\n', '\u200b', '\u0000', '\u202e'),
        fc.constantFrom('=', '+', '-', '@', '\uff1d', '\uff0b', '\uff0d', '\uff20'),
        anyText(12),
      )
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(sly, fc.constantFrom('point' as const, 'comma' as const), (text, decimal) => {
        const line = csvText([[text, 'end']], decimal);
        expect(line).toMatch(/^\ufeff"'/);
        const [[cell = ''] = []] = decimal === 'point' ? readPoint(line) : readComma(line);
        expect(cell).not.toMatch(/^[\s\u00a0]*[=+\-@\t\r]/);
      }),
    );
  });

  test('has a plain minus, unquoted, before a negative number', () => {
    expect(csvText([[-13.4, 0, -0.5]], 'point')).toBe('\ufeff-13.4,0,-0.5\r\n');
    expect(csvText([[-13.4, 0, -0.5]], 'comma')).toBe('\ufeff-13,4;0;-0,5\r\n');
  });

  test('keeps to RFC 4180: lines end with CR LF, quotation marks are doubled, a separator is quoted', () => {
    const rows: readonly Row[] = [
      ['Pad, "old"', 'a;b'],
      ['', 1.5],
    ];
    expect(csvText(rows, 'point')).toBe('\ufeff"Pad, ""old""",a;b\r\n,1.5\r\n');
    expect(csvText(rows, 'comma')).toBe('\ufeff"Pad, ""old""";"a;b"\r\n;1,5\r\n');
  });

  test('leaves a cell empty that has no number', () => {
    expect(csvText([[Number.NaN, Number.POSITIVE_INFINITY, 1]], 'point')).toBe('\ufeff,,1\r\n');
  });

  test('writes very small and very large numbers as spreadsheets read them', () => {
    expect(csvText([[1e-7, 1e21, 2.5e-9]], 'comma')).toBe('\ufeff1e-7;1e21;2,5e-9\r\n');
  });
});

describe('the name of a file', () => {
  test.each([
    ['The club\u2019s hidden transmitter', 'the-clubs-hidden-transmitter.json'],
    ['Me\u00dfsender f\u00fcr 3,58 MHz', 'messsender-fur-3-58-mhz.json'],
    ['../../etc/passwd', 'etc-passwd.json'],
    ['CON', 'sheet.json'],
    ['', 'sheet.json'],
    ['\u202e\u0000', 'sheet.json'],
    ['...', 'sheet.json'],
  ])('from %j is %s', (title, name) => {
    expect(fileName(title, 'json')).toBe(name);
  });

  test('is short and of safe signs, whatever the title', () => {
    fc.assert(
      fc.property(anyText(100), (title) => {
        expect(fileName(title, 'csv')).toMatch(/^[a-z0-9](?:[a-z0-9-]{0,46}[a-z0-9])?\.csv$/);
      }),
    );
  });
});
