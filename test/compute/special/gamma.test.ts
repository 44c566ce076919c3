import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deviance } from '../../../src/compute/special/deviance.ts';
import { logGamma, stirlingError } from '../../../src/compute/special/gamma.ts';
import { answerOf, offenders } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

describe('logGamma', () => {
  test('one step up multiplies the gamma function by x (DLMF 5.5.1)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1e4, noNaN: true }), (x) => {
        expect(logGamma(x + 1)).toBeCloseTo(logGamma(x) + Math.log(x), 9);
      }),
    );
  });

  test('two halves make the double (DLMF 5.5.5)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 200, noNaN: true }), (x) => {
        const halves = logGamma(x) + logGamma(x + 0.5) + (2 * x - 1) * Math.LN2 - Math.log(Math.PI) / 2;
        expect(Math.abs(halves - logGamma(2 * x))).toBeLessThan(1e-12 * Math.max(1, x) ** 1.3);
      }),
    );
  });

  test('agrees with 50-digit values to 1e-14', () => {
    expect(
      offenders(special.logGamma, 1e-14, (row) => {
        const wanted = answerOf(row);
        return Math.abs(logGamma(row.inputs[0] as number) - wanted) / Math.max(1, Math.abs(wanted));
      }),
    ).toEqual([]);
  });

  test('whole numbers give logarithms of factorials', () => {
    expect(Math.exp(logGamma(6))).toBeCloseTo(120, 10);
    expect(Math.exp(logGamma(1))).toBeCloseTo(1, 14);
  });

  test('refuses zero, below zero, and what is not finite', () => {
    expect(() => logGamma(0)).toThrow(new RangeError('logGamma: x must be > 0, got 0'));
    expect(() => logGamma(-1.5)).toThrow('logGamma: x must be > 0, got -1.5');
    expect(() => logGamma(Number.NaN)).toThrow(RangeError);
  });
});

describe('stirlingError', () => {
  test('fades as 1/(12 x)', () => {
    expect(stirlingError(1e6) * 12e6).toBeCloseTo(1, 12);
    expect(stirlingError(10)).toBeGreaterThan(stirlingError(10.001));
    expect(stirlingError(9.999)).toBeGreaterThan(stirlingError(10));
  });

  test('at 1 it is 1 - ln(2 pi)/2, since the gamma function is 1 there', () => {
    expect(stirlingError(1)).toBeCloseTo(1 - Math.log(2 * Math.PI) / 2, 15);
  });
});

describe('deviance', () => {
  test('never lies below zero and vanishes only where both are equal', () => {
    const number = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, number, (a, m) => {
        expect(deviance({ a, m })).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(deviance({ a: 7, m: 7 })).toBe(0);
  });

  test('near equality it is (a - m)^2/(2 a), where the plain formula has lost all digits', () => {
    expect(deviance({ a: 1e9, m: 1e9 + 1 }) * 2e9).toBeCloseTo(1, 8);
    expect(deviance({ a: 1e9, m: 1e9 - 1 }) * 2e9).toBeCloseTo(1, 8);
  });

  test('the two ways of computing it meet at their border', () => {
    const plain = ({ a, m }: { a: number; m: number }) => a * Math.log(a / m) + m - a;
    for (const m of [1.2, 1.2222, 1.23, 0.8, 0.8182, 0.82])
      expect(deviance({ a: 1, m })).toBeCloseTo(plain({ a: 1, m }), 14);
  });
});
