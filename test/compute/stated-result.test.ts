import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { statedResult } from '../../src/compute/stated-result.ts';

const around = (estimate: number, minus: number, plus = minus) => ({
  estimate,
  interval: { lower: estimate - minus, upper: estimate + plus },
});

describe('a stated result', () => {
  test('value and ends agree with what is written beside them, digit for digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.double({ min: 1e-6, max: 100, noNaN: true }),
        fc.double({ min: 1e-6, max: 100, noNaN: true }),
        (estimate, minus, plus) => {
          const stated = statedResult(around(estimate, minus, plus));
          const unit = 10 ** (stated.place ?? Number.NaN);
          const counts = [
            stated.estimate,
            stated.minus,
            stated.plus,
            stated.interval.lower,
            stated.interval.upper,
          ];
          for (const shown of counts)
            expect(Math.abs(shown / unit - Math.round(shown / unit))).toBeLessThan(1e-3);
          expect(stated.interval.lower).toBeCloseTo(stated.estimate - stated.minus, 9);
          expect(stated.interval.upper).toBeCloseTo(stated.estimate + stated.plus, 9);
          expect(Math.max(stated.minus, stated.plus) / unit).toBeLessThan(99.5);
        },
      ),
    );
  });

  test('stating what is stated changes nothing', () => {
    const once = statedResult(around(26.8143, 2.468));
    expect(statedResult(once)).toEqual(once);
  });

  test('a symmetric one keeps one plus-or-minus: 100.021 47 g with U = 0.79 mg (GUM 7.2.4)', () => {
    // u_c = 0.35 mg, k = 2.26.
    const stated = statedResult(around(100.02147, 2.26 * 0.00035));
    expect(stated).toEqual({
      estimate: 100.02147,
      minus: 0.00079,
      plus: 0.00079,
      interval: { lower: 100.02068, upper: 100.02226 },
      symmetric: true,
      place: -5,
    });
  });

  test('the larger distance sets the place of a lopsided one', () => {
    expect(statedResult(around(478.63, 207.6, 365.3))).toEqual({
      estimate: 480,
      minus: 210,
      plus: 370,
      interval: { lower: 270, upper: 850 },
      symmetric: false,
      place: 1,
    });
    expect(statedResult(around(478.63, 365.3, 7.6)).plus).toBe(10);
  });

  test('one digit, or rounding up, is done where asked for', () => {
    expect(statedResult({ ...around(5.3, 0.141), digits: 1 })).toMatchObject({
      estimate: 5.3,
      plus: 0.1,
      place: -1,
    });
    expect(statedResult({ ...around(5.3, 0.141), mode: 'up' })).toMatchObject({
      estimate: 5.3,
      minus: 0.14,
      plus: 0.14,
    });
    expect(statedResult({ ...around(5.341, 0.1412), mode: 'up' })).toMatchObject({
      estimate: 5.34,
      plus: 0.15,
    });
  });

  test('without uncertainty the estimate stays as it is', () => {
    expect(statedResult(around(1 / 3, 0))).toEqual({
      estimate: 1 / 3,
      minus: 0,
      plus: 0,
      interval: { lower: 1 / 3, upper: 1 / 3 },
      symmetric: true,
      place: undefined,
    });
  });

  test('an estimate outside its interval, or an end without limit, is refused', () => {
    expect(() => statedResult({ estimate: 2, interval: { lower: 0, upper: 1 } })).toThrow(
      'statedResult: estimate must lie in the interval, got 2',
    );
    expect(() => statedResult({ estimate: -1, interval: { lower: 0, upper: 1 } })).toThrow(RangeError);
    expect(() =>
      statedResult({ estimate: 0, interval: { lower: Number.NEGATIVE_INFINITY, upper: 1 } }),
    ).toThrow('statedResult: interval.lower must be a finite number, got -Infinity');
    expect(() => statedResult({ estimate: 0, interval: { lower: 0, upper: Number.NaN } })).toThrow(
      'statedResult: interval.upper',
    );
    expect(() => statedResult({ estimate: Number.NaN, interval: { lower: 0, upper: 1 } })).toThrow(
      'statedResult: estimate',
    );
  });
});
