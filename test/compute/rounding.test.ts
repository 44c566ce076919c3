import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundToPlace, roundUncertainty } from '../../src/compute/rounding.ts';

const value = fc.double({ min: -1e9, max: 1e9, noNaN: true, noDefaultInfinity: true });
const place = fc.integer({ min: -8, max: 6 });
const mode = fc.constantFrom('nearest' as const, 'up' as const);

describe('laws of rounding to a place', () => {
  test('rounding what is rounded changes nothing', () => {
    fc.assert(
      fc.property(value, place, mode, (v, p, m) => {
        const once = roundToPlace({ value: v, place: p, mode: m });
        expect(roundToPlace({ value: once, place: p, mode: m })).toBe(once);
      }),
    );
  });

  test('the nearest rounding moves a value by half a place at most, the upward one by a whole place', () => {
    fc.assert(
      fc.property(value, place, (v, p) => {
        const noise = Math.abs(v) * 1e-13;
        expect(Math.abs(roundToPlace({ value: v, place: p }) - v)).toBeLessThanOrEqual(0.5 * 10 ** p + noise);
        const up = roundToPlace({ value: v, place: p, mode: 'up' });
        expect(Math.abs(up) - Math.abs(v)).toBeLessThanOrEqual(0.9 * 10 ** p + noise);
        expect(Math.abs(up) - Math.abs(v)).toBeGreaterThanOrEqual(-0.1 * 10 ** p - noise);
      }),
    );
  });

  test('rounding treats both signs alike', () => {
    fc.assert(
      fc.property(value, place, mode, (v, p, m) => {
        const rounded = roundToPlace({ value: v, place: p, mode: m });
        expect(roundToPlace({ value: -v, place: p, mode: m }) + rounded).toBe(0);
      }),
    );
  });

  test('a larger value never rounds to a smaller one', () => {
    fc.assert(
      fc.property(value, value, place, (a, b, p) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(roundToPlace({ value: low, place: p })).toBeLessThanOrEqual(
          roundToPlace({ value: high, place: p }),
        );
      }),
    );
  });
});

describe('rounding to a place', () => {
  test('the mean of the twenty temperatures is cut as the GUM prints it (4.4.3)', () => {
    expect(roundToPlace({ value: 100.145, place: -2 })).toBe(100.14);
  });

  test('a tie goes to the even digit from either side (ISO 80000-1, annex B)', () => {
    const cases: [number, number, number][] = [
      [0.5, 0, 0],
      [1.5, 0, 2],
      [2.5, 0, 2],
      [-2.5, 0, -2],
      [12.25, -1, 12.2],
      [12.35, -1, 12.4],
      [1.005, -2, 1],
      [1.015, -2, 1.02],
      [25, 1, 20],
      [35, 1, 40],
      [50, 2, 0],
      [150, 2, 200],
    ];
    for (const [v, p, wanted] of cases) expect(roundToPlace({ value: v, place: p })).toBe(wanted);
  });

  test('anything past the tie goes up and anything short of it down', () => {
    expect(roundToPlace({ value: 0.50001, place: 0 })).toBe(1);
    expect(roundToPlace({ value: 0.49999, place: 0 })).toBe(0);
    expect(roundToPlace({ value: 2.5000001, place: 0 })).toBe(3);
  });

  test('the noise of binary arithmetic decides no tie', () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(roundToPlace({ value: 0.1 + 0.2, place: -1, mode: 'up' })).toBe(0.3);
    expect(roundToPlace({ value: 1.1 + 2.2 + 0.05, place: -1 })).toBe(3.4);
  });

  test('a value far below the place becomes zero, and never minus zero', () => {
    expect(roundToPlace({ value: 0.004, place: 0 })).toBe(0);
    expect(Object.is(roundToPlace({ value: -0.004, place: 0 }), 0)).toBe(true);
    expect(roundToPlace({ value: 0.95, place: 1, mode: 'up' })).toBe(0);
    expect(roundToPlace({ value: 2, place: 1, mode: 'up' })).toBe(10);
  });

  test('a value with fewer digits than the place keeps is left alone', () => {
    for (const place of [-20, -15, -14]) expect(roundToPlace({ value: 1 / 3, place })).toBe(1 / 3);
    expect(roundToPlace({ value: 0, place: -3 })).toBe(0);
  });

  test('a carry runs through all the nines', () => {
    expect(roundToPlace({ value: 999.96, place: -1 })).toBe(1000);
    expect(roundToPlace({ value: 0.0996, place: -3 })).toBe(0.1);
  });

  test('a value or place that cannot be is refused by name', () => {
    expect(() => roundToPlace({ value: Number.NaN, place: 0 })).toThrow(
      'roundToPlace: value must be a finite number, got NaN',
    );
    expect(() => roundToPlace({ value: 1, place: 0.5 })).toThrow(
      'roundToPlace: place must be a whole number from -290 to 290, got 0.5',
    );
    expect(() => roundToPlace({ value: 1, place: 291 })).toThrow(RangeError);
    expect(() => roundToPlace({ value: 1, place: -291 })).toThrow(RangeError);
    expect(roundToPlace({ value: 1, place: 290 })).toBe(0);
  });
});

describe('rounding an uncertainty', () => {
  test('two significant digits at most, whatever the size', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1e12, noNaN: true }), mode, (u, m) => {
        const rounded = roundUncertainty({ uncertainty: u, mode: m });
        const digits = rounded.value.toExponential().replace(/e.*/, '').replace('.', '').replace(/0+$/, '');
        expect(digits.length).toBeLessThanOrEqual(2);
        expect(Math.abs(rounded.value / u - 1)).toBeLessThanOrEqual(m === 'up' ? 0.09 : 0.05);
        const place = rounded.place ?? Number.NaN;
        expect(rounded.value / 10 ** place).toBeLessThan(100);
        expect(rounded.value / 10 ** place).toBeGreaterThan(9);
      }),
    );
  });

  test('both published examples of rounding up come out as printed (GUM 7.2.6)', () => {
    expect(roundUncertainty({ uncertainty: 10.47, mode: 'up' })).toEqual({ value: 11, place: 0 });
    expect(roundUncertainty({ uncertainty: 28.05, mode: 'up' })).toEqual({ value: 28, place: 0 });
    expect(roundUncertainty({ uncertainty: 28.1, mode: 'up' })).toEqual({ value: 28, place: 0 });
    expect(roundUncertainty({ uncertainty: 28.11, mode: 'up' })).toEqual({ value: 29, place: 0 });
  });

  test('the estimate follows the place of its uncertainty (GUM 7.2.6: 10.057 62 ohm with 27 mohm)', () => {
    const { place } = roundUncertainty({ uncertainty: 0.027 });
    expect(place).toBe(-3);
    expect(roundToPlace({ value: 10.05762, place: place ?? 0 })).toBe(10.058);
  });

  test('a carry into a third digit gives up one place', () => {
    expect(roundUncertainty({ uncertainty: 0.0996 })).toEqual({ value: 0.1, place: -2 });
    expect(roundUncertainty({ uncertainty: 0.0994 })).toEqual({ value: 0.099, place: -3 });
    expect(roundUncertainty({ uncertainty: 0.96, digits: 1 })).toEqual({ value: 1, place: 0 });
    expect(roundUncertainty({ uncertainty: 0.94, digits: 1 })).toEqual({ value: 0.9, place: -1 });
  });

  test('large uncertainties are cut above the decimal point', () => {
    expect(roundUncertainty({ uncertainty: 12345 })).toEqual({ value: 12000, place: 3 });
    expect(roundUncertainty({ uncertainty: 12345, digits: 1 })).toEqual({ value: 10000, place: 4 });
  });

  test('no uncertainty fixes no place', () => {
    expect(roundUncertainty({ uncertainty: 0 })).toEqual({ value: 0, place: undefined });
  });

  test('an uncertainty that cannot be, or three digits of one, is refused', () => {
    for (const uncertainty of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => roundUncertainty({ uncertainty })).toThrow(
        `roundUncertainty: uncertainty must be >= 0, got ${uncertainty}`,
      );
    // @ts-expect-error: a third digit is no part of the type; callers without types are told too.
    expect(() => roundUncertainty({ uncertainty: 1, digits: 3 })).toThrow(
      'roundUncertainty: digits must be 1 or 2, got 3',
    );
  });
});
