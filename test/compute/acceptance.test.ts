import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptedByProbability, narrowestSpan, probabilityWithin } from '../../src/compute/acceptance.ts';
import { arcsine } from '../../src/compute/distribution/arcsine.ts';
import type { Distribution } from '../../src/compute/distribution/distribution.ts';
import { normal } from '../../src/compute/distribution/normal.ts';
import { rectangular } from '../../src/compute/distribution/rectangular.ts';
import { scaled } from '../../src/compute/distribution/scaled.ts';
import { student } from '../../src/compute/distribution/student.ts';
import { transformed } from '../../src/compute/distribution/transformed.ts';

const bell = normal({ mean: 24, standardDeviation: 0.25 });
const few = student({ location: 24, scale: 0.25, degreesOfFreedom: 3 });
const box = rectangular({ lower: 23.5, upper: 24.5 });
/** Long on its upper side: the exponential of a normal. */
const lopsided = transformed({
  of: normal({ mean: 0, standardDeviation: 0.5 }),
  forward: Math.exp,
  inverse: Math.log,
  slope: Math.exp,
});
const belowZero = normal({ mean: -24, standardDeviation: 0.25 });
const shape = fc.constantFrom<Distribution>(bell, few, box, lopsided, belowZero);
const probability = fc.double({ min: 0.55, max: 0.99, noNaN: true });
const centreOf = (of: Distribution) => of.mean ?? of.quantile(0.5);

describe('the narrowest span of a probability', () => {
  test('holds that probability, and no other span that holds it is narrower', () => {
    fc.assert(
      fc.property(shape, probability, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (of, p, place) => {
        const { lower, upper } = narrowestSpan({ of, probability: p });
        expect(of.shareBelow(upper) - of.shareBelow(lower)).toBeCloseTo(p, 7);
        const tail = place * (1 - p);
        const other = of.quantile(tail + p) - of.quantile(tail);
        expect(upper - lower).toBeLessThanOrEqual(other + 1e-7);
      }),
    );
  });

  test('of a symmetric shape lies about its middle', () => {
    const { lower, upper } = narrowestSpan({ of: bell, probability: 0.95 });
    expect(lower).toBeCloseTo(24 - 1.959964 * 0.25, 5);
    expect(upper).toBeCloseTo(24 + 1.959964 * 0.25, 5);
  });

  test('of a lopsided shape lies nearer to its short side than equal tails do', () => {
    const { lower, upper } = narrowestSpan({ of: lopsided, probability: 0.95 });
    expect(lower).toBeLessThan(lopsided.quantile(0.025));
    expect(upper).toBeLessThan(lopsided.quantile(0.975));
    // At both ends the density is the same: the condition of the shortest interval.
    expect(lopsided.density(lower) / lopsided.density(upper)).toBeCloseTo(1, 2);
  });

  test('of a density that rises to an end, or falls from one, lies at that end', () => {
    // The larger of two uniform values: share y^2 below y; the smaller is its mirror image.
    const of = transformed({
      of: rectangular({ lower: 0, upper: 1 }),
      forward: Math.sqrt,
      inverse: (y) => y * y,
      slope: (x) => 0.5 / Math.sqrt(x),
    });
    const rising = narrowestSpan({ of, probability: 0.64 });
    expect(rising.lower).toBeCloseTo(0.6, 8);
    expect(rising.upper).toBeCloseTo(1, 8);
    const falling = narrowestSpan({ of: scaled(of, { factor: -1, shift: 1 }), probability: 0.64 });
    expect(falling.lower).toBeCloseTo(0, 8);
    expect(falling.upper).toBeCloseTo(0.4, 8);
  });

  test('of a U shape is found at an end, though two pieces would be narrower', () => {
    const { lower, upper } = narrowestSpan({ of: arcsine({ centre: 0, halfWidth: 1 }), probability: 0.6 });
    expect(Math.min(Math.abs(lower + 1), Math.abs(upper - 1))).toBeCloseTo(0, 5);
  });
});

describe('estimates that a required probability accepts', () => {
  const accepted = (of: Distribution, tolerance: { lower: number; upper: number }, p: number) =>
    acceptedByProbability({ of, estimate: centreOf(of), tolerance, probability: p });
  const shifted = (of: Distribution, tolerance: { lower: number; upper: number }, estimate: number) => {
    const shift = estimate - centreOf(of);
    return probabilityWithin(of, { lower: tolerance.lower - shift, upper: tolerance.upper - shift });
  };

  test('reach it within their limits and miss it just outside', () => {
    fc.assert(
      fc.property(shape, probability, fc.double({ min: 0.1, max: 10, noNaN: true }), (of, p, width) => {
        const tolerance = { lower: 10, upper: 10 + width };
        const limits = accepted(of, tolerance, p);
        if (limits === undefined) {
          for (let i = 0; i <= 20; i++)
            expect(shifted(of, tolerance, 10 + (width * i) / 20)).toBeLessThan(p + 1e-9);
          return;
        }
        expect(shifted(of, tolerance, limits.lower)).toBeGreaterThanOrEqual(p - 1e-6);
        expect(shifted(of, tolerance, limits.upper)).toBeGreaterThanOrEqual(p - 1e-6);
        expect(shifted(of, tolerance, (limits.lower + limits.upper) / 2)).toBeGreaterThanOrEqual(p - 1e-6);
        expect(shifted(of, tolerance, limits.lower - 1e-4)).toBeLessThan(p);
        expect(shifted(of, tolerance, limits.upper + 1e-4)).toBeLessThan(p);
      }),
    );
  });

  test('with one limit only the tail towards it counts', () => {
    const over = accepted(bell, { lower: 23, upper: Number.POSITIVE_INFINITY }, 0.95);
    expect(over?.lower).toBeCloseTo(23 + 1.644854 * 0.25, 5);
    expect(over?.upper).toBe(Number.POSITIVE_INFINITY);
    const under = accepted(bell, { lower: Number.NEGATIVE_INFINITY, upper: 25 }, 0.95);
    expect(under?.lower).toBe(Number.NEGATIVE_INFINITY);
    expect(under?.upper).toBeCloseTo(25 - 1.644854 * 0.25, 5);
  });

  test('in a wide tolerance each limit keeps the distance of one limit alone', () => {
    const limits = accepted(bell, { lower: 20, upper: 30 }, 0.95);
    expect(limits?.lower).toBeCloseTo(20 + 1.644854 * 0.25, 5);
    expect(limits?.upper).toBeCloseTo(30 - 1.644854 * 0.25, 5);
  });

  test('there are none where the narrowest span is wider than the tolerance', () => {
    const span = 2 * 1.959964 * 0.25;
    expect(accepted(bell, { lower: 0, upper: span * 0.9999 }, 0.95)).toBe(undefined);
    expect(accepted(bell, { lower: 0, upper: span * 1.0001 }, 0.95)).not.toBe(undefined);
  });
});

describe('a tolerance as wide as the span', () => {
  const tolerance = { lower: 0, upper: 1 };

  test('accepts its own middle alone', () => {
    const of = rectangular({ lower: -1, upper: 1 });
    const accepted = acceptedByProbability({ of, estimate: 0, tolerance, probability: 0.5 });
    expect(accepted).toEqual({ lower: 0.5, upper: 0.5 });
  });

  test('accepts some where the narrowest span fits, though equal tails would not', () => {
    const equalTails = lopsided.quantile(0.975) - lopsided.quantile(0.025);
    const narrowest = narrowestSpan({ of: lopsided, probability: 0.95 });
    const room = (equalTails + narrowest.upper - narrowest.lower) / 2;
    const accepted = acceptedByProbability({
      of: lopsided,
      estimate: 0,
      tolerance: { lower: 0, upper: room },
      probability: 0.95,
    });
    expect(accepted?.upper).toBeGreaterThan(accepted?.lower ?? Number.NaN);
  });

  test('and any other accepts the same in whatever unit', () => {
    const limitsIn = (unit: number) => {
      const accepted = acceptedByProbability({
        of: scaled(lopsided, { factor: unit, shift: 0 }),
        estimate: unit,
        tolerance: { lower: 0, upper: 4 * unit },
        probability: 0.95,
      });
      return [accepted?.lower, accepted?.upper].map((limit) => (limit ?? Number.NaN) / unit);
    };
    const plain = limitsIn(1);
    for (const unit of [1e-6, 1e6])
      limitsIn(unit).forEach((limit, i) => {
        expect(limit).toBeCloseTo(plain[i] as number, 7);
      });
  });
});

describe('probability within limits', () => {
  test('an open side holds all of its tail', () => {
    const all = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };
    expect(probabilityWithin(bell, all)).toBe(1);
    expect(probabilityWithin(bell, { ...all, upper: 24 })).toBe(0.5);
    expect(probabilityWithin(bell, { ...all, lower: 24 })).toBe(0.5);
    expect(probabilityWithin(box, { lower: 23.75, upper: 24.25 })).toBeCloseTo(0.5, 12);
  });
});
