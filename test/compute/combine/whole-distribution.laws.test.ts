import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wholeDistribution } from '../../../src/compute/combine/whole-distribution.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { anyShape, anySymmetric } from '../distribution/shapes.ts';

const parts = fc.array(anyShape, { minLength: 1, maxLength: 6 });
const share = fc.double({ min: 0.005, max: 0.995, noNaN: true });

function sumOf(distributions: readonly Distribution[], { constant = 0, coverageProbability = 0.95 } = {}) {
  const terms = distributions.map((distribution) => ({ distribution, sensitivity: 1 }));
  return wholeDistribution({ constant, terms, coverageProbability });
}

const widthOf = (d: { quantile(p: number): number }) => d.quantile(0.75) - d.quantile(0.25);
const runs = { numRuns: 60 };

describe('the whole distribution of a sum', () => {
  test('share below undoes quantile', () => {
    fc.assert(
      fc.property(parts, share, (distributions, p) => {
        const sum = sumOf(distributions);
        expect(Math.abs(sum.shareBelow(sum.quantile(p)) - p)).toBeLessThan(1e-7);
      }),
      runs,
    );
  });

  test('share below never falls by more than its error', () => {
    fc.assert(
      fc.property(parts, share, share, (distributions, p1, p2) => {
        const sum = sumOf(distributions);
        const [low, high] = [sum.quantile(Math.min(p1, p2)), sum.quantile(Math.max(p1, p2))];
        expect(high).toBeGreaterThanOrEqual(low - 1e-7 * widthOf(sum));
        const shares = Array.from({ length: 20 }, (_, k) => sum.shareBelow(low + (k / 19) * (high - low)));
        for (const [k, below] of shares.entries())
          if (k > 0) expect(below).toBeGreaterThanOrEqual((shares[k - 1] as number) - 1e-5);
      }),
      runs,
    );
  });

  test('means add, and variances add where all exist', () => {
    fc.assert(
      fc.property(parts, (distributions) => {
        const sum = sumOf(distributions, { constant: 3 });
        const means = distributions.map(({ mean }) => mean);
        const deviations = distributions.map(({ standardDeviation }) => standardDeviation);
        if (means.includes(undefined)) expect(sum.mean).toBeUndefined();
        else
          expect(sum.mean).toBeCloseTo(
            means.reduce<number>((total, mean) => total + (mean ?? 0), 3),
            8,
          );
        if (deviations.includes(undefined)) expect(sum.standardDeviation).toBeUndefined();
        else expect(sum.standardDeviation).toBeCloseTo(Math.hypot(...deviations.map((d) => d ?? 0)), 8);
      }),
      runs,
    );
  });

  test('its quantiles have that mean and standard deviation', () => {
    fc.assert(
      fc.property(parts, (distributions) => {
        fc.pre(distributions.every(({ shape }) => shape !== 'student'));
        const sum = sumOf(distributions);
        const count = 2000;
        const values = Array.from({ length: count }, (_, k) => sum.quantile((k + 0.5) / count));
        const mean = values.reduce((total, x) => total + x, 0) / count;
        const deviation = Math.sqrt(values.reduce((total, x) => total + (x - mean) ** 2, 0) / count);
        const wanted = sum.standardDeviation as number;
        expect(Math.abs(mean - (sum.mean as number))).toBeLessThan(1e-3 * wanted);
        expect(Math.abs(deviation / wanted - 1)).toBeLessThan(2e-3);
      }),
      { numRuns: 20 },
    );
  });

  test('the order of the parts does not matter', () => {
    fc.assert(
      fc.property(parts, (distributions) => {
        const [one, other] = [sumOf(distributions), sumOf([...distributions].reverse())];
        expect(Math.abs(one.symmetric.lower - other.symmetric.lower)).toBeLessThan(1e-7 * widthOf(one));
        expect(Math.abs(one.symmetric.upper - other.symmetric.upper)).toBeLessThan(1e-7 * widthOf(one));
      }),
      runs,
    );
  });

  test('a constant moves it, a sensitivity stretches or mirrors it', () => {
    fc.assert(
      fc.property(parts, fc.constantFrom(-2, -1, 0.5, 1000), (distributions, factor) => {
        const plain = sumOf(distributions);
        const terms = distributions.map((distribution) => ({ distribution, sensitivity: factor }));
        const stretched = wholeDistribution({ constant: 7, terms, coverageProbability: 0.95 });
        const ends = [plain.symmetric.lower, plain.symmetric.upper].map((x) => 7 + factor * x);
        const slack = 2e-6 * Math.abs(factor) * widthOf(plain);
        expect(Math.abs(stretched.symmetric.lower - Math.min(...ends))).toBeLessThan(slack);
        expect(Math.abs(stretched.symmetric.upper - Math.max(...ends))).toBeLessThan(slack);
      }),
      runs,
    );
  });

  test('adding a part never narrows the spread between the quartiles of symmetric parts with one peak', () => {
    const peaked = anySymmetric.filter(({ shape }) => shape !== 'arcsine');
    fc.assert(
      fc.property(fc.array(peaked, { minLength: 1, maxLength: 4 }), peaked, (distributions, one) => {
        expect(widthOf(sumOf([...distributions, one]))).toBeGreaterThan(
          widthOf(sumOf(distributions)) * (1 - 1e-6),
        );
      }),
      runs,
    );
  });

  test('a part alone is the part itself, and a sum with its own mirror image is symmetric', () => {
    fc.assert(
      fc.property(anyShape, share, (d, p) => {
        expect(sumOf([d]).quantile(p)).toBe(d.quantile(p));
        const mirrored = sumOf([d, scaled(d, { factor: -1, shift: 0 })]);
        expect(Math.abs(mirrored.quantile(p) + mirrored.quantile(1 - p))).toBeLessThan(
          1e-5 * widthOf(mirrored),
        );
      }),
      runs,
    );
  });

  test('the curve holds all but a thousandth and is never negative', () => {
    fc.assert(
      fc.property(parts, (distributions) => {
        const { curve } = sumOf(distributions);
        const spacing = (curve[1]?.x as number) - (curve[0]?.x as number);
        expect(curve.every(({ density }) => density >= 0)).toBe(true);
        const total = curve.reduce((sum, { density }) => sum + density * spacing, 0);
        expect(total).toBeGreaterThan(0.999);
        expect(total).toBeLessThan(1.0005);
      }),
      { numRuns: 30 },
    );
  });

  test('the shortest interval holds its share and is no longer than the symmetric one', () => {
    fc.assert(
      fc.property(parts, (distributions) => {
        const sum = sumOf(distributions);
        const { shortest, symmetric } = sum;
        if (shortest === undefined) return;
        expect(sum.shareBelow(shortest.upper) - sum.shareBelow(shortest.lower)).toBeCloseTo(0.95, 5);
        const [short, long] = [shortest.upper - shortest.lower, symmetric.upper - symmetric.lower];
        expect(short).toBeLessThan(long * (1 + 1e-5));
      }),
      runs,
    );
  });
});
