import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { erf, erfc } from '../../../src/compute/special/erf.ts';
import { answerOf, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

const anyPlace = fc.double({ min: -30, max: 30, noNaN: true });

describe('erf and erfc', () => {
  test('together they make one', () => {
    fc.assert(
      fc.property(anyPlace, (x) => {
        expect(erf(x) + erfc(x)).toBeCloseTo(1, 15);
      }),
    );
  });

  test('erf is odd', () => {
    fc.assert(
      fc.property(anyPlace, (x) => {
        expect(erf(-x) + erf(x)).toBe(0);
      }),
    );
  });

  test('erfc never rises', () => {
    fc.assert(
      fc.property(anyPlace, fc.double({ min: 0, max: 1, noNaN: true }), (x, step) => {
        expect(erfc(x + step)).toBeLessThanOrEqual(erfc(x) * (1 + 1e-15));
      }),
    );
  });

  test('agree with 50-digit values to 1e-15 and 1e-14, relative', () => {
    const x = (row: { inputs: readonly number[] }) => row.inputs[0] as number;
    expect(offenders(special.erf, 1e-15, (row) => relativeError(erf(x(row)), answerOf(row, 'erf')))).toEqual(
      [],
    );
    expect(
      offenders(special.erf, 1e-14, (row) => relativeError(erfc(x(row)), answerOf(row, 'erfc'))),
    ).toEqual([]);
  });

  test('reach their limits at infinity', () => {
    expect(erfc(Number.POSITIVE_INFINITY)).toBe(0);
    expect(erfc(Number.NEGATIVE_INFINITY)).toBe(2);
    expect(erf(Number.POSITIVE_INFINITY)).toBe(1);
    expect(erf(Number.NEGATIVE_INFINITY)).toBe(-1);
    expect(erfc(27.1)).toBe(0);
    expect(erfc(26.5)).toBeGreaterThan(0);
  });

  test('refuse what is not a number', () => {
    expect(() => erf(Number.NaN)).toThrow(new RangeError('erf: x must be a number, got NaN'));
    expect(() => erfc(Number.NaN)).toThrow(new RangeError('erfc: x must be a number, got NaN'));
  });
});
