import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readColumn, sideBySide } from '../../../src/text/read/column.ts';
import { plainReader } from '../../../src/text/read/plain-number.ts';
import { type ReadSpec, readQuantity, type Surroundings } from '../../../src/text/read/quantity.ts';
import { anyText } from '../any-text.ts';

const specs: readonly ReadSpec[] = [
  { kind: 'level', min: -60, max: 60, decimals: 0 },
  { kind: 'power', min: 0, max: 100, decimals: 0 },
  { kind: 'voltsPeakToPeak', min: 1e-6, max: 1e4, decimals: 0 },
  { kind: 'rise', min: 0, max: 100, decimals: 0 },
  { kind: 'halfWidth', min: 0, max: 100, decimals: 0 },
  { kind: 'number', min: 0, max: 1000, decimals: 0, whole: true },
];
const around: fc.Arbitrary<Surroundings> = fc.record({
  mark: fc.constantFrom<Surroundings['mark']>('.', ',', undefined),
  unit: fc.constant(undefined),
});
const numberLike = fc
  .tuple(
    fc.constantFrom('', '-', '+', ' ', '±', '−'),
    fc.oneof(fc.nat(99).map(String), fc.nat(99_999).map(String)),
    fc.constantFrom('', '.', ',', '..'),
    fc.oneof(fc.constant(''), fc.nat(9999).map(String), fc.constant('000')),
    fc.constantFrom('', ' ', 'dBm', ' mW', 'W', ' Vpp', 'mV', ' K', 'MW', 'e3', ' %', 'xyz', ' dBm '),
  )
  .map((parts) => parts.join(''));

describe('the short way to a number', () => {
  it('says what the long one says, or leaves it to that', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...specs),
        around,
        fc.oneof(numberLike, anyText()),
        (spec, nearby, text) => {
          const plain = plainReader(spec, nearby)(text);
          if (plain === undefined) return;
          expect(readQuantity(text, spec, nearby)).toMatchObject({ ok: true, value: plain.value });
        },
      ),
      { numRuns: 500 },
    );
  });

  it('is taken by what stands in most columns', () => {
    const [level, power, volts] = specs;
    if (!(level && power && volts)) throw new Error('wish three specs');
    expect(plainReader(level, {})('7.05')).toEqual({ value: 7.05, typed: 'none' });
    expect(plainReader(level, { mark: ',' })(' -7,125 dBm')).toEqual({ value: -7.125, typed: 'dBm' });
    expect(plainReader(power, {})('5 mW')).toEqual({ value: 0.005, typed: 'mW' });
    expect(plainReader(volts, { unit: 'mV' })('200')).toEqual({ value: 0.2, typed: 'none' });
  });

  it('is not taken where a comma can mean two things', () => {
    const [level] = specs;
    if (!level) throw new Error('wish a spec');
    expect(plainReader(level, {})('1,234')).toBeUndefined();
    expect(plainReader(level, { mark: '.' })('1,23')).toBeUndefined();
    expect(plainReader(level, { mark: ',' })('1.234')).toBeUndefined();
  });
});

describe('units in a column', () => {
  const power: ReadSpec = { kind: 'power', min: 0, max: 100, decimals: 0 };
  it.each([
    ['5 mW\n6 mW', false],
    ['5 mW\n0.006', true],
    ['5 mW\n0.006 W', false],
    ['0.005 W\n0.006', false],
    ['Power (mW)\n5\n6', false],
    ['Power (mW)\n5\n0.006 W', true],
    ['5 mW, 6', true],
    ['37 dBm\n5 W\n36.9 dBm', false],
  ])('of %j are mixed: %s', (text, mixed) => {
    expect(readColumn(text, power).mixed).toBe(mixed);
  });
});

describe('columns side by side', () => {
  it('are as many as every line has cells, set apart by tabs or semicolons', () => {
    expect(sideBySide('1\t2\n3\t4')).toEqual(['1\n3', '2\n4']);
    expect(sideBySide('1;2;3\r\n4; 5 ;6\n')).toEqual(['1\n4', '2\n5', '3\n6']);
    expect(sideBySide('a\tb')).toEqual(['a', 'b']);
    expect(sideBySide('1\t\n3\t4')).toEqual(['1\n3', '\n4']);
  });

  it('are none where the lines differ, in a row of semicolons, or in one column', () => {
    for (const text of ['', '1\n2', '1\t2\n3', '1;2;3', '7,1\n7,2']) expect(sideBySide(text)).toBeUndefined();
  });
});
