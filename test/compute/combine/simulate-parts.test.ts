import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { histogramOf } from '../../../src/compute/combine/histogram.ts';
import { deviationOf, joinMoments, momentsOf, NO_MOMENTS } from '../../../src/compute/combine/moments.ts';
import { sampleIntervals } from '../../../src/compute/combine/sample-intervals.ts';
import { blockTrials, hasSettled } from '../../../src/compute/combine/stop-rule.ts';
import { rowsFor } from '../../../src/compute/combine/trials.ts';
import { randomFrom } from '../../../src/compute/random.ts';

describe('intervals of a row of values (JCGM 101, 7.7)', () => {
  test('of 1 to 1000 the symmetric 95 % interval is 25 to 975', () => {
    const row = Float64Array.from({ length: 1000 }, (_, k) => 1000 - k);
    const { symmetric } = sampleIntervals(row, 0.95);
    // q = 950, r = (1000 - 950)/2 = 25: from the 25th to the 975th value.
    expect(symmetric).toEqual({ lower: 25, upper: 975 });
  });

  test('an odd rest is rounded up', () => {
    const row = Float64Array.from({ length: 100 }, (_, k) => k + 1);
    // q = 95, r = 2.5, taken as 3.
    expect(sampleIntervals(row, 0.95).symmetric).toEqual({ lower: 3, upper: 98 });
  });

  test('the shortest interval is where values crowd', () => {
    const row = Float64Array.from({ length: 1000 }, (_, k) => (k / 999) ** 2);
    const { shortest, symmetric } = sampleIntervals(row, 0.9);
    expect(shortest.lower).toBe(0);
    expect(shortest.upper).toBeCloseTo((900 / 999) ** 2, 12);
    expect(symmetric.lower).toBeGreaterThan(0);
  });

  test('no interval of the same count of values is shorter', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 10, maxLength: 200 }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        (list, p) => {
          const sorted = Float64Array.from(list).sort();
          const { shortest } = sampleIntervals(Float64Array.from(list), p);
          const q = Math.min(list.length - 1, Math.floor(p * list.length + 0.5));
          for (let r = 0; r + q < sorted.length; r++)
            expect(shortest.upper - shortest.lower).toBeLessThanOrEqual(
              (sorted[r + q] as number) - (sorted[r] as number),
            );
        },
      ),
    );
  });
});

describe('moments', () => {
  test('joined in any pieces they are those of all values', () => {
    const list = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 1, maxLength: 50 });
    fc.assert(
      fc.property(list, list, (a, b) => {
        const all = momentsOf(Float64Array.from([...a, ...b]));
        const joined = joinMoments(momentsOf(Float64Array.from(a)), momentsOf(Float64Array.from(b)));
        expect(joined.count).toBe(all.count);
        expect(joined.mean).toBeCloseTo(all.mean, 10);
        expect(joined.squares).toBeCloseTo(all.squares, 6);
      }),
    );
    expect(joinMoments(NO_MOMENTS, momentsOf(Float64Array.of(1, 3)))).toEqual({
      count: 2,
      mean: 2,
      squares: 2,
    });
  });

  test('far from zero nothing cancels: 10000001, 10000003, 10000002 scatter by 1 (NIST StRD NumAcc1)', () => {
    expect(deviationOf(momentsOf(Float64Array.of(10000001, 10000003, 10000002)))).toBe(1);
  });
});

describe('the stop rule (JCGM 101, 7.9.4)', () => {
  test('compares twice the standard deviation of the mean, not of a block', () => {
    // Blocks -1, 1, -1, 1: s = 2/sqrt 3, of the mean 1/sqrt 3, twice that 1.1547.
    const blocks = [[-1], [1], [-1], [1]];
    expect(hasSettled(blocks, 1.155)).toBe(true);
    expect(hasSettled(blocks, 1.154)).toBe(false);
  });

  test('wants every figure settled, and two blocks at least', () => {
    expect(
      hasSettled(
        [
          [1, 5],
          [1, 9],
        ],
        0.1,
      ),
    ).toBe(false);
    expect(hasSettled([[1], [1]], 0)).toBe(true);
    expect(hasSettled([[1]], 100)).toBe(false);
    expect(hasSettled([], 100)).toBe(false);
  });

  test('a block has 10 000 trials, more for coverage above 99 %', () => {
    expect(blockTrials(0.95)).toBe(10000);
    expect(blockTrials(0.99)).toBe(10000);
    expect(blockTrials(0.999)).toBe(100000);
  });

  test('rows divide a block evenly', () => {
    expect(rowsFor(10000)).toBe(3334);
    expect(rowsFor(4096)).toBe(4096);
    expect(rowsFor(5)).toBe(5);
  });
});

describe('the histogram', () => {
  test('shows the density of what was added', () => {
    const histogram = histogramOf();
    const random = randomFrom(12);
    const row = Float64Array.from({ length: 100000 }, () => 2 * random() - 1);
    histogram.add(row);
    const curve = histogram.curve();
    expect(curve).toHaveLength(200);
    const spacing = (curve[1]?.x as number) - (curve[0]?.x as number);
    expect(curve.reduce((sum, { density }) => sum + density * spacing, 0)).toBeCloseTo(1, 10);
    expect(curve.find(({ x }) => x > 0)?.density).toBeCloseTo(0.5, 1);
    expect(curve[0]?.density).toBe(0);
  });

  test('counts what lies beyond its ends without drawing it', () => {
    const histogram = histogramOf();
    histogram.add(Float64Array.from({ length: 1000 }, (_, k) => k / 1000));
    histogram.add(new Float64Array(1000).fill(50));
    histogram.add(new Float64Array(1000).fill(-50));
    const curve = histogram.curve();
    const spacing = (curve[1]?.x as number) - (curve[0]?.x as number);
    expect(curve.reduce((sum, { density }) => sum + density * spacing, 0)).toBeCloseTo(1 / 3, 10);
  });

  test('of one value alone has a width nevertheless, and empty it has no points', () => {
    const histogram = histogramOf();
    expect(histogram.curve()).toEqual([]);
    histogram.add(new Float64Array(10).fill(7));
    expect(histogram.curve().every(({ x, density }) => Number.isFinite(x) && Number.isFinite(density))).toBe(
      true,
    );
  });
});
