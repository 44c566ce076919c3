import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readColumn } from '../../../src/text/read/column.ts';
import type { ReadSpec } from '../../../src/text/read/quantity.ts';
import { anyText } from '../any-text.ts';

const LEVEL: ReadSpec = { kind: 'level', min: -60, max: 60, decimals: 0 };
const POWER: ReadSpec = { kind: 'power', min: 0, max: 100, decimals: 0 };
const valuesOf = (text: string, spec = LEVEL) => readColumn(text, spec).values.map(({ value }) => value);

describe('laws of pasted columns', () => {
  test('readings set apart by any sign are the readings', () => {
    const sign = fc.constantFrom('\n', '\r\n', '\t', ';', '; ', '\n\n');
    const reading = fc.integer({ min: -999, max: 999 }).map((tenths) => (tenths === 0 ? 0 : tenths / 100));
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 12 }),
        sign,
        fc.boolean(),
        (list, separator, comma) => {
          const text = list.map((value) => value.toFixed(2).replace('.', comma ? ',' : '.')).join(separator);
          expect(valuesOf(text)).toEqual(list);
        },
      ),
    );
  });

  test('any text gives values and problems that name lines of it', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const { values, problems } = readColumn(text, LEVEL);
        const lines = text.split(/\r\n|\r|\n/).length;
        for (const { line } of [...values, ...problems]) {
          expect(line).toBeGreaterThanOrEqual(1);
          expect(line).toBeLessThanOrEqual(lines);
        }
      }),
    );
  });
});

describe('a pasted column', () => {
  test('may stand in one line, with commas, points or spaces', () => {
    expect(valuesOf('7.35, 7.36, 7.34')).toEqual([7.35, 7.36, 7.34]);
    expect(valuesOf('7.35,7.36,7.34')).toEqual([7.35, 7.36, 7.34]);
    expect(valuesOf('7,35 7,36 7,34')).toEqual([7.35, 7.36, 7.34]);
    expect(valuesOf('7.35 dBm\t7.36 dBm')).toEqual([7.35, 7.36]);
    expect(valuesOf('1,2,3')).toEqual([1, 2, 3]);
  });

  test('keeps the line of each number and tells each junk line with its own', () => {
    const { values, problems } = readColumn('7.35\n\n--\n7.36 dBm\nabout 7', LEVEL);
    expect(values).toEqual([
      { line: 1, value: 7.35, unit: 'dBm' },
      { line: 4, value: 7.36, unit: 'dBm' },
    ]);
    expect(problems.map(({ line, text }) => [line, text])).toEqual([
      [3, '--'],
      [5, 'about 7'],
    ]);
    expect(problems[1]?.problem).toMatch(/^Line 5, \u201cabout 7\u201d: \u201cabout 7\u201d is not a number/);
  });

  test.each(['Power / mW', 'Power (mW)', 'Power [mW]', 'Power in mW'])(
    'takes the unit of its heading %s for bare numbers alone',
    (heading) => {
      const read = readColumn(`${heading}\n200\n0.5 W`, POWER);
      expect(read.heading).toBe(heading);
      expect(read.values.map(({ value }) => value)).toEqual([0.2, 0.5]);
    },
  );

  test('does not take a unit that its kind cannot have from the heading', () => {
    expect(valuesOf('Reading (V)\n7')).toEqual([7]);
  });

  test('has no heading where the first line is a number', () => {
    expect(readColumn('7.1 dBm\n7.2 dBm', LEVEL).heading).toBeUndefined();
    expect(readColumn('', LEVEL)).toEqual({
      values: [],
      problems: [],
      heading: undefined,
      numbered: false,
      mixed: false,
    });
  });

  test('settles thousands by its other numbers', () => {
    expect(valuesOf('1,234\n0,5\n2,75')).toEqual([1.234, 0.5, 2.75]);
    const { values, problems } = readColumn('1,234', LEVEL);
    expect([values, problems[0]?.problem]).toEqual([[], expect.stringMatching(/can mean 1\.234 or 1234/)]);
  });

  test('leaves out a first column that only counts', () => {
    const read = readColumn('1\t7.35\n2\t7.36\n3\t7.34', LEVEL);
    expect(read.numbered).toBe(true);
    expect(read.values.map(({ line, value }) => [line, value])).toEqual([
      [1, 7.35],
      [2, 7.36],
      [3, 7.34],
    ]);
    expect(readColumn('1\t7.35\n3\t7.36', LEVEL).numbered).toBe(false);
    expect(readColumn('1\t7.35', LEVEL).values).toHaveLength(2);
  });

  test('tells numbers out of the limits', () => {
    expect(readColumn('7\n70', LEVEL).problems).toEqual([
      {
        line: 2,
        text: '70',
        problem: expect.stringMatching(/^Line 2, .*above the largest value accepted here/),
      },
    ]);
  });
});
