import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ReadSpec } from '../../../src/text/read/quantity.ts';
import { readRows } from '../../../src/text/read/rows.ts';
import { anyText } from '../any-text.ts';

const SPECS: readonly ReadSpec[] = [
  { kind: 'megahertz', min: 0.0001, max: 1e6, decimals: 4 },
  { kind: 'gain', min: -20, max: 20, decimals: 0 },
  { kind: 'halfWidthDb', min: 0, max: 20, decimals: 0 },
];
const valuesOf = (text: string) => readRows(text, SPECS).rows.map(({ values }) => values);

describe('laws of a table', () => {
  const hundredths = (min: number, max: number) =>
    fc.integer({ min, max }).map((value) => (value === 0 ? 0 : value / 100));
  const row = fc.tuple(hundredths(1, 99_999), hundredths(-999, 999), hundredths(0, 999));

  test('rows are the same numbers, whatever sign stands between the cells and marks decimals', () => {
    const separator = fc.constantFrom('\t', '; ', ';', ' ', '   ', ', ');
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 8 }),
        separator,
        fc.boolean(),
        (rows, between, comma) => {
          const cell = (value: number): string => value.toFixed(2).replace('.', comma ? ',' : '.');
          const text = rows.map((values) => values.map(cell).join(between)).join('\n');
          expect(valuesOf(text)).toEqual(rows);
        },
      ),
    );
  });

  test('any text gives rows of as many finite numbers as there are columns, and each bad line once', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const { rows, problems } = readRows(text, SPECS);
        for (const { values } of rows) {
          expect(values).toHaveLength(SPECS.length);
          expect(values.every(Number.isFinite)).toBe(true);
        }
        const told = [...rows, ...problems].map(({ line }) => line);
        expect(new Set(told).size).toBe(told.length);
        expect(Math.max(0, ...told)).toBeLessThanOrEqual(text.split(/\r\n|\r|\n/).length);
      }),
    );
  });
});

describe('a table as people paste it', () => {
  test.each([
    ['units at the numbers', '3.58 MHz 0.12 dB ±0.1 dB'],
    ['a sign apart from its number', '3.58 + 0.12 ± 0.1'],
    ['another unit of frequency', '3580 kHz; 0.12; 0.1'],
    ['points, and commas between', '3.58,0.12,0.1'],
    ['a separator left at the end', '3.58;0.12;0.1;'],
    ['a heading', 'f / MHz; correction / dB; U / dB\n3.58; 0.12; 0.1'],
    ['a heading in kilohertz', 'f / kHz\tcorrection / dB\tU / dB\n3580\t0.12\t0.1'],
    ['empty lines about it', '\n\n3.58 0.12 0.1\n\n'],
  ])('with %s', (_, text) => {
    expect(valuesOf(text)).toEqual([[3.58, 0.12, 0.1]]);
  });

  test('a minus of any kind is one, also apart from its number', () => {
    expect(valuesOf('3.58 − 0.12 0.1\n7 -0.2 0.1\n14 −0.3 0.1')).toEqual([
      [3.58, -0.12, 0.1],
      [7, -0.2, 0.1],
      [14, -0.3, 0.1],
    ]);
  });

  test('a comma that could be either is settled by the lines around it', () => {
    expect(valuesOf('1,234 0,12 0,1\n7,1 0,2 0,1')).toEqual([
      [1.234, 0.12, 0.1],
      [7.1, 0.2, 0.1],
    ]);
  });
});

describe('a line that cannot be used', () => {
  test('is told with its number as it stands in the text, and the good ones stay', () => {
    const { rows, problems } = readRows('f; c; U\n3.58; 0.12; 0.1\n7; abc; 0.1\n14; 0.1; 0.1', SPECS);
    expect(rows.map(({ line }) => line)).toEqual([2, 4]);
    expect(problems).toMatchObject([{ line: 3, text: '“7; abc; 0.1”' }]);
    expect(problems[0]?.problem).toContain('“abc” is not a number');
  });

  test('has no sentence of its own where it has another number of cells', () => {
    expect(readRows('3.58 0.12', SPECS).problems).toEqual([
      { line: 1, text: '“3.58 0.12”', problem: undefined },
    ]);
    expect(readRows('3.58; 0.12; 0.1; 4', SPECS).problems).toMatchObject([{ problem: undefined }]);
  });

  test('is one beyond what is accepted, with the limit', () => {
    expect(readRows('3.58 0.12 -0.1', SPECS).problems[0]?.problem).toContain('smallest value accepted');
  });
});
