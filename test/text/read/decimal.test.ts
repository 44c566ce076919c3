import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDecimal } from '../../../src/text/read/decimal.ts';

const meaning = (text: string, mark?: '.' | ',') => {
  const read = readDecimal(text, mark);
  return read.ok ? read.value : read.reason;
};

describe('laws of typed decimals', () => {
  test('point and comma mean the same, but for three decimals after a comma, which may be thousands', () => {
    fc.assert(
      fc.property(fc.nat(99999), fc.nat(99999), fc.integer({ min: 1, max: 5 }), (whole, part, places) => {
        const decimals = String(part).padStart(5, '0').slice(0, places);
        const ambiguous = places === 3 && whole > 0 && whole < 1000;
        expect(meaning(`${whole}.${decimals}`)).toBe(Number(`${whole}.${decimals}`));
        expect(meaning(`${whole},${decimals}`)).toBe(
          ambiguous ? 'ambiguous' : Number(`${whole}.${decimals}`),
        );
        expect(meaning(`${whole},${decimals}`, ',')).toBe(Number(`${whole}.${decimals}`));
      }),
    );
  });

  test('thousands set off by any sign read as the number without it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1e6, max: 1e12 }), fc.constantFrom(' ', "'", '.', ','), (whole, sign) => {
        const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, sign);
        expect(meaning(grouped)).toBe(whole);
        expect(meaning(`${grouped}${sign === '.' ? ',' : '.'}25`)).toBe(whole + 0.25);
      }),
    );
  });

  test('any arrangement of digits and signs is read as a finite number or told, never guessed into NaN', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(..."0123456789.,' ")).map((c) => c.join('')),
        (text) => {
          const read = readDecimal(text);
          expect(read.ok ? Number.isFinite(read.value) : read.reason.length > 0).toBe(true);
        },
      ),
    );
  });
});

describe('a typed decimal', () => {
  test.each([
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1 000', 1000],
    ["1'000.5", 1000.5],
    ['1.049', 1.049],
    ['0,234', 0.234],
    ['1234,567', 1234.567],
    ['1,234,567', 1234567],
    ['1.234.567', 1234567],
    ['1 234 567,89', 1234567.89],
  ])('%s is %d', (text, value) => {
    expect(meaning(text)).toBe(value);
  });

  test('with one comma before three digits may mean two things, unless its column tells', () => {
    expect(meaning('1,234')).toBe('ambiguous');
    expect(meaning('1,234', ',')).toBe(1.234);
    expect(meaning('1,234', '.')).toBe(1234);
    expect(meaning('1.234', ',')).toBe(1234);
    expect(meaning('1.234', '.')).toBe(1.234);
  });

  test.each(['1 00', '1,23.5', '1.2.3', '1,23,456', '12 3456', '1,234.567.8', '.', ',', '0.000.000', '1, 5'])(
    '%s is not one number',
    (text) => {
      expect(meaning(text)).toBe('not-one-number');
    },
  );

  test('tells how it marked its decimals', () => {
    expect(readDecimal('1,5')).toEqual({ ok: true, value: 1.5, mark: ',' });
    expect(readDecimal('1 000')).toEqual({ ok: true, value: 1000, mark: undefined });
  });
});
