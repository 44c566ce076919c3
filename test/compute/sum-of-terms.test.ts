import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LimitTerm, sumOfTerms } from '../../src/compute/sum-of-terms.ts';

const size = fc.double({ min: 0, max: 100, noNaN: true });
const simple: fc.Arbitrary<LimitTerm> = fc.oneof(
  size.map((percent) => ({ of: 'reading', percent }) as const),
  fc.tuple(size, size).map(([percent, fullScale]) => ({ of: 'fullScale', percent, fullScale }) as const),
  fc.tuple(size, size).map(([count, step]) => ({ of: 'digits', count, step }) as const),
  size.map((amount) => ({ of: 'floor', amount }) as const),
);

describe('a limit made of terms', () => {
  test('terms add, in any order, and the sign of the reading plays no part', () => {
    fc.assert(
      fc.property(fc.array(simple, { maxLength: 5 }), size, (terms, reading) => {
        const { halfWidth, amounts } = sumOfTerms({ reading, terms });
        expect(amounts.reduce((a, b) => a + b, 0)).toBe(halfWidth);
        expect(sumOfTerms({ reading: -reading, terms })).toEqual({ halfWidth, amounts });
        const turned = sumOfTerms({ reading, terms: [...terms].reverse() }).halfWidth;
        expect(Math.abs(turned - halfWidth)).toBeLessThanOrEqual(1e-12 * halfWidth);
      }),
    );
  });

  test('14e-6 of a reading of 0.928 571 V and 2e-6 of a range of 1 V make 15 uV (GUM 4.3.7, example 2)', () => {
    const { halfWidth, amounts } = sumOfTerms({
      reading: 0.928571,
      terms: [
        { of: 'reading', percent: 14e-4 },
        { of: 'fullScale', percent: 2e-4, fullScale: 1 },
      ],
    });
    expect(halfWidth * 1e6).toBeCloseTo(15, 4);
    expect(amounts.map((a) => a * 1e6)).toEqual([expect.closeTo(13, 4), expect.closeTo(2, 9)]);
  });

  test('5 % of a 20 W scale is a third of a reading of 3 W', () => {
    const terms: LimitTerm[] = [{ of: 'fullScale', percent: 5, fullScale: 20 }];
    expect(sumOfTerms({ reading: 3, terms }).halfWidth).toBeCloseTo(1, 14);
  });

  test('digits count in steps, a floor stays, nothing gives nothing', () => {
    expect(sumOfTerms({ reading: 1, terms: [{ of: 'digits', count: 3, step: 0.01 }] }).halfWidth).toBeCloseTo(
      0.03,
      15,
    );
    expect(sumOfTerms({ reading: 1, terms: [{ of: 'floor', amount: 0.5 }] }).halfWidth).toBe(0.5);
    expect(sumOfTerms({ reading: 1, terms: [] })).toEqual({ halfWidth: 0, amounts: [] });
  });

  test('a term per kelvin counts only outside its range, on either side', () => {
    const at = (temperature: number) =>
      sumOfTerms({
        reading: 10,
        terms: [
          {
            of: 'kelvin',
            terms: [
              { of: 'reading', percent: 0.1 },
              { of: 'floor', amount: 0.01 },
            ],
            temperature,
            range: { lower: 18, upper: 28 },
          },
        ],
      }).halfWidth;
    expect(at(18)).toBe(0);
    expect(at(28)).toBe(0);
    expect(at(23)).toBe(0);
    expect(at(33)).toBeCloseTo(5 * 0.02, 14);
    expect(at(8)).toBeCloseTo(10 * 0.02, 14);
  });

  test('a term per year grows with the time since calibration', () => {
    const terms: LimitTerm[] = [{ of: 'year', terms: [{ of: 'reading', percent: 0.2 }], years: 2.5 }];
    expect(sumOfTerms({ reading: 100, terms }).halfWidth).toBeCloseTo(0.5, 14);
  });

  test('a range of one temperature is a range', () => {
    const term: LimitTerm = {
      of: 'kelvin',
      terms: [{ of: 'floor', amount: 0.5 }],
      temperature: 26,
      range: { lower: 23, upper: 23 },
    };
    expect(sumOfTerms({ reading: 1, terms: [term] }).halfWidth).toBe(1.5);
  });

  test('a number out of range is refused by name', () => {
    const refused: [LimitTerm, string][] = [
      [{ of: 'reading', percent: -1 }, 'sumOfTerms: percent must be >= 0, got -1'],
      [{ of: 'fullScale', percent: -1, fullScale: 1 }, 'percent must be >= 0'],
      [{ of: 'fullScale', percent: 1, fullScale: -1 }, 'fullScale must be >= 0'],
      [{ of: 'digits', count: -1, step: 1 }, 'count must be >= 0'],
      [{ of: 'digits', count: 1, step: -1 }, 'step must be >= 0'],
      [{ of: 'floor', amount: Number.NaN }, 'amount must be >= 0'],
      [{ of: 'year', terms: [], years: -1 }, 'years must be >= 0'],
      [
        { of: 'kelvin', terms: [], temperature: 20, range: { lower: 2, upper: 1 } },
        'sumOfTerms: range.lower must be <= range.upper, got [2,1]',
      ],
      [
        { of: 'kelvin', terms: [], temperature: Number.NaN, range: { lower: 1, upper: 2 } },
        'temperature must be a finite number',
      ],
    ];
    for (const [term, message] of refused)
      expect(() => sumOfTerms({ reading: 1, terms: [term] })).toThrow(message);
    expect(() => sumOfTerms({ reading: Number.NaN, terms: [] })).toThrow('sumOfTerms: reading');
  });
});
