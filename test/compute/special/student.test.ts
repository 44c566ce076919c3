import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalDensity, normalQuantile, normalShareBelow } from '../../../src/compute/special/normal.ts';
import { studentDensity, studentQuantile, studentShareBelow } from '../../../src/compute/special/student.ts';
import { answerOf, type GoldenRow, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

const degrees = fc.double({ min: 0.5, max: 1e6, noNaN: true });
const share = fc.double({ min: 1e-10, max: 1 - 1e-10, noNaN: true });
const at = (row: GoldenRow) => ({ t: row.inputs[0] as number, degreesOfFreedom: row.inputs[1] as number });

describe("Student's t", () => {
  test('quantile undoes share below, for any degrees', () => {
    fc.assert(
      fc.property(share, degrees, (p, degreesOfFreedom) => {
        const t = studentQuantile({ share: p, degreesOfFreedom });
        expect(relativeError(studentShareBelow({ t, degreesOfFreedom }), p)).toBeLessThan(1e-12);
      }),
    );
  });

  test('is symmetric: quantiles of mirrored shares are opposite', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 0.5, noNaN: true }), degrees, (p, degreesOfFreedom) => {
        const lower = studentQuantile({ share: p, degreesOfFreedom });
        const upper = studentQuantile({ share: 1 - p, degreesOfFreedom });
        // 1 - p is rounded: compare where its rounding cannot show.
        if (p > 1e-4) expect(Math.abs(upper + lower)).toBeLessThan(1e-9 * Math.abs(lower) + 1e-15);
        expect(lower).toBeLessThanOrEqual(0);
        expect(upper).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('more degrees make the tail thinner, down to the normal one', () => {
    fc.assert(
      fc.property(degrees, fc.double({ min: 1.1, max: 10, noNaN: true }), (n, factor) => {
        const k = (degreesOfFreedom: number) => studentQuantile({ share: 0.975, degreesOfFreedom });
        expect(k(n * factor)).toBeLessThan(k(n));
        expect(k(n * factor)).toBeGreaterThan(normalQuantile(0.975));
      }),
    );
  });

  test('the density is the slope of the share below', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), degrees, (t, degreesOfFreedom) => {
        const below = (x: number) => studentShareBelow({ t: x, degreesOfFreedom });
        expect((below(t + 1e-4) - below(t - 1e-4)) / 2e-4).toBeCloseTo(
          studentDensity({ t, degreesOfFreedom }),
          7,
        );
      }),
    );
  });

  test('density and tail agree with 50-digit values to 1e-12, 0.5 to 1e8 degrees', () => {
    const rows = [...special.student, ...special.studentManyDegrees];
    expect(
      offenders(rows, 1e-13, (row) => relativeError(studentDensity(at(row)), answerOf(row, 'density'))),
    ).toEqual([]);
    expect(
      offenders(rows, 1e-13, (row) =>
        relativeError(studentShareBelow({ ...at(row), t: -at(row).t }), answerOf(row, 'tail')),
      ),
    ).toEqual([]);
    expect(
      offenders(rows, 1e-15, (row) => Math.abs(studentShareBelow(at(row)) - (1 - answerOf(row, 'tail')))),
    ).toEqual([]);
  });

  test('quantiles agree with 50-digit values to 1e-13, near the median too', () => {
    const quantile = ({ inputs }: GoldenRow) =>
      studentQuantile({ share: inputs[0] as number, degreesOfFreedom: inputs[1] as number });
    expect(
      offenders(special.studentQuantile, 1e-13, (row) => relativeError(quantile(row), answerOf(row))),
    ).toEqual([]);
  });

  test('one degree is the arctangent, two a square root', () => {
    expect(studentShareBelow({ t: 3, degreesOfFreedom: 1 })).toBeCloseTo(0.5 + Math.atan(3) / Math.PI, 14);
    expect(studentShareBelow({ t: -3, degreesOfFreedom: 2 })).toBeCloseTo(0.5 - 3 / (2 * Math.sqrt(11)), 14);
    expect(studentQuantile({ share: 0.75, degreesOfFreedom: 1 })).toBeCloseTo(1, 14);
  });

  test('factors for 95 % are those of GUM table G.2', () => {
    const k = (degreesOfFreedom: number) => studentQuantile({ share: 0.975, degreesOfFreedom });
    const wanted = { 1: 12.71, 2: 4.3, 3: 3.18, 4: 2.78, 9: 2.26, 16: 2.12, 50: 2.01 };
    for (const [n, factor] of Object.entries(wanted)) expect(k(Number(n))).toBeCloseTo(factor, 2);
  });

  test('infinite degrees are the normal distribution', () => {
    const degreesOfFreedom = Number.POSITIVE_INFINITY;
    expect(studentQuantile({ share: 0.975, degreesOfFreedom })).toBe(normalQuantile(0.975));
    expect(studentShareBelow({ t: 1.5, degreesOfFreedom })).toBe(normalShareBelow(1.5));
    expect(studentDensity({ t: 1.5, degreesOfFreedom })).toBe(normalDensity(1.5));
  });

  test('so are as many as a double holds, and 1e15; a little fewer come as near as rounding lets them', () => {
    for (const degreesOfFreedom of [1e15, 1e155, 1e308]) {
      expect(studentQuantile({ share: 0.6, degreesOfFreedom })).toBe(normalQuantile(0.6));
      expect(studentShareBelow({ t: 1.5, degreesOfFreedom })).toBe(normalShareBelow(1.5));
      expect(studentDensity({ t: 1.5, degreesOfFreedom })).toBe(normalDensity(1.5));
    }
    for (const share of [1e-12, 0.025, 0.4, 0.75, 0.999])
      expect(
        relativeError(studentQuantile({ share, degreesOfFreedom: 9e14 }), normalQuantile(share)),
      ).toBeLessThan(1e-13);
  });

  test('ends and middle', () => {
    expect(studentQuantile({ share: 0, degreesOfFreedom: 3 })).toBe(Number.NEGATIVE_INFINITY);
    expect(studentQuantile({ share: 1, degreesOfFreedom: 3 })).toBe(Number.POSITIVE_INFINITY);
    expect(studentQuantile({ share: 0.5, degreesOfFreedom: 3 })).toBe(0);
    expect(studentShareBelow({ t: 0, degreesOfFreedom: 3 })).toBe(0.5);
    expect(studentShareBelow({ t: Number.POSITIVE_INFINITY, degreesOfFreedom: 3 })).toBe(1);
    expect(studentShareBelow({ t: Number.NEGATIVE_INFINITY, degreesOfFreedom: 3 })).toBe(0);
    expect(studentDensity({ t: Number.POSITIVE_INFINITY, degreesOfFreedom: 3 })).toBe(0);
  });

  test('refuses degrees not above zero, shares outside 0 to 1 and what is not a number', () => {
    expect(() => studentQuantile({ share: 0.9, degreesOfFreedom: 0 })).toThrow(
      new RangeError('studentQuantile: degreesOfFreedom must be > 0, got 0'),
    );
    expect(() => studentShareBelow({ t: 1, degreesOfFreedom: -1 })).toThrow(
      new RangeError('studentShareBelow: degreesOfFreedom must be > 0, got -1'),
    );
    expect(() => studentDensity({ t: 1, degreesOfFreedom: Number.NaN })).toThrow(
      new RangeError('studentDensity: degreesOfFreedom must be > 0, got NaN'),
    );
    expect(() => studentQuantile({ share: 1.5, degreesOfFreedom: 3 })).toThrow(
      new RangeError('studentQuantile: share must be 0 to 1, got 1.5'),
    );
    expect(() => studentShareBelow({ t: Number.NaN, degreesOfFreedom: 3 })).toThrow(
      new RangeError('studentShareBelow: t must be a number, got NaN'),
    );
    expect(() => studentDensity({ t: Number.NaN, degreesOfFreedom: 3 })).toThrow(
      new RangeError('studentDensity: t must be a number, got NaN'),
    );
  });
});
