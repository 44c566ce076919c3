import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { anyShape, anySymmetric } from './shapes.ts';

const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
/** Not so near 0 or 1 that the rounding of 1 - p shows in a long tail. */
const middling = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const widthOf = (d: Distribution) => d.quantile(0.75) - d.quantile(0.25);

describe('every shape', () => {
  test('share below undoes quantile', () => {
    fc.assert(
      fc.property(anyShape, share, (d, p) => {
        const x = d.quantile(p);
        // Next to a pole of the density, which a changed scale keeps, the share moves as the root of what rounding takes from x.
        const ends = [x, d.limits.lower, d.limits.upper].filter(Number.isFinite).map(Math.abs);
        const rounding = 4 * Number.EPSILON * Math.max(...ends);
        const tolerance = 1e-8 + d.shareBelow(x + rounding) - d.shareBelow(x - rounding);
        expect(Math.abs(d.shareBelow(x) - p)).toBeLessThan(tolerance);
      }),
    );
  });

  test('share below never falls, from 0 to 1', () => {
    fc.assert(
      fc.property(anyShape, share, share, (d, p1, p2) => {
        const [low, high] = [d.quantile(Math.min(p1, p2)), d.quantile(Math.max(p1, p2))];
        expect(low).toBeLessThanOrEqual(high);
        expect(d.shareBelow(low)).toBeGreaterThanOrEqual(0);
        expect(d.shareBelow(high) - d.shareBelow(low)).toBeGreaterThanOrEqual(-1e-12);
        expect(d.shareBelow(high)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('nothing lies outside its limits, and the shares 0 and 1 are the limits', () => {
    fc.assert(
      fc.property(anyShape, (d) => {
        const { lower, upper } = d.limits;
        expect(d.quantile(0)).toBeCloseTo(lower, 10);
        expect(d.quantile(1)).toBeCloseTo(upper, 10);
        const step = widthOf(d);
        if (Number.isFinite(lower)) {
          expect(d.shareBelow(lower - step)).toBe(0);
          expect(d.density(lower - step)).toBe(0);
        }
        if (Number.isFinite(upper)) {
          expect(d.shareBelow(upper + step)).toBe(1);
          expect(d.density(upper + step)).toBe(0);
        }
        expect(d.shareBelow(Number.NEGATIVE_INFINITY)).toBe(0);
        expect(d.shareBelow(Number.POSITIVE_INFINITY)).toBe(1);
      }),
    );
  });

  test('the density is the slope of the share below', () => {
    fc.assert(
      fc.property(anyShape, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (d, p) => {
        const x = d.quantile(p);
        const step = 1e-6 * widthOf(d);
        const slope = (d.shareBelow(x + step) - d.shareBelow(x - step)) / (2 * step);
        // A corner of the density may lie between the two places.
        const around = [d.density(x - step), d.density(x), d.density(x + step)];
        expect(slope).toBeGreaterThan(Math.min(...around) * (1 - 1e-5) - 1e-6 / widthOf(d));
        expect(slope).toBeLessThan(Math.max(...around) * (1 + 1e-5) + 1e-6 / widthOf(d));
      }),
    );
  });

  test('between two quantiles the density integrates to the share between', () => {
    fc.assert(
      fc.property(anyShape, (d) => {
        const [from, to] = [d.quantile(0.1), d.quantile(0.9)];
        const count = 4000;
        let sum = 0;
        for (let k = 0; k < count; k++) sum += d.density(from + ((k + 0.5) * (to - from)) / count);
        expect((sum * (to - from)) / count).toBeCloseTo(0.8, 3);
      }),
      { numRuns: 40 },
    );
  });

  test('mean and standard deviation are those of its quantiles', () => {
    fc.assert(
      fc.property(anyShape, (d) => {
        if (d.mean === undefined || d.standardDeviation === undefined || d.shape === 'student') return;
        const count = 20000;
        const values = Array.from({ length: count }, (_, k) => d.quantile((k + 0.5) / count));
        const mean = values.reduce((sum, x) => sum + x, 0) / count;
        const variance = values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / count;
        expect(Math.abs(mean - d.mean)).toBeLessThan(1e-4 * d.standardDeviation);
        expect(Math.abs(Math.sqrt(variance) / d.standardDeviation - 1)).toBeLessThan(2e-4);
      }),
      { numRuns: 60 },
    );
  });

  test('random values fall below its quartiles as often as they should', () => {
    fc.assert(
      fc.property(anyShape, fc.integer({ min: 1, max: 1e6 }), (d, seed) => {
        // A plain linear congruential generator (Park and Miller, 1988): enough to test shares to a few per cent.
        let state = seed;
        const random = () => {
          state = (state * 48271) % 2147483647;
          return state / 2147483647;
        };
        const values = Array.from({ length: 4000 }, () => d.sample(random));
        for (const p of [0.25, 0.5, 0.75]) {
          const below = values.filter((x) => x <= d.quantile(p)).length / values.length;
          expect(Math.abs(below - p)).toBeLessThan(0.05);
        }
        expect(values.every((x) => x >= d.limits.lower - 1e-9 && x <= d.limits.upper + 1e-9)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('refuses shares outside 0 to 1', () => {
    fc.assert(
      fc.property(anyShape, (d) => {
        expect(() => d.quantile(-0.01)).toThrow(new RangeError('quantile: share must be 0 to 1, got -0.01'));
        expect(() => d.quantile(1.01)).toThrow(new RangeError('quantile: share must be 0 to 1, got 1.01'));
        expect(() => d.quantile(Number.NaN)).toThrow(RangeError);
      }),
    );
  });
});

describe('every symmetric shape', () => {
  test('is mirrored about its middle', () => {
    fc.assert(
      fc.property(anySymmetric, fc.double({ min: 1e-4, max: 0.5, noNaN: true }), (d, p) => {
        const middle = d.quantile(0.5);
        const [low, high] = [d.quantile(p), d.quantile(1 - p)];
        expect(Math.abs(low + high - 2 * middle)).toBeLessThan(1e-8 * (high - low) + 1e-12);
      }),
    );
  });

  test('keeps its family when stretched, mirrored and moved', () => {
    fc.assert(
      fc.property(anySymmetric, fc.double({ min: -5, max: 5, noNaN: true }), (d, factor) => {
        fc.pre(Math.abs(factor) > 0.01);
        const other = scaled(d, { factor, shift: 3 });
        expect(other.shape).toBe(d.shape);
        expect(widthOf(other)).toBeCloseTo(Math.abs(factor) * widthOf(d), 8);
        expect(other.quantile(0.5)).toBeCloseTo(factor * d.quantile(0.5) + 3, 8);
      }),
    );
  });
});

describe('scaling', () => {
  test('moves every quantile by the same rule, mirrored for a negative factor', () => {
    fc.assert(
      fc.property(anyShape, middling, fc.constantFrom(-3, -1, 0.25, 2), (d, p, factor) => {
        const other = scaled(d, { factor, shift: -1 });
        const mirrored = factor < 0 ? 1 - p : p;
        const wanted = factor * d.quantile(p) - 1;
        expect(Math.abs(other.quantile(mirrored) - wanted)).toBeLessThan(
          1e-7 * Math.abs(factor) * widthOf(d) + 1e-9,
        );
        expect(other.standardDeviation ?? -1).toBeCloseTo(
          d.standardDeviation === undefined ? -1 : Math.abs(factor) * d.standardDeviation,
          9,
        );
      }),
    );
  });
});
