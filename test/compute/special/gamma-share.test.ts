import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { regularisedGamma } from '../../../src/compute/special/gamma-share.ts';
import { answerOf, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

describe('regularisedGamma', () => {
  const power = fc.double({ min: 0.02, max: 500, noNaN: true });
  const place = fc.double({ min: 0, max: 1500, noNaN: true });

  test('below and above make one', () => {
    fc.assert(
      fc.property(power, place, (a, x) => {
        const { below, above } = regularisedGamma({ a, x });
        expect(below + above).toBe(1);
        expect(Math.min(below, above)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('rises with x', () => {
    fc.assert(
      fc.property(power, place, place, (a, x1, x2) => {
        const [low, high] = [Math.min(x1, x2), Math.max(x1, x2)];
        expect(
          regularisedGamma({ a, x: high }).below - regularisedGamma({ a, x: low }).below,
        ).toBeGreaterThan(-1e-13);
      }),
    );
  });

  test('with power one it is the exponential distribution', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 600, noNaN: true }), (x) => {
        const { below, above } = regularisedGamma({ a: 1, x });
        expect(relativeError(above, Math.exp(-x))).toBeLessThan(1e-12 + (x < 2 ? 1e-15 / Math.exp(-x) : 0));
        expect(relativeError(below, -Math.expm1(-x))).toBeLessThan(1e-12);
      }),
    );
  });

  test('the smaller share agrees with 50-digit values to 1e-12, relative', () => {
    expect(
      offenders(special.regularisedGamma, 1e-12, (row) => {
        const [a, x] = row.inputs as [number, number];
        const name = answerOf(row, 'below') < 0.5 ? 'below' : 'above';
        return relativeError(regularisedGamma({ a, x })[name], answerOf(row, name));
      }),
    ).toEqual([]);
  });

  test('ends', () => {
    expect(regularisedGamma({ a: 2, x: 0 })).toEqual({ below: 0, above: 1 });
    expect(regularisedGamma({ a: 2, x: Number.POSITIVE_INFINITY })).toEqual({ below: 1, above: 0 });
  });

  test('refuses what lies outside its ranges', () => {
    expect(() => regularisedGamma({ a: 0, x: 1 })).toThrow(
      new RangeError('regularisedGamma: a must be > 0, got 0'),
    );
    expect(() => regularisedGamma({ a: 1, x: -1 })).toThrow(
      new RangeError('regularisedGamma: x must be >= 0, got -1'),
    );
    expect(() => regularisedGamma({ a: 1, x: Number.NaN })).toThrow(RangeError);
  });
});
