import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcsine, normalShareBelow, rectangular } from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import { combined, known, ofLimits, ofUShape } from '../../src/sheet/independent.ts';

const size = fc.double({ min: 0.001, max: 10, noNaN: true });

describe('limits as standard uncertainties', () => {
  it('are those of the shapes that they stand for', () => {
    fc.assert(
      fc.property(size, (half) => {
        const ends = { lower: -half, upper: half };
        expect(ofLimits(half)).toBeCloseTo(rectangular(ends).standardDeviation ?? Number.NaN, 9);
        expect(ofUShape(half)).toBeCloseTo(
          arcsine({ centre: 0, halfWidth: half }).standardDeviation ?? Number.NaN,
          9,
        );
      }),
    );
  });

  it('are nothing for no limits', () => expect([ofLimits(0), ofUShape(0)]).toEqual([0, 0]));
});

describe('independent parts put together', () => {
  it('are a right angle for two, in any order', () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const parts = [known('a', a), known('b', b)];
        expect(combined(parts)).toBeCloseTo(Math.sqrt(a * a + b * b), 9);
        expect(combined(parts.toReversed())).toBeCloseTo(combined(parts), 12);
      }),
    );
    expect(combined([known('a', 3), known('b', 4)])).toBe(5);
  });

  it('are never less than the largest, and nothing if there are none', () => {
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 8 }), (sizes) => {
        const parts = sizes.map((u, index) => known(String(index), u));
        expect(combined(parts)).toBeGreaterThanOrEqual(Math.max(...sizes) - 1e-12);
      }),
    );
    expect(combined([])).toBe(0);
  });

  it('have endless degrees of freedom where they are taken as known', () =>
    expect(known('a', 1).degreesOfFreedom).toBe(Number.POSITIVE_INFINITY));
});

describe('the coverage of certificates', () => {
  it('is what a bell holds within the coverage factor to either side', () => {
    expect(COVERAGE_PROBABILITY).toBeCloseTo(1 - 2 * normalShareBelow(-COVERAGE_FACTOR), 12);
  });
});
