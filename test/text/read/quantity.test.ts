import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantityText } from '../../../src/text/quantity-text.ts';
import { isGood, readField } from '../../../src/text/read/field.ts';
import { type KindName, kindOf } from '../../../src/text/read/kind.ts';
import { type ReadSpec, readQuantity } from '../../../src/text/read/quantity.ts';
import { unitOf } from '../../../src/text/read/spelling.ts';
import type { Style } from '../../../src/text/style.ts';
import type { UnitName } from '../../../src/text/units.ts';
import { anyText } from '../any-text.ts';

const KINDS: readonly KindName[] = [
  'level',
  'power',
  'gain',
  'loss',
  'halfWidthDb',
  'halfWidth',
  'percent',
  'volts',
  'voltsRms',
  'voltsPeakToPeak',
  'ohms',
  'amperes',
  'megahertz',
  'kelvin',
  'celsius',
  'micrometres',
  'number',
];
const wide = (kind: KindName): ReadSpec => ({ kind, min: -1e6, max: 1e6, decimals: 0 });
const meaning = (text: string, kind: KindName) => {
  const read = readQuantity(text, wide(kind));
  return read.ok ? read.value : read.problem;
};
const problemOf = (text: string, spec: ReadSpec) => {
  const read = readQuantity(text, spec);
  return read.ok ? `read as ${read.value}` : read.problem;
};
const LEVEL: ReadSpec = { kind: 'level', min: -60, max: 60, decimals: 0 };
const GAIN: ReadSpec = { kind: 'gain', min: -80, max: 80, decimals: 0 };
const NBSP = '\u00a0';

describe('laws of typed quantities', () => {
  test('whatever this site writes, it reads again: shown, copied and plain', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...KINDS),
        fc.constantFrom<Style>('shown', 'ascii', 'unicode'),
        fc.integer({ min: -99999, max: 99999 }),
        fc.integer({ min: 0, max: 4 }),
        (kind, style, digits, decimals) => {
          const value = digits / 10 ** decimals;
          const text = quantityText(style, { value, decimals, unit: kindOf(kind).base });
          const expected = value === 0 ? 0 : value;
          const read = readQuantity(text, wide(kind));
          expect(read).toMatchObject({ ok: true, unit: kindOf(kind).base });
          expect(read.ok && read.value).toBeCloseTo(expected, 9);
        },
      ),
    );
  });

  test('any text at all is read as a number within the limits or answered with one sentence', () => {
    const pieces = fc.constantFrom(
      '1',
      '5',
      '.',
      ',',
      '-',
      '\u2212',
      ' ',
      '\u00b1',
      '+/-',
      'e',
      'dB',
      'm',
      'W',
      '%',
      '\u202e',
      'NaN',
    );
    const text = fc.oneof(
      anyText(),
      fc.array(pieces).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...KINDS), (typed, kind) => {
        const read = readQuantity(typed, { kind, min: -100, max: 100, decimals: 0 });
        if (read.ok) expect(Math.abs(read.value)).toBeLessThanOrEqual(100);
        else expect(read.problem).toMatch(/^[\u201cA-Zd].*\.$/su);
      }),
    );
  });

  test('a field keeps what was typed, letter by letter', () => {
    fc.assert(
      fc.property(anyText(), (typed) => {
        expect(readField(typed, LEVEL).text).toBe(typed);
      }),
    );
  });
});

describe('a typed quantity', () => {
  test.each<[string, KindName, number]>([
    ['23dBm', 'level', 23],
    ['23 dBm', 'level', 23],
    ['-13,4', 'level', -13.4],
    ['\u221213.4\u00a0dBm', 'level', -13.4],
    ['\u20133 dBm', 'level', -3],
    ['+27', 'level', 27],
    ['0 dBW', 'level', 30],
    ['200 mW', 'power', 0.2],
    ['0,2 W', 'power', 0.2],
    ['200000 \u00b5W', 'power', 0.2],
    ['200000 \u03bcW', 'power', 0.2],
    ['30 dBm', 'power', 1],
    ['0 dBW', 'power', 1],
    ['1e-3', 'power', 0.001],
    ['2E2 mW', 'power', 0.2],
    ['3 dB', 'gain', 3],
    ['+/-0.5', 'halfWidth', 0.5],
    ['\u00b1 0,5 dB', 'halfWidthDb', 0.5],
    ['5 %', 'percent', 5],
    ['5%', 'percent', 5],
    ['100 ppm', 'percent', 0.01],
    ['5V', 'volts', 5],
    ['20 Vpp', 'voltsPeakToPeak', 20],
    ['20 V', 'voltsPeakToPeak', 20],
    ['10 Vp', 'voltsPeakToPeak', 20],
    ['50\u2126', 'ohms', 50],
    ['0.05 kohm', 'ohms', 50],
    ['3580 kHz', 'megahertz', 3.58],
    ['293.15 K', 'celsius', 20],
    ['20\u00b0C', 'celsius', 20],
    ['\uff12\uff13', 'number', 23],
    ['1\u2009000', 'number', 1000],
    ['1\u202f000', 'number', 1000],
  ])('%s as %s is %d', (text, kind, value) => {
    expect(meaning(text, kind)).toBeCloseTo(value, 12);
  });

  test('with a power of ten is the nearest double, and no zero has a sign', () => {
    expect(meaning('1.5e-3', 'number')).toBe(0.0015);
    expect(meaning('0.0000001e3', 'number')).toBeCloseTo(1e-4, 18);
    expect(meaning('-0', 'number')).toBe(0);
    expect(meaning('1000000000000000000000000e5', 'number')).toMatch(/above the largest/);
  });

  test('of 200 mW is a level of 23 dBm (common practice), of 5 V RMS 14.1 V peak to peak', () => {
    expect(meaning('200 mW', 'level')).toBeCloseTo(23, 1);
    expect(meaning('5 Vrms', 'voltsPeakToPeak')).toBeCloseTo(14.142, 3);
    expect(meaning('14.142 Vpp', 'voltsRms')).toBeCloseTo(5, 3);
  });

  test('in percent stays in percent where the statement decides what of', () => {
    expect(readQuantity('3 %', wide('halfWidth'))).toEqual({ ok: true, value: 3, unit: 'percent' });
    expect(readQuantity('3', wide('halfWidth'))).toEqual({ ok: true, value: 3, unit: 'dB' });
  });
});

describe('what is wrong with typed text is told, and what was expected', () => {
  const expected = `in dBm, dBW, W, mW or \u00b5W, for example 23${NBSP}dBm.`;

  test.each([
    ['', `Nothing is typed yet: a level is expected, ${expected}`],
    ['  ', `Nothing is typed yet: a level is expected, ${expected}`],
    ['loud', `\u201cloud\u201d is not a number: a level is expected, ${expected}`],
    ['-', `\u201c-\u201d is not a number: a level is expected, ${expected}`],
    ['NaN', `\u201cNaN\u201d is not a finite number: a level is expected, ${expected}`],
    ['-Infinity', `\u201c-Infinity\u201d is not a finite number: a level is expected, ${expected}`],
    ['1.2.3', `\u201c1.2.3\u201d is not one number: a level is expected, ${expected}`],
    ['5 V', `\u201cV\u201d does not fit: a level is expected, ${expected}`],
    ['5 furlongs', `\u201cfurlongs\u201d is not a unit known here: a level is expected, ${expected}`],
    ['0 W', `\u201c0 W\u201d has no value in dBm: a level is expected, ${expected}`],
    ['-1 mW', `\u201c-1 mW\u201d has no value in dBm: a level is expected, ${expected}`],
    ['\u00b13', `One number without \u00b1 goes here: a level is expected, ${expected}`],
    ['1,234', '\u201c1,234\u201d can mean 1.234 or 1234: write 1.234 or 1234.'],
    ['61', `\u201c61\u201d is above the largest value accepted here, 60${NBSP}dBm.`],
    ['-60.1', `\u201c-60.1\u201d is below the smallest value accepted here, \u221260${NBSP}dBm.`],
  ])('%s', (text, sentence) => {
    expect(problemOf(text, LEVEL)).toBe(sentence);
  });

  test('a ratio in place of a level, and a level in place of a ratio, get the reason', () => {
    expect(problemOf('30 dB', LEVEL)).toMatch(
      /^dB is a ratio and says nothing without .relative to what.\. A level is/,
    );
    expect(problemOf('3 dBm', GAIN)).toMatch(
      /^dBm is a level; a gain or a limit is a ratio and has dB\. A gain /,
    );
  });

  test('the limits themselves are accepted', () => {
    expect([problemOf('60', LEVEL), problemOf('-60', LEVEL)]).toEqual(['read as 60', 'read as -60']);
  });

  test('a power typed for a level keeps to the limits of the level', () => {
    expect(problemOf('2 kW', LEVEL)).toMatch(/does not fit/);
    expect(problemOf('2000 W', LEVEL)).toMatch(/above the largest value accepted here, 60/);
  });

  test('an absurdly wide limit and an endless one are told', () => {
    const limit: ReadSpec = { kind: 'halfWidth', min: 0, max: 20, decimals: 0 };
    expect(problemOf('500 dB', limit)).toBe(
      `\u201c500 dB\u201d is above the largest value accepted here, 20${NBSP}dB.`,
    );
    expect(problemOf('1e999', limit)).toMatch(/has no value in dB/);
    expect(problemOf('1e999 %', limit)).toMatch(/above the largest|has no value/);
    expect(problemOf('-0.5', limit)).toMatch(/below the smallest value accepted here, 0/);
  });

  test('a part of a reading is no count', () => {
    const count: ReadSpec = { kind: 'number', min: 1, max: 100, decimals: 0, whole: true };
    expect(problemOf('2.5', count)).toBe('\u201c2.5\u201d is not a whole number: one is expected.');
    expect(problemOf('3', count)).toBe('read as 3');
    expect(problemOf('3 dB', count)).toBe(
      '\u201cdB\u201d does not fit: a number without a unit is expected, for example 2.',
    );
  });

  test('a megabyte is answered shortly', () => {
    expect(problemOf('9'.repeat(1e6), LEVEL).length).toBeLessThan(200);
    expect(problemOf(' '.repeat(1e6), LEVEL)).toMatch(/^Nothing is typed yet/);
  });

  test('marks that turn the direction of writing are not repeated', () => {
    expect(problemOf('abc\u202edef\u0007', LEVEL)).toMatch(/^\u201cabcdef\u201d is not a number/);
  });

  test('two numbers are not one', () => {
    expect(problemOf('3-4 dB', GAIN)).toMatch(/is not a unit known here/);
    expect(problemOf('1/2', GAIN)).toMatch(/not a unit known here/);
  });
});

describe('spellings of units', () => {
  test('forgive the case of letters where nothing hangs on it', () => {
    expect(['dbm', 'DBM', 'DB', 'mw', 'khz', 'mhz', 'MHZ', 'OHM', 'v', 'vpp'].map(unitOf)).toEqual([
      'dBm',
      'dBm',
      'dB',
      'mW',
      'kHz',
      'MHz',
      'MHz',
      'ohm',
      'V',
      'Vpp',
    ] satisfies UnitName[]);
  });

  test('never take mega for milli or milli for mega', () => {
    expect(['MW', 'Mw', 'MV', 'MA', 'mHz', 'mHZ'].map(unitOf)).toEqual(Array(6).fill(undefined));
  });

  test('may hold spaces, and be absent', () => {
    expect([unitOf('V pp'), unitOf('V p-p'), unitOf(''), unitOf(' ')]).toEqual([
      'Vpp',
      'Vpp',
      'none',
      'none',
    ]);
  });
});

describe('a field', () => {
  test('is good with a value, and tells its problem otherwise', () => {
    const good = readField('1,5', GAIN);
    const bad = readField('x', GAIN);
    expect(good).toEqual({ text: '1,5', value: 1.5, unit: 'dB' });
    expect([isGood(good), isGood(bad)]).toEqual([true, false]);
    expect(bad).toMatchObject({ text: 'x', problem: expect.stringMatching(/is not a number/) });
  });
});
