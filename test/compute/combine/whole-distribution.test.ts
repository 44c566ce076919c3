import { describe, expect, test } from 'vitest';
import { wholeDistribution } from '../../../src/compute/combine/whole-distribution.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import { studentQuantile } from '../../../src/compute/special/student.ts';
import { inDecibels } from '../distribution/shapes.ts';

const within = (half: number) => rectangular({ lower: -half, upper: half });
const gauss = (standardDeviation: number) => normal({ mean: 0, standardDeviation });
const uShape = (halfWidth: number) => arcsine({ centre: 0, halfWidth });
const t = (degreesOfFreedom: number, scale: number) => student({ location: 0, scale, degreesOfFreedom });

function sumOf(parts: readonly Distribution[], coverageProbability = 0.95, start = 0) {
  const terms = parts.map((distribution) => ({ distribution, sensitivity: 1 }));
  return wholeDistribution({ constant: start, terms, coverageProbability });
}

describe('sums known in closed form', () => {
  test('two equal rectangles make a triangle', () => {
    const sum = sumOf([within(1), within(1)]);
    const one = triangular({ lower: -2, upper: 2 });
    for (const x of [-1.9, -1, -0.1, 0, 0.7, 1.99])
      expect(sum.shareBelow(x)).toBeCloseTo(one.shareBelow(x), 7);
    expect(sum.symmetric.upper).toBeCloseTo(one.quantile(0.975), 8);
  });

  test('normal parts make a normal one: 3 and 4 make 5', () => {
    const sum = sumOf([gauss(3), gauss(4)]);
    expect(sum.symmetric.upper).toBeCloseTo(5 * 1.959963984540054, 8);
    expect(sum.standardDeviation).toBe(5);
    expect(sum.shortest?.lower).toBeCloseTo(-5 * 1.959963984540054, 8);
  });

  test('t of one degree: scales add, whatever the coverage', () => {
    for (const p of [0.5, 0.95, 0.9973, 0.99999]) {
      const sum = sumOf([t(1, 0.2), t(1, 0.1), t(1, 0.7)], p);
      const wanted = studentQuantile({ share: (1 + p) / 2, degreesOfFreedom: 1 });
      expect(sum.symmetric.upper / wanted).toBeCloseTo(1, 6);
    }
  });

  test('a long-tailed part keeps its tail beside a trace of something else', () => {
    for (const n of [1, 2, 3, 5, 20, 39, 40, 100])
      for (const p of [0.95, 0.9973]) {
        const sum = sumOf([t(n, 1), gauss(1e-4)], p);
        const wanted = studentQuantile({ share: (1 + p) / 2, degreesOfFreedom: n });
        expect(sum.symmetric.upper / wanted).toBeCloseTo(1, 6);
        expect(sum.symmetric.lower / wanted).toBeCloseTo(-1, 6);
      }
  });

  test('far out in the tail nothing wraps around', () => {
    const sum = sumOf([t(2, 1), within(1), gauss(0.5)]);
    // One part alone can make the sum that large: the tail is that of t, widened by 1/3 + 1/4 of variance.
    for (const x of [100, 300, 1000]) {
      const tail = 0.5 - x / (2 * Math.sqrt(x * x + 2));
      expect((1 - sum.shareBelow(x)) / tail).toBeCloseTo(1, 2);
      expect(sum.shareBelow(-x) / tail).toBeCloseTo(1, 2);
    }
    expect(sum.quantile(1e-6) / studentQuantile({ share: 1e-6, degreesOfFreedom: 2 })).toBeCloseTo(1, 3);
  });
});

describe('constants', () => {
  test('move the sum, and alone are all of it', () => {
    const sum = sumOf([constant(2), constant(-0.5)], 0.95, 10);
    expect(sum.mean).toBe(11.5);
    expect(sum.standardDeviation).toBe(0);
    expect(sum.symmetric).toEqual({ lower: 11.5, upper: 11.5 });
    expect(sum.shortest).toEqual({ lower: 11.5, upper: 11.5 });
    expect([11, 12].map((x) => sum.shareBelow(x))).toEqual([0, 1]);
    expect(sum.curve).toEqual([]);
    expect(sumOf([]).mean).toBe(0);
  });

  test('a sensitivity of nothing leaves nothing', () => {
    const terms = [
      { distribution: gauss(1), sensitivity: 0 },
      { distribution: within(1), sensitivity: 2 },
    ];
    const sum = wholeDistribution({ constant: 0, terms, coverageProbability: 0.95 });
    expect(sum.symmetric.upper).toBeCloseTo(1.9, 12);
  });
});

describe('limits', () => {
  test('no value lies beyond the sum of limits', () => {
    const sum = sumOf([within(1), uShape(0.5), triangular({ lower: 0, upper: 1 })]);
    expect(sum.shareBelow(-1.5)).toBe(0);
    expect(sum.shareBelow(2.5)).toBe(1);
    expect(sum.quantile(0)).toBe(-1.5);
    expect(sum.quantile(1)).toBe(2.5);
    expect(sum.quantile(1e-12)).toBeGreaterThanOrEqual(-1.5);
    expect(sum.shareBelow(2.4999)).toBeLessThanOrEqual(1);
  });

  test('with a normal part there is none', () => {
    const sum = sumOf([within(1), gauss(0.1)]);
    expect(sum.quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(sum.quantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(sum.shareBelow(9)).toBe(1);
    expect(sum.shareBelow(-9)).toBe(0);
  });
});

describe('the shortest interval', () => {
  test('of a U shape is not one interval', () => {
    expect(sumOf([uShape(1)]).shortest).toBeUndefined();
    expect(sumOf([uShape(1), gauss(0.02)]).shortest).toBeUndefined();
    expect(sumOf([uShape(1), within(0.1)]).shortest).toBeUndefined();
  });

  test('of a U shape well smeared is the symmetric one again', () => {
    const sum = sumOf([uShape(1), gauss(1)]);
    expect(sum.shortest).toEqual(sum.symmetric);
  });

  test('of a density that falls from one end begins there', () => {
    // 10 lg(1 + x), x uniform: densest at the upper end.
    const sum = sumOf([inDecibels(within(0.5), 10)]);
    expect(sum.shortest?.upper).toBeCloseTo(10 * Math.log10(1.5), 8);
    expect(sum.shortest?.lower).toBeCloseTo(10 * Math.log10(0.55), 6);
  });

  test('of a lopsided sum lies nearer to the peak than the symmetric one', () => {
    const sum = sumOf([inDecibels(gauss(0.1)), inDecibels(gauss(0.1), 10)]);
    expect(sum.shortest?.lower).toBeGreaterThan(sum.symmetric.lower);
    expect(sum.shortest?.upper).toBeGreaterThan(sum.symmetric.upper);
  });
});

describe('moments that do not exist', () => {
  test('t of two degrees leaves no standard deviation, of one no mean', () => {
    expect(sumOf([t(2, 1), gauss(1)]).standardDeviation).toBeUndefined();
    expect(sumOf([t(2, 1), gauss(1)]).mean).toBe(0);
    expect(sumOf([t(1, 1), gauss(1)]).mean).toBeUndefined();
    expect(sumOf([t(3, 1), gauss(1)]).standardDeviation).toBeCloseTo(2, 12);
  });
});

describe('the curve', () => {
  test('ends at a limit that is near, and stays finite at a pole', () => {
    const { curve } = sumOf([uShape(1)]);
    expect(curve).toHaveLength(241);
    const spacing = 2 / 241;
    expect(curve[0]?.x).toBeCloseTo(-1 + spacing / 2, 6);
    expect(curve.at(-1)?.x).toBeCloseTo(1 - spacing / 2, 6);
    expect(curve[0]?.density).toBeCloseTo(Math.acos(1 - spacing) / Math.PI / spacing, 3);
    expect(curve[120]?.density).toBeCloseTo(1 / Math.PI, 3);
  });

  test('leaves out the thin tails of a normal sum', () => {
    const { curve } = sumOf([gauss(1), within(0.1)]);
    expect(curve[0]?.x).toBeGreaterThan(-4);
    expect(curve[0]?.x).toBeLessThan(-3);
  });

  test('is made once', () => {
    const sum = sumOf([gauss(1), within(0.1)]);
    expect(sum.curve).toBe(sum.curve);
    expect(sum.shortest).toBe(sum.shortest);
  });
});

describe('parts of very different width', () => {
  test('a narrow one hardly moves the ends of a wide one', () => {
    const wide = { rectangle: within(1), 'U shape': uShape(1), 'in decibels': inDecibels(uShape(0.1)) };
    for (const part of Object.values(wide))
      for (const narrow of [within(1e-4), gauss(1e-4), uShape(1e-5), inDecibels(within(1e-5))])
        for (const p of [0.025, 0.975]) {
          const spread = part.standardDeviation as number;
          expect(Math.abs(sumOf([part, narrow]).quantile(p) - part.quantile(p)) / spread).toBeLessThan(1e-4);
        }
  });
});

test('refuses a coverage probability that is not between 0 and 1, and numbers that are not finite', () => {
  for (const p of [0, 1, -0.1, 1.1, Number.NaN])
    expect(() => sumOf([gauss(1)], p)).toThrow(
      new RangeError(`wholeDistribution: coverageProbability must be between 0 and 1, got ${p}`),
    );
  expect(() => sumOf([gauss(1)], 0.95, Number.NaN)).toThrow(
    new RangeError('wholeDistribution: constant must be a finite number, got NaN'),
  );
  const terms = [{ distribution: gauss(1), sensitivity: Number.POSITIVE_INFINITY }];
  expect(() => wholeDistribution({ constant: 0, terms, coverageProbability: 0.95 })).toThrow(
    new RangeError('wholeDistribution: sensitivity must be a finite number, got Infinity'),
  );
});

describe('the ends of the curve', () => {
  const endsOf = (parts: readonly Distribution[]) => {
    const { curve } = sumOf(parts);
    const [first, second] = [curve[0]?.x ?? 0, curve[1]?.x ?? 0];
    const half = (second - first) / 2;
    return { from: first - half, to: (curve.at(-1)?.x ?? 0) + half };
  };

  test('ends at limits that are near, at any size and place', () => {
    for (const [factor, shift] of [
      [1, 0],
      [1e-3, 0],
      [1e3, 0],
      [1, 40],
      [1, -40],
    ] as const) {
      const box = rectangular({ lower: shift - factor, upper: shift + 2 * factor });
      const { from, to } = endsOf([box, box]);
      expect((from - 2 * shift) / factor).toBeCloseTo(-2, 9);
      expect((to - 2 * shift) / factor).toBeCloseTo(4, 9);
    }
  });

  test('leaves out what is unlikely where the limits are far', () => {
    const boxes = Array.from({ length: 12 }, () => within(1));
    const { from, to } = endsOf(boxes);
    const sum = sumOf(boxes);
    expect(sum.shareBelow(from)).toBeCloseTo(2e-4, 9);
    expect(1 - sum.shareBelow(to)).toBeCloseTo(2e-4, 9);
  });
});

describe('two or three readings whose scatter is stated in percent, beside limits of about that size', () => {
  /** Share below of the sum by plain integration over the limits: the part in percent is known exactly. */
  const shareBelow = (part: Distribution, half: number) => (x: number) => {
    const steps = 400;
    const shares = Array.from({ length: steps }, (_, k) =>
      part.shareBelow(x - half + (2 * half * (k + 0.5)) / steps),
    );
    return shares.reduce((sum, share) => sum + share, 0) / steps;
  };

  for (const degrees of [1, 2])
    for (const percent of [0.3, 0.1, 0.03, 0.01, 0.001, 0.0001])
      test(`${degrees} degrees of freedom, ${percent} %: the interval holds 95 %`, () => {
        const half = (percent / 100) * (10 / Math.LN10);
        const part = inDecibels(t(degrees, percent / 100), 10);
        const { lower, upper } = sumOf([part, within(half)]).symmetric;
        const exact = shareBelow(part, half);
        expect(exact(upper) - exact(lower)).toBeCloseTo(0.95, 4);
        expect(exact(lower)).toBeCloseTo(0.025, 4);
      });
});
