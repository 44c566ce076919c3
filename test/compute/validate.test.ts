import { describe, expect, test } from 'vitest';
import { numericalTolerance, validatePropagation } from '../../src/compute/validate.ts';

describe('numerical tolerance', () => {
  test('the published examples come out (JCGM 101, 7.9.2)', () => {
    expect(numericalTolerance({ standardUncertainty: 0.00035, digits: 2 })).toBeCloseTo(0.000005, 15);
    expect(numericalTolerance({ standardUncertainty: 0.0004, digits: 1 })).toBeCloseTo(0.00005, 15);
    expect(numericalTolerance({ standardUncertainty: 2, digits: 1 })).toBe(0.5);
    // 9.2: u = 2.0 with two digits 0.05, with one 0.5.
    expect(numericalTolerance({ standardUncertainty: 2, digits: 2 })).toBeCloseTo(0.05, 15);
  });

  test('an uncertainty that rounds up to the next power of ten counts as that', () => {
    expect(numericalTolerance({ standardUncertainty: 0.0996, digits: 2 })).toBeCloseTo(0.005, 15);
    expect(numericalTolerance({ standardUncertainty: 0.0994, digits: 2 })).toBeCloseTo(0.0005, 15);
    expect(numericalTolerance({ standardUncertainty: 0.96, digits: 1 })).toBe(0.5);
  });

  test('no uncertainty, or a third digit, is refused', () => {
    expect(() => numericalTolerance({ standardUncertainty: 0, digits: 1 })).toThrow(
      'numericalTolerance: standardUncertainty must be > 0, got 0',
    );
    // @ts-expect-error: a third digit is no part of the type; callers without types are told too.
    expect(() => numericalTolerance({ standardUncertainty: 1, digits: 3 })).toThrow(
      'numericalTolerance: digits must be 1 or 2, got 3',
    );
  });
});

describe('validation against a simulation', () => {
  const mass = (lower: number, upper: number) =>
    validatePropagation({
      propagated: { lower, upper },
      simulated: { lower: 1.0834, upper: 1.3825 },
      standardUncertainty: 0.0754,
      digits: 1,
    });

  test('a mass comparison fails to first order and passes with second-order terms (JCGM 101, 9.3, table 6)', () => {
    const first = mass(1.1285, 1.3395);
    expect(first.tolerance).toBeCloseTo(0.005, 15);
    expect(first.lowDifference).toBeCloseTo(0.0451, 10);
    expect(first.highDifference).toBeCloseTo(0.043, 10);
    expect(first.valid).toBe(false);
    const second = mass(1.087, 1.381);
    expect(second.lowDifference).toBeCloseTo(0.0036, 10);
    expect(second.highDifference).toBeCloseTo(0.0015, 10);
    expect(second.valid).toBe(true);
  });

  test('one end too far off is enough to fail, whichever way', () => {
    expect(mass(1.0834, 1.3825).valid).toBe(true);
    expect(mass(1.0834 - 0.006, 1.3825).valid).toBe(false);
    expect(mass(1.0834, 1.3825 + 0.006).valid).toBe(false);
    expect(mass(1.0834 + 0.006, 1.3825).valid).toBe(false);
  });

  test('exactly at the tolerance passes', () => {
    const at = (d: number) =>
      validatePropagation({
        propagated: { lower: -1 - d, upper: 1 + d },
        simulated: { lower: -1, upper: 1 },
        standardUncertainty: 2,
        digits: 1,
      }).valid;
    expect(at(0.5)).toBe(true);
    expect(at(0.50001)).toBe(false);
  });

  test('an open interval is refused', () => {
    expect(() => mass(Number.NEGATIVE_INFINITY, 1)).toThrow(
      'validatePropagation: end of an interval must be a finite number, got -Infinity',
    );
  });
});
