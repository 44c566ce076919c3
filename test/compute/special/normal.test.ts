import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalDensity, normalQuantile, normalShareBelow } from '../../../src/compute/special/normal.ts';
import { answerOf, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

const share = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });

describe('the normal distribution', () => {
  test('quantile undoes share below', () => {
    fc.assert(
      fc.property(share, (p) => {
        expect(relativeError(normalShareBelow(normalQuantile(p)), p)).toBeLessThan(1e-13);
      }),
    );
  });

  test('as much lies below -z as above z', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (z) => {
        expect(normalShareBelow(-z) + normalShareBelow(z)).toBeCloseTo(1, 15);
        expect(normalDensity(-z)).toBe(normalDensity(z));
      }),
    );
  });

  test('the density is the slope of the share below', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (z) => {
        const slope = (normalShareBelow(z + 1e-4) - normalShareBelow(z - 1e-4)) / 2e-4;
        expect(slope).toBeCloseTo(normalDensity(z), 8);
      }),
    );
  });

  test('share below agrees with 50-digit values to 1e-13, down to 37 standard deviations', () => {
    expect(
      offenders(special.normalShareBelow, 1e-13, (row) =>
        relativeError(normalShareBelow(row.inputs[0] as number), answerOf(row)),
      ),
    ).toEqual([]);
  });

  test('quantiles agree with 50-digit values to 1e-14, down to a share of 1e-300', () => {
    expect(
      offenders(special.normalQuantile, 1e-14, (row) =>
        relativeError(normalQuantile(row.inputs[0] as number), answerOf(row)),
      ),
    ).toEqual([]);
  });

  test('95 % lies within 1.960 and 99 % within 2.576 standard deviations (GUM table G.1)', () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.96, 3);
    expect(normalQuantile(0.995)).toBeCloseTo(2.576, 3);
    expect(normalShareBelow(1) - normalShareBelow(-1)).toBeCloseTo(0.6827, 4);
  });

  test('ends and middle', () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(normalQuantile(0.5)).toBe(0);
    expect(normalShareBelow(0)).toBe(0.5);
    expect(normalShareBelow(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalShareBelow(Number.POSITIVE_INFINITY)).toBe(1);
    expect(normalDensity(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 16);
  });

  test('refuses shares outside 0 to 1 and what is not a number', () => {
    expect(() => normalQuantile(-0.1)).toThrow(
      new RangeError('normalQuantile: share must be 0 to 1, got -0.1'),
    );
    expect(() => normalQuantile(1.1)).toThrow(
      new RangeError('normalQuantile: share must be 0 to 1, got 1.1'),
    );
    expect(() => normalQuantile(Number.NaN)).toThrow(RangeError);
    expect(() => normalShareBelow(Number.NaN)).toThrow(
      new RangeError('normalShareBelow: z must be a number, got NaN'),
    );
  });
});
