import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCorrectionTable, type TabledCorrection } from '../../src/compute/correction-table.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const table: fc.Arbitrary<readonly TabledCorrection[]> = fc.uniqueArray(
  fc.record({ at: fc.integer({ min: -60, max: 30 }), correction: number(-2, 2), expanded: number(0, 1) }),
  { selector: ({ at }) => at, minLength: 2, maxLength: 8 },
);
/** A table and a place within its ends. */
const read = fc.tuple(table, number(0, 1)).map(([points, share]) => {
  const places = points.map(({ at }) => at);
  const [low, high] = [Math.min(...places), Math.max(...places)];
  return { points, at: Math.min(high, low + share * (high - low)) };
});

describe('a table of corrections', () => {
  test('is met at each of its lines', () => {
    fc.assert(
      fc.property(table, (points) => {
        for (const { at, correction, expanded } of points)
          expect(readCorrectionTable({ points, at })).toEqual({ correction, expanded });
      }),
    );
  });

  test('gives between two lines nothing beyond them, and an uncertainty no smaller than the better of them', () => {
    fc.assert(
      fc.property(read, ({ points, at }) => {
        const { correction, expanded } = readCorrectionTable({ points, at });
        const sorted = points.toSorted((a, b) => a.at - b.at);
        const below = sorted.findLast((point) => point.at <= at);
        const above = sorted.find((point) => point.at >= at);
        const ends = [below?.correction ?? 0, above?.correction ?? 0];
        expect(correction).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-12);
        expect(correction).toBeLessThanOrEqual(Math.max(...ends) + 1e-12);
        expect(expanded).toBe(Math.max(below?.expanded ?? 0, above?.expanded ?? 0));
      }),
    );
  });

  test('does not hang on the order of its lines', () => {
    fc.assert(
      fc.property(read, ({ points, at }) => {
        expect(readCorrectionTable({ points: points.toReversed(), at })).toEqual(
          readCorrectionTable({ points, at }),
        );
      }),
    );
  });

  test('of a straight line is that line, whatever its lines', () => {
    fc.assert(
      fc.property(read, number(-1, 1), number(-0.1, 0.1), ({ points, at }, height, slope) => {
        const straight = points.map((point) => ({ ...point, correction: height + slope * point.at }));
        expect(readCorrectionTable({ points: straight, at }).correction).toBeCloseTo(height + slope * at, 9);
      }),
    );
  });

  // By hand: seven tenths of the way from 0.36 to 0.20.
  test('is read by proportion', () => {
    const points = [
      { at: -20, correction: 0.36, expanded: 0.1 },
      { at: -10, correction: 0.2, expanded: 0.08 },
    ];
    const { correction, expanded } = readCorrectionTable({ points, at: -13 });
    expect(correction).toBeCloseTo(0.248, 12);
    expect(expanded).toBe(0.1);
  });

  test('says nothing beyond its ends, and nothing with fewer than two lines', () => {
    const line = (at: number) => ({ at, correction: 0.1, expanded: 0.1 });
    const points = [line(-10), line(0)];
    for (const at of [-10.01, 0.01])
      expect(() => readCorrectionTable({ points, at })).toThrow(
        `readCorrectionTable: at must lie within the table, got ${at}`,
      );
    expect(() => readCorrectionTable({ points: [line(0)], at: 0 })).toThrow(/two or more/);
    expect(() => readCorrectionTable({ points: [line(0), line(0)], at: 0 })).toThrow(/different readings/);
    expect(() => readCorrectionTable({ points, at: Number.NaN })).toThrow(/at must be a finite/);
    const broken = (field: keyof TabledCorrection) => () =>
      readCorrectionTable({ points: [line(0), { ...line(1), [field]: Number.NaN }], at: 0 });
    expect(broken('at')).toThrow('readCorrectionTable: at must be a finite number, got NaN');
    expect(broken('correction')).toThrow('readCorrectionTable: correction must be a finite number, got NaN');
    expect(() => readCorrectionTable({ points: [line(0), { ...line(1), expanded: -1 }], at: 0 })).toThrow(
      /expanded/,
    );
  });
});
