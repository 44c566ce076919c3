import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numeric } from '../../../src/compute/distribution/numeric.ts';
import {
  halfTurnPhases,
  levelAt,
  randomCosine,
  randomDirection,
  shareOfPhases,
  slopeOfPhases,
} from '../../../src/compute/distribution/phase.ts';
import { isMember, memberOf, quantileFromAbove } from '../../../src/compute/distribution/standard.ts';
import { trapezoidShape } from '../../../src/compute/distribution/trapezoid-shape.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { dilogarithm } from '../../../src/compute/special/dilogarithm.ts';
import { anyShape, inDecibels } from './shapes.ts';

describe('a shape known by its share below', () => {
  const triangle = triangular({ lower: -1, upper: 3 });
  const asked: number[] = [];
  const made = numeric({
    shape: 'mismatch',
    mean: 1,
    standardDeviation: triangle.standardDeviation,
    limits: { lower: -1, upper: 3 },
    middle: 1,
    sample: () => 0.5,
    at: (x) => {
      asked.push(x);
      return { value: triangle.shareBelow(x), slope: triangle.density(x) };
    },
  });

  test('is asked for it once, on first use', () => {
    expect(asked).toHaveLength(0);
    made.quantile(0.3);
    expect(asked).toHaveLength(192);
    made.shareBelow(0.7);
    made.density(0.7);
    expect(asked).toHaveLength(192);
    expect(asked.every((x, k) => k === 0 || x > (asked[k - 1] as number))).toBe(true);
  });

  test('has its shares, densities and quantiles between the places asked', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (p) => {
        const x = triangle.quantile(p);
        expect(made.quantile(p)).toBeCloseTo(x, 8);
        expect(made.shareBelow(x)).toBeCloseTo(p, 9);
        expect(made.density(x)).toBeCloseTo(triangle.density(x), 4);
      }),
    );
  });

  test('passes on what it was given', () => {
    expect(made.shape).toBe('mismatch');
    expect(made.mean).toBe(1);
    expect(made.standardDeviation).toBe(triangle.standardDeviation);
    expect(made.sample(() => 0)).toBe(0.5);
  });

  test('ends where its limits are', () => {
    expect([-2, -1, 3, 4].map((x) => made.shareBelow(x))).toEqual([0, 0, 1, 1]);
    expect([-2, -1, 3, 4].map((x) => made.density(x))).toEqual([0, 0, 0, 0]);
    expect([made.quantile(0), made.quantile(1)]).toEqual([-1, 3]);
  });
});

// The cubic 3 x^2 - 2 x^3, whose density 6 x (1 - x) vanishes at both ends: what joins the places is such a cubic itself.
describe('a shape whose share below is a cubic', () => {
  const shareAt = (x: number) => x * x * (3 - 2 * x);
  const cubic = (from: number, width: number) =>
    numeric({
      shape: 'mismatch',
      mean: from + width / 2,
      standardDeviation: width * Math.sqrt(0.05),
      limits: { lower: from, upper: from + width },
      middle: from + width / 2,
      sample: () => from,
      at: (x) => {
        const part = (x - from) / width;
        return { value: shareAt(part), slope: (6 * part * (1 - part)) / width };
      },
    });

  test('is met exactly, up to its very ends', () => {
    const d = cubic(0, 1);
    for (const x of [1e-6, 1e-5, 3e-5, 0.01, 0.3]) {
      expect(d.shareBelow(x) / shareAt(x)).toBeCloseTo(1, 9);
      expect(1 - d.shareBelow(1 - x)).toBeCloseTo(shareAt(x), 14);
      expect(d.density(x)).toBeCloseTo(6 * x * (1 - x), 9);
      expect(d.density(1 - x)).toBeCloseTo(6 * x * (1 - x), 9);
      expect(d.quantile(shareAt(x))).toBeCloseTo(x, 11);
    }
  });

  test('is so at any width and wherever it stands', () => {
    for (const x of [0.1, 0.13, 0.17, 0.22, 0.3, 0.77]) {
      expect(cubic(0, 1e-6).quantile(shareAt(x)) / 1e-6).toBeCloseTo(x, 10);
      // So far out numbers are held to 1.2e-7.
      expect(Math.abs(cubic(1e9, 1).quantile(shareAt(x)) - 1e9 - x)).toBeLessThan(1e-6);
    }
  });
});

describe('phases', () => {
  const radius = fc.double({ min: 0.001, max: 0.99, noNaN: true });

  test('the share of phases within an amplitude is that of many phases counted', () => {
    fc.assert(
      fc.property(radius, fc.double({ min: 0.05, max: 1.95, noNaN: true }), (r, amplitude) => {
        const phases = halfTurnPhases(2000);
        const within = phases.filter(
          (phase) => Math.hypot(1 - r * Math.cos(phase), r * Math.sin(phase)) <= amplitude,
        );
        expect(Math.abs(shareOfPhases(r, amplitude) - within.length / 2000)).toBeLessThan(1e-3);
      }),
    );
  });

  test('its slope is per dB of the level', () => {
    fc.assert(
      fc.property(radius, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (r, part) => {
        const level = levelAt(r, Math.cos(Math.PI * part));
        const share = (x: number) => shareOfPhases(r, 10 ** (x / 20));
        const step = 1e-5 * r;
        const slope = (share(level + step) - share(level - step)) / (2 * step);
        expect(slope / slopeOfPhases(r, 10 ** (level / 20))).toBeCloseTo(1, 4);
      }),
    );
  });

  test('no phase reaches beyond the circle, all lie within', () => {
    expect(shareOfPhases(0.5, 0.5)).toBe(0);
    expect(shareOfPhases(0.5, 0.49)).toBe(0);
    expect(shareOfPhases(0.5, 1.5)).toBe(1);
    expect(shareOfPhases(0.5, 1.51)).toBe(1);
    expect([0.4, 1.6].map((amplitude) => slopeOfPhases(0.5, amplitude))).toEqual([0, 0]);
    expect(shareOfPhases(0.5, Math.sqrt(1.25))).toBeCloseTo(0.5, 14);
  });

  test('levels are 20 lg of the length', () => {
    expect(levelAt(0.5, 1)).toBeCloseTo(20 * Math.log10(0.5), 12);
    expect(levelAt(0.5, -1)).toBeCloseTo(20 * Math.log10(1.5), 12);
    expect(levelAt(0.5, 0)).toBeCloseTo(10 * Math.log10(1.25), 12);
  });

  test('half a turn is cut into equal steps', () => {
    expect(halfTurnPhases(2)).toEqual([Math.PI / 4, (3 * Math.PI) / 4]);
  });

  test('random directions have length one and favour none', () => {
    const random = randomFrom(3);
    const count = 20000;
    const directions = Array.from({ length: count }, () => randomDirection(random));
    expect(directions.every(([c, s]) => Math.abs(Math.hypot(c, s) - 1) < 1e-12)).toBe(true);
    const inside = (f: (d: readonly [number, number]) => boolean) => directions.filter(f).length / count;
    expect(Math.abs(inside(([c]) => c > 0) - 0.5)).toBeLessThan(0.02);
    expect(Math.abs(inside(([, s]) => s > 0) - 0.5)).toBeLessThan(0.02);
    expect(Math.abs(inside(([c]) => c > Math.SQRT1_2) - 0.25)).toBeLessThan(0.02);
    expect(Math.abs(inside(([, s]) => s > Math.SQRT1_2) - 0.25)).toBeLessThan(0.02);
    expect(randomCosine(() => 0.5)).toBe(0);
    expect(randomCosine(() => 0)).toBeCloseTo(-1, 12);
  });
});

describe('the dilogarithm', () => {
  test('of 1/2 is pi^2/12 - ln^2(2)/2 (DLMF 25.12.6)', () => {
    expect(dilogarithm(0.5)).toBeCloseTo(Math.PI ** 2 / 12 - Math.LN2 ** 2 / 2, 15);
  });

  test('obeys Li2(x) + Li2(1 - x) = pi^2/6 - ln x ln(1 - x)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (x) => {
        const wanted = Math.PI ** 2 / 6 - Math.log(x) * Math.log1p(-x);
        expect(dilogarithm(x) + dilogarithm(1 - x)).toBeCloseTo(wanted, 12);
      }),
    );
  });

  test('weighs each term by its factor, and of 0 is 0', () => {
    expect(dilogarithm(0)).toBe(0);
    expect(dilogarithm(0.3, () => 0.5)).toBeCloseTo(dilogarithm(0.3) / 2, 15);
    // Sum of x^k/(k^2) k^2/4^k = (x/4)/(1 - x/4) needs a factor that falls with k.
    expect(dilogarithm(0.6, (k) => (k * k) / 4 ** k)).toBeCloseTo(0.15 / 0.85, 14);
  });
});

describe('members of a family', () => {
  const shape = trapezoidShape('trapezoidal', 0.5);

  test('are known as such, others are not', () => {
    expect(isMember(memberOf(shape, { location: 1, scale: 2 }))).toBe(true);
    expect(isMember(inDecibels(memberOf(shape, { location: 0, scale: 0.1 })))).toBe(false);
  });

  test('counted from above and from below are mirrored', () => {
    const d = memberOf(shape, { location: 1, scale: 2 });
    for (const p of [1e-9, 0.2, 0.5]) expect(quantileFromAbove(d, p)).toBeCloseTo(2 - d.quantile(p), 12);
    const lopsided = inDecibels(memberOf(shape, { location: 0, scale: 0.1 }));
    expect(quantileFromAbove(lopsided, 0.2)).toBe(lopsided.quantile(0.8));
  });
});

describe('no shape ever answers what is not a number', () => {
  const place = fc.oneof(
    fc.double({ noNaN: true }),
    fc.constantFrom(
      0,
      -0,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      Number.MAX_VALUE,
      Number.MIN_VALUE,
    ),
  );

  test('at any place', () => {
    fc.assert(
      fc.property(anyShape, place, (d, x) => {
        expect(d.shareBelow(x)).toBeGreaterThanOrEqual(0);
        expect(d.shareBelow(x)).toBeLessThanOrEqual(1);
        expect(d.density(x)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('at any share', () => {
    const share = fc.oneof(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(0, 1, 1e-300, 1 - 2 ** -53),
    );
    fc.assert(
      fc.property(anyShape, share, (d, p) => {
        expect(Number.isNaN(d.quantile(p))).toBe(false);
      }),
    );
  });
});
