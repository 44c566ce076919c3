import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readColumn, sideBySide } from '../../../src/text/read/column.ts';
import { type KindName, kindOf } from '../../../src/text/read/kind.ts';
import { readQuantity } from '../../../src/text/read/quantity.ts';
import { unitOf } from '../../../src/text/read/spelling.ts';
import { isUnitName, type UnitName, unitText } from '../../../src/text/units.ts';

const NBSP = '\u00a0';
const wide = (kind: KindName) => ({ kind, min: -1e9, max: 1e9, decimals: 0 });
const read = (text: string, kind: KindName): number | string => {
  const result = readQuantity(text, wide(kind));
  return result.ok ? result.value : result.problem;
};
const KINDS: readonly KindName[] = [
  'level',
  'power',
  'gain',
  'loss',
  'halfWidthDb',
  'halfWidth',
  'percent',
  'volts',
  'voltsDc',
  'voltsRms',
  'voltsPeakToPeak',
  'halfWidthVpp',
  'ohms',
  'kiloohms',
  'amperes',
  'halfWidthAmperes',
  'kilohertz',
  'megahertz',
  'kelvin',
  'rise',
  'celsius',
  'micrometres',
  'growth',
  'millimetres',
  'number',
];
const unitsOf = (kind: KindName) => Object.keys(kindOf(kind).units) as UnitName[];

describe('every kind of quantity', () => {
  test.each(KINDS)('%s is at home in its base, and each of its units can be typed as it is shown', (kind) => {
    const { base, units } = kindOf(kind);
    expect(units[base]?.(1.25)).toBe(1.25);
    for (const unit of unitsOf(kind)) {
      expect(isUnitName(unit)).toBe(true);
      expect(unitOf(unitText('ascii', unit, '2'))).toBe(unit);
    }
  });

  test.each(KINDS)('%s takes the example that its own sentence gives', (kind) => {
    const sentence = read('', kind);
    const example = /for example (.*)\.$/.exec(String(sentence))?.[1];
    expect(read(example ?? '', kind)).toBe(kindOf(kind).example.value);
  });

  test.each(KINDS)('%s names every unit that it takes, and takes every unit that it names', (kind) => {
    const named = /, in (.*), for example/.exec(String(read('?', kind)))?.[1]?.split(/, | or /) ?? [''];
    expect(named).toEqual(unitsOf(kind).map((unit) => unitText('shown', unit, '2')));
    for (const name of named) expect(typeof read(`1 ${name}`, kind)).toBe('number');
  });

  test.each(KINDS)('%s takes a plus-minus where it is a limit, and says so where it is not', (kind) => {
    const limit = kindOf(kind).plusMinus === true;
    expect(read('\u00b11', kind)).toEqual(
      limit ? 1 : expect.stringMatching(/^One number without \u00b1 goes here/),
    );
  });

  test('has a value of more in a larger unit, by the factor of its prefix (SI brochure, table 7)', () => {
    const pairs: readonly (readonly [KindName, string, string, number])[] = [
      ['power', 'kW', 'W', 1000],
      ['power', 'W', 'mW', 1000],
      ['power', 'mW', '\u00b5W', 1000],
      ['volts', 'V', 'mV', 1000],
      ['ohms', 'k\u03a9', '\u03a9', 1000],
      ['amperes', 'A', 'mA', 1000],
      ['megahertz', 'GHz', 'MHz', 1000],
      ['megahertz', 'MHz', 'kHz', 1000],
      ['millimetres', 'm', 'mm', 1000],
      ['millimetres', 'mm', '\u00b5m', 1000],
      ['percent', '%', 'ppm', 10000],
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.integer({ min: 1, max: 9999 }),
        ([kind, large, small, times], digits) => {
          const ratio =
            Number(read(`${digits / 100} ${large}`, kind)) / Number(read(`${digits / 100} ${small}`, kind));
          expect(ratio / times).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe('single kinds', () => {
  test.each<[string, KindName, number]>([
    ['600', 'millimetres', 600],
    ['0,6 m', 'millimetres', 600],
    ['20 \u00b5m', 'millimetres', 0.02],
    ['\u00b10.1 millimetres', 'millimetres', 0.1],
    ['1.5 mm', 'micrometres', 1500],
    ['20', 'loss', 20],
    ['-10.5 dB', 'loss', -10.5],
    ['3580 khz', 'megahertz', 3.58],
    ['0,4', 'kilohertz', 0.4],
    ['0.001 MHz', 'kilohertz', 1],
    ['47 k\u03a9', 'kiloohms', 47],
    ['4700 ohm', 'kiloohms', 4.7],
    ['0,145 GHz', 'megahertz', 145],
    ['49,8 \u03a9', 'ohms', 49.8],
    ['0.0498 kohm', 'ohms', 49.8],
    ['150 mA', 'amperes', 0.15],
    ['+/- 5 mA', 'halfWidthAmperes', 0.005],
    ['\u00b1200 mV', 'halfWidthVpp', 0.2],
    ['6530 mV', 'voltsDc', 6.53],
    ['14.2', 'rise', 14.2],
    ['14.2 \u00b0C', 'rise', 14.2],
    ['\u00b10.1 kelvin', 'kelvin', 0.1],
    ['-40 \u00b0C', 'celsius', -40],
    ['0 K', 'celsius', -273.15],
    ['21 degC', 'celsius', 21],
  ])('read %s as %s', (text, kind, value) => {
    expect(read(text, kind)).toBeCloseTo(value, 12);
  });

  test('tell a difference of temperatures, alike in K and \u00b0C, from a temperature, 273.15 apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2000, max: 5000 }), (tenths) => {
        const number = tenths / 10;
        for (const kind of ['kelvin', 'rise'] as const)
          expect(read(`${number} \u00b0C`, kind)).toBe(read(`${number} K`, kind));
        expect(
          Number(read(`${number} \u00b0C`, 'celsius')) - Number(read(`${number} K`, 'celsius')),
        ).toBeCloseTo(273.15, 9);
      }),
    );
  });

  test.each<[string, KindName, RegExp]>([
    [
      '20 dBm',
      'loss',
      /^dBm is a level; a gain or a limit is a ratio and has dB\. A loss is expected, in dB, for example 20/,
    ],
    ['5 V', 'ohms', /^\u201cV\u201d does not fit: a resistance is expected, in \u03a9 or k\u03a9/],
    ['3.58 m', 'megahertz', /^\u201cm\u201d does not fit: a frequency is expected, in MHz, kHz or GHz/],
    ['3.58 mHz', 'megahertz', /is not a unit known here/],
    ['20 MA', 'amperes', /is not a unit known here/],
    ['600 inches', 'millimetres', /is not a unit known here: a length is expected, in mm, \u00b5m or m/],
    ['20 mm', 'celsius', /^\u201cmm\u201d does not fit: a temperature is expected, in \u00b0C or K/],
    ['6.53 Vpp', 'voltsDc', /^\u201cVpp\u201d does not fit: a DC voltage is expected, in V or mV/],
  ])('tell what is wrong with %s as %s', (text, kind, sentence) => {
    expect(read(text, kind)).toMatch(sentence);
  });

  test('keep their limits in their own unit, whatever unit was typed', () => {
    const length = { kind: 'millimetres', min: 1, max: 2000, decimals: 0 } as const;
    expect(readQuantity('2 m', length)).toEqual({ ok: true, value: 2000, unit: 'mm' });
    expect(readQuantity('2.1 m', length)).toEqual({
      ok: false,
      problem: `\u201c2.1 m\u201d is above the largest value accepted here, 2000${NBSP}mm.`,
    });
    expect(readQuantity('10 um', length)).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/below the smallest.*1\u00a0mm/),
    });
  });
});

describe('columns of other kinds', () => {
  const column = (text: string, kind: KindName) => readColumn(text, wide(kind));

  test('take the unit of their heading for bare numbers, and their own where a number has one', () => {
    const { values, heading, mixed } = column('Rise / K\n14.2\n14.4 \u00b0C', 'rise');
    expect([heading, values.map(({ value }) => value), mixed]).toEqual(['Rise / K', [14.2, 14.4], true]);
    expect(column('U (mV)\n6530\n6.54 V', 'voltsDc').values.map(({ value }) => value)).toEqual([6.53, 6.54]);
    expect(column('f in kHz\n3580\n7030', 'megahertz').values.map(({ value }) => value)).toEqual([
      3.58, 7.03,
    ]);
  });

  test('are mixed only where some numbers have another unit and some have none', () => {
    expect(column('6.53\n6540 mV', 'voltsDc').mixed).toBe(true);
    expect(column('6.53 V\n6540 mV', 'voltsDc').mixed).toBe(false);
    expect(column('6.53\n6.54 V', 'voltsDc').mixed).toBe(false);
    expect(column('150 mA\n0,151', 'amperes').mixed).toBe(true);
    expect(column('I / mA\n150\n0.151 A', 'amperes').mixed).toBe(true);
  });

  test('keep good numbers beside those that a kind cannot take, each with its line', () => {
    const { values, problems } = column('14,1 Vpp\n7 Vp\n5 W\n5 Vrms', 'voltsPeakToPeak');
    expect(values.map(({ line }) => line)).toEqual([1, 2, 4]);
    expect(values[1]?.value).toBe(14);
    expect(values[2]?.value).toBeCloseTo(10 * Math.SQRT2, 9);
    expect(problems).toEqual([
      {
        line: 3,
        text: '5 W',
        problem: expect.stringMatching(/^Line 3, \u201c5 W\u201d: \u201cW\u201d does not fit/),
      },
    ]);
  });
});

describe('columns side by side', () => {
  const table = fc
    .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 2, max: 8 }))
    .chain(([columns, rows]) =>
      fc.array(fc.array(fc.integer({ min: -999, max: 999 }), { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
    );

  test('come apart into the columns that they were put together from', () => {
    fc.assert(
      fc.property(
        table,
        fc.constantFrom('\t', ';', ' ; ', '\t '),
        fc.constantFrom('\n', '\r\n', '\r'),
        (rows, cell, end) => {
          const texts = sideBySide(
            rows.map((row) => row.map((value) => value.toFixed(0)).join(cell)).join(end),
          );
          const own = rows[0]?.map((_, column) => rows.map((row) => row[column] ?? Number.NaN)) ?? [];
          expect(texts).toHaveLength(own.length);
          texts?.forEach((text, index) => {
            expect(readColumn(text, wide('number')).values.map(({ value }) => value + 0)).toEqual(own[index]);
          });
        },
      ),
    );
  });

  test('keep headings over their own columns, each with its unit', () => {
    const [volts = '', amperes = ''] = sideBySide('U / mV\tI / mA\n5000\t100\n5010\t101') ?? [];
    expect(readColumn(volts, wide('voltsDc')).values.map(({ value }) => value)).toEqual([5, 5.01]);
    expect(readColumn(amperes, wide('amperes')).values.map(({ value }) => value)).toEqual([0.1, 0.101]);
  });

  test('are none where one line has a cell too many or too few', () => {
    fc.assert(
      fc.property(table, fc.boolean(), (rows, more) => {
        const lines = rows.map((row) => row.join('\t'));
        const [first = '', ...rest] = lines;
        const broken = more ? `${first}\t7` : first.split('\t').slice(1).join('\t');
        expect(sideBySide([broken, ...rest].join('\n'))).toBeUndefined();
      }),
    );
  });
});
