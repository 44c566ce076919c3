import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betaShare, regularisedBeta } from '../../../src/compute/special/beta.ts';
import { answerOf, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

const place = fc.double({ min: 0, max: 1, noNaN: true });
const power = fc.double({ min: 0.05, max: 300, noNaN: true });

describe('regularisedBeta', () => {
  test('mirrored place and powers give the rest', () => {
    fc.assert(
      fc.property(place, power, power, (x, a, b) => {
        expect(regularisedBeta({ x, a, b }) + betaShare({ x: 1 - x, y: x, a: b, b: a })).toBeCloseTo(1, 11);
      }),
    );
  });

  test('rises with x and stays between 0 and 1', () => {
    fc.assert(
      fc.property(place, place, power, power, (x1, x2, a, b) => {
        const [low, high] = [Math.min(x1, x2), Math.max(x1, x2)];
        const shares = [regularisedBeta({ x: low, a, b }), regularisedBeta({ x: high, a, b })] as const;
        expect(shares[0]).toBeGreaterThanOrEqual(0);
        expect(shares[1] - shares[0]).toBeGreaterThanOrEqual(-1e-12);
        expect(shares[1]).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  test('with powers of one it is the place itself', () => {
    fc.assert(
      fc.property(place, (x) => {
        expect(regularisedBeta({ x, a: 1, b: 1 })).toBeCloseTo(x, 14);
      }),
    );
  });

  test('agrees with 50-digit values to 1e-12', () => {
    expect(
      offenders(special.regularisedBeta, 1e-12, (row) => {
        const [x, a, b] = row.inputs as [number, number, number];
        const [got, wanted] = [regularisedBeta({ x, a, b }), answerOf(row)];
        return wanted < 0.5 ? relativeError(got, wanted) : Math.abs(got - wanted);
      }),
    ).toEqual([]);
  });

  test('powers of a hundred million neither stall nor lose digits', () => {
    // Far from the middle of a Beta(a, 1/2): the tail of t for a = n/2, checked against its normal limit.
    const ratio = 4 / 1e8;
    const tail = betaShare({ x: 1 / (1 + ratio), y: ratio / (1 + ratio), a: 5e7, b: 0.5 });
    expect(tail).toBeCloseTo(0.04550026389635842, 8);
  });

  test('ends', () => {
    expect(regularisedBeta({ x: 0, a: 2, b: 3 })).toBe(0);
    expect(regularisedBeta({ x: 1, a: 2, b: 3 })).toBe(1);
  });

  test('refuses places outside 0 to 1 and powers not above zero', () => {
    expect(() => regularisedBeta({ x: -0.1, a: 1, b: 1 })).toThrow(
      new RangeError('regularisedBeta: x must be 0 to 1, got -0.1'),
    );
    expect(() => regularisedBeta({ x: 1.1, a: 1, b: 1 })).toThrow('x must be 0 to 1, got 1.1');
    expect(() => regularisedBeta({ x: Number.NaN, a: 1, b: 1 })).toThrow(RangeError);
    expect(() => regularisedBeta({ x: 0.5, a: 0, b: 1 })).toThrow(
      new RangeError('regularisedBeta: a must be > 0, got 0'),
    );
    expect(() => regularisedBeta({ x: 0.5, a: 1, b: -1 })).toThrow(
      new RangeError('regularisedBeta: b must be > 0, got -1'),
    );
  });
});
