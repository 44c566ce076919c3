import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { suspectOf } from '../../src/compute/outlier.ts';

/** Readings of the worked example of the NIST/SEMATECH e-Handbook, 1.3.5.17.1; its printed values from memory. */
const handbook = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

describe('a reading that stands off', () => {
  test('the published example is pointed at with G = 2.4687 (NIST/SEMATECH e-Handbook, 1.3.5.17.1)', () => {
    const suspect = suspectOf({ values: handbook });
    expect(suspect).toMatchObject({ index: 7, value: 245.57, suspicious: true });
    expect(Math.abs((suspect?.statistic ?? 0) - 2.4687)).toBeLessThan(1e-4);
    // The handbook tests one side at 5 % (2.032): the same as both sides at 10 %.
    expect(suspectOf({ values: handbook, significance: 0.1 })?.critical).toBeCloseTo(2.032, 3);
  });

  test('no other reading of it is', () => {
    const rest = suspectOf({ values: handbook.slice(0, -1) });
    expect(rest?.suspicious).toBe(false);
  });

  test('unit, shift and sign of the readings play no part', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 3, maxLength: 12 }),
        fc.constantFrom(-3, 0.5, 8),
        fc.integer({ min: -50, max: 50 }),
        (values, factor, shift) => {
          const one = suspectOf({ values });
          const other = suspectOf({ values: values.map((x) => factor * x + shift) });
          expect(other?.statistic ?? 0).toBeCloseTo(one?.statistic ?? 0, 9);
          expect(other?.critical).toBe(one?.critical);
        },
      ),
    );
  });

  test('a distance never exceeds (n - 1)/sqrt(n), so three readings can hardly accuse one', () => {
    const suspect = suspectOf({ values: [0, 0, 1e6] });
    expect(suspect?.statistic).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(suspect?.critical).toBeLessThan(2 / Math.sqrt(3));
    expect(suspect?.critical).toBeCloseTo(1.1543, 3);
  });

  test('a stricter significance accuses less', () => {
    const criticals = [0.2, 0.1, 0.05, 0.01].map(
      (significance) => suspectOf({ values: handbook, significance })?.critical,
    );
    expect([...criticals].sort((a, b) => (a ?? 0) - (b ?? 0))).toEqual(criticals);
  });

  test('equal readings have no suspect', () => {
    expect(suspectOf({ values: [5, 5, 5] })).toBe(undefined);
  });

  test('the first of two equally far is named', () => {
    expect(suspectOf({ values: [-1, 0, 0, 1] })?.index).toBe(0);
  });

  test('fewer than three readings, or a significance that is none, are refused', () => {
    expect(() => suspectOf({ values: [1, 2] })).toThrow('suspectOf: there must be 3 or more readings, got 2');
    expect(() => suspectOf({ values: handbook, significance: 1 })).toThrow(
      'suspectOf: significance must be above 0 and below 1, got 1',
    );
  });
});
