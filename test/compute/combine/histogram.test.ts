import { describe, expect, test } from 'vitest';
import { histogramOf } from '../../../src/compute/combine/histogram.ts';

/** Evenly from 0 to `width`, largest first. */
const even = (width: number) => Float64Array.from({ length: 10_001 }, (_, k) => width * (1 - k / 10_000));
const binOf = (curve: readonly { x: number }[]) => (curve[1]?.x ?? 0) - (curve[0]?.x ?? 0);

describe('a histogram', () => {
  test('of even values is level at their density, with its middle where theirs is, at any size', () => {
    for (const width of [1e-6, 1, 1e6]) {
      const histogram = histogramOf();
      histogram.add(even(width));
      const curve = histogram.curve();
      const bin = binOf(curve);
      const share = curve.reduce((sum, { density }) => sum + density * bin, 0);
      const mean = curve.reduce((sum, { x, density }) => sum + x * density * bin, 0);
      expect(share).toBeCloseTo(1, 12);
      expect(mean / width).toBeCloseTo(0.5, 3);
      const middle = curve.filter(({ x }) => x > 0.1 * width && x < 0.9 * width);
      expect(middle.length).toBeGreaterThan(100);
      for (const { density } of middle) expect(Math.abs(density * width - 1)).toBeLessThan(0.05);
    }
  });

  test('leaves the row as it is', () => {
    const row = even(3);
    histogramOf().add(row);
    expect(row).toEqual(even(3));
  });

  test('counts its first and its last bin, and what lies beyond in the total alone', () => {
    const histogram = histogramOf();
    histogram.add(even(1));
    const before = histogram.curve();
    const bin = binOf(before);
    const [first, last] = [before[0]?.x ?? 0, before.at(-1)?.x ?? 0];
    const row = (x: number) => new Float64Array(10_001).fill(x);
    for (const x of [first, last, -1e9, 1e9]) histogram.add(row(x));
    const after = histogram.curve();
    // Five rows by now: a bin with a row of its own holds a fifth.
    expect((after[0]?.density ?? 0) * bin).toBeCloseTo(0.2, 12);
    expect((after.at(-1)?.density ?? 0) * bin).toBeCloseTo(0.2, 12);
    expect(after.reduce((sum, { density }) => sum + density * bin, 0)).toBeCloseTo(0.6, 12);
  });

  test('of one value over and over has room around it, and none drawn before the first row', () => {
    const histogram = histogramOf();
    expect(histogram.curve()).toEqual([]);
    histogram.add(new Float64Array(100).fill(7));
    const curve = histogram.curve();
    expect(curve[0]?.x).toBeCloseTo(6.005, 12);
    expect(curve.at(-1)?.x).toBeCloseTo(7.995, 12);
    expect(curve.reduce((sum, { density }) => sum + density * 0.01, 0)).toBeCloseTo(1, 12);
  });
});
