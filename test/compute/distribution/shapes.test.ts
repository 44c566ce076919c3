import { describe, expect, test } from 'vitest';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import { mismatch } from '../../../src/compute/distribution/mismatch.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { quantileFromAbove } from '../../../src/compute/distribution/standard.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import { sinc } from '../../../src/compute/special/sinc.ts';
import { inDecibels } from './shapes.ts';

const unit = { lower: -1, upper: 1 };

describe('standard deviations of a half-width of one (GUM 4.3, 4.4; JCGM 101, 6.4)', () => {
  test('rectangle 1/sqrt 3, triangle 1/sqrt 6, U shape 1/sqrt 2', () => {
    expect(rectangular(unit).standardDeviation).toBeCloseTo(1 / Math.sqrt(3), 15);
    expect(triangular(unit).standardDeviation).toBeCloseTo(1 / Math.sqrt(6), 15);
    expect(arcsine({ centre: 0, halfWidth: 1 }).standardDeviation).toBeCloseTo(1 / Math.sqrt(2), 15);
  });

  test('trapezoid sqrt((1 + beta^2)/6), from the triangle to the rectangle', () => {
    const deviation = (topRatio: number) => trapezoidal({ ...unit, topRatio }).standardDeviation;
    expect(deviation(0.5)).toBeCloseTo(Math.sqrt(1.25 / 6), 15);
    expect(deviation(0)).toBe(triangular(unit).standardDeviation);
    expect(deviation(1)).toBe(rectangular(unit).standardDeviation);
  });

  test('10.0 V +- 0.1 V, itself known to 0.05 V, gives 0.060 V (JCGM 101, 6.4.3.4)', () => {
    const d = curvilinear({ lower: 9.9, upper: 10.1, limitHalfWidth: 0.05 });
    expect(d.standardDeviation).toBeCloseTo(0.06, 3);
    expect(d.standardDeviation).toBeCloseTo(Math.sqrt(0.1 ** 2 / 3 + 0.05 ** 2 / 9), 15);
    expect(d.limits.lower).toBeCloseTo(9.85, 12);
    expect(d.limits.upper).toBeCloseTo(10.15, 12);
    expect(d.mean).toBe(10);
  });

  test('t has sqrt(n/(n - 2)) of its scale for more than two degrees, and none for two', () => {
    const deviation = (degreesOfFreedom: number) =>
      student({ location: 0, scale: 2, degreesOfFreedom }).standardDeviation;
    expect(deviation(4)).toBeCloseTo(2 * Math.SQRT2, 14);
    expect(deviation(2.01)).toBeCloseTo(2 * Math.sqrt(201), 8);
    expect(deviation(2)).toBeUndefined();
    expect(deviation(1)).toBeUndefined();
  });

  test('t of one degree has no mean, of more it has', () => {
    expect(student({ location: 5, scale: 2, degreesOfFreedom: 1 }).mean).toBeUndefined();
    expect(student({ location: 5, scale: 2, degreesOfFreedom: 1.5 }).mean).toBe(5);
  });

  test('t of infinite degrees is the normal distribution', () => {
    const d = student({ location: 5, scale: 2, degreesOfFreedom: Number.POSITIVE_INFINITY });
    expect(d.shape).toBe('normal');
    expect(d.mean).toBe(5);
    expect(d.standardDeviation).toBe(2);
  });

  test('t of so many degrees that nothing tells it from the normal one is that', () => {
    expect(student({ location: 5, scale: 2, degreesOfFreedom: 1e15 }).shape).toBe('normal');
    expect(student({ location: 5, scale: 2, degreesOfFreedom: 9e14 }).shape).toBe('student');
  });
});

describe('names, limits and densities', () => {
  test('each shape says what it is', () => {
    expect(rectangular(unit).shape).toBe('rectangular');
    expect(triangular(unit).shape).toBe('triangular');
    expect(trapezoidal({ ...unit, topRatio: 0.5 }).shape).toBe('trapezoidal');
    expect(curvilinear({ ...unit, limitHalfWidth: 0.1 }).shape).toBe('curvilinear');
    expect(arcsine({ centre: 0, halfWidth: 1 }).shape).toBe('arcsine');
    expect(normal({ mean: 0, standardDeviation: 1 }).shape).toBe('normal');
    expect(student({ location: 0, scale: 1, degreesOfFreedom: 3 }).shape).toBe('student');
  });

  test('the U shape is infinitely dense at its ends only', () => {
    const d = arcsine({ centre: 1, halfWidth: 2 });
    expect(d.density(3)).toBe(Number.POSITIVE_INFINITY);
    expect(d.density(-1)).toBe(Number.POSITIVE_INFINITY);
    expect(d.density(1)).toBeCloseTo(1 / (2 * Math.PI), 15);
    expect(d.density(3.0001)).toBe(0);
  });

  test('a trapezoid is level on top and falls straight to its ends', () => {
    const d = trapezoidal({ lower: 0, upper: 10, topRatio: 0.4 });
    expect(d.density(5)).toBeCloseTo(1 / 7, 15);
    expect(d.density(3.01)).toBeCloseTo(1 / 7, 15);
    expect(d.density(1.5)).toBeCloseTo(0.5 / 7, 15);
    expect(d.density(0)).toBe(0);
    expect(d.shareBelow(3)).toBeCloseTo(3 / 14, 14);
    // On the ramp a triangle: half of 1.5 by 0.5/7.
    expect(d.shareBelow(1.5)).toBeCloseTo(0.375 / 7, 14);
    expect(d.quantile(3 / 14)).toBeCloseTo(3, 12);
    expect(d.quantile(0.05)).toBeCloseTo(Math.sqrt(0.05 * 42), 12);
  });

  test('a triangle peaks in the middle', () => {
    const d = triangular({ lower: 0, upper: 4 });
    expect(d.density(2)).toBeCloseTo(0.5, 15);
    expect(d.density(3)).toBeCloseTo(0.25, 15);
    expect(d.shareBelow(1)).toBeCloseTo(1 / 8, 15);
  });

  test('limits that are uncertain make edges that fall like a logarithm (JCGM 101, 6.4.3.2)', () => {
    const d = curvilinear({ lower: -1, upper: 1, limitHalfWidth: 0.25 });
    expect(d.density(0)).toBeCloseTo(Math.log(1.25 / 0.75), 14);
    expect(d.density(0.7)).toBeCloseTo(Math.log(1.25 / 0.75), 14);
    expect(d.density(1)).toBeCloseTo(Math.log(1.25 / 1), 14);
    expect(d.shareBelow(0)).toBe(0.5);
    expect(d.shareBelow(-0.75)).toBeCloseTo(0.5 - 0.75 * Math.log(1.25 / 0.75), 14);
  });

  test('a half-width in doubt by all of itself is still a distribution', () => {
    const d = curvilinear({ lower: -1, upper: 1, limitHalfWidth: 1 });
    expect(d.limits).toEqual({ lower: -2, upper: 2 });
    expect(d.quantile(0.25) + d.quantile(0.75)).toBeCloseTo(0, 12);
    expect(d.shareBelow(0)).toBe(0.5);
    expect(d.quantile(0.5)).toBeCloseTo(0, 12);
  });

  test('95 % of a U shape reaches to 0.9969 of its half-width, cos(0.025 pi)', () => {
    expect(arcsine({ centre: 0, halfWidth: 1 }).quantile(0.975)).toBeCloseTo(Math.cos(0.025 * Math.PI), 15);
  });

  test('k for 95 % of a rectangle is 1.65, for 99 % 1.71 (GUM 4.3.7)', () => {
    const d = rectangular({ lower: -Math.sqrt(3), upper: Math.sqrt(3) });
    expect(d.quantile(0.975)).toBeCloseTo(1.65, 2);
    expect(d.quantile(0.995)).toBeCloseTo(1.71, 2);
  });

  test('quantiles counted from above keep the digits of small shares where the shape is symmetric', () => {
    const d = normal({ mean: 3, standardDeviation: 2 });
    expect(quantileFromAbove(d, 1e-30)).toBeCloseTo(3 + 2 * 11.464025, 5);
    expect(quantileFromAbove(inDecibels(rectangular({ lower: -0.1, upper: 0.1 })), 0.5)).toBeCloseTo(0, 12);
  });
});

describe('a constant', () => {
  const five = constant(5);

  test('is one value', () => {
    expect(five.shape).toBe('constant');
    expect(five.mean).toBe(5);
    expect(five.standardDeviation).toBe(0);
    expect(five.limits).toEqual({ lower: 5, upper: 5 });
    expect(five.quantile(0.3)).toBe(5);
    expect(five.sample(() => 0.4)).toBe(5);
    expect([4.9, 5, 5.1].map((x) => five.shareBelow(x))).toEqual([0, 1, 1]);
    expect([4.9, 5].map((x) => five.density(x))).toEqual([0, Number.POSITIVE_INFINITY]);
    expect(() => five.quantile(2)).toThrow(new RangeError('quantile: share must be 0 to 1, got 2'));
  });

  test('stays one when scaled, and anything times zero becomes one', () => {
    expect(scaled(five, { factor: -2, shift: 1 }).quantile(0.5)).toBe(-9);
    const zero = scaled(normal({ mean: 4, standardDeviation: 1 }), { factor: 0, shift: 7 });
    expect(zero.shape).toBe('constant');
    expect(zero.mean).toBe(7);
  });
});

describe('scaling', () => {
  test('a lopsided shape keeps its name and its moments follow', () => {
    const of = inDecibels(rectangular({ lower: -0.3, upper: 0.2 }));
    const twice = scaled(of, { factor: -2, shift: 1 });
    expect(twice.shape).toBe('transformed');
    expect(twice.mean).toBe(1 - 2 * (of.mean ?? Number.NaN));
    expect(twice.standardDeviation).toBe(2 * (of.standardDeviation ?? Number.NaN));
    const within = scaled(
      { ...of, shape: 'mismatch', mean: undefined, standardDeviation: undefined },
      { factor: 2, shift: 0 },
    );
    expect([within.shape, within.mean, within.standardDeviation]).toEqual(['mismatch', undefined, undefined]);
  });

  test('what is known exactly of the moments stays exact', () => {
    const of = mismatch({ source: 0.5, load: 0.6 });
    const twice = scaled(of, { factor: -2, shift: 1 });
    expect(twice.mean).toBe(1);
    expect(twice.standardDeviation).toBe(2 * (of.standardDeviation as number));
  });

  test('by one and nothing leaves the very same', () => {
    const d = normal({ mean: 4, standardDeviation: 1 });
    expect(scaled(d, { factor: 1, shift: 0 })).toBe(d);
    expect(scaled(d, { factor: 1, shift: 1 }).mean).toBe(5);
    expect(scaled(d, { factor: -1, shift: 0 }).mean).toBe(-4);
  });

  test('refuses what is not finite', () => {
    const d = normal({ mean: 4, standardDeviation: 1 });
    expect(() => scaled(d, { factor: Number.NaN, shift: 0 })).toThrow(
      new RangeError('scaled: factor must be a finite number, got NaN'),
    );
    expect(() => scaled(d, { factor: 1, shift: Number.POSITIVE_INFINITY })).toThrow(
      new RangeError('scaled: shift must be a finite number, got Infinity'),
    );
  });
});

describe('makers refuse what makes no shape', () => {
  test('limits out of order, alike or not finite', () => {
    expect(() => rectangular({ lower: 1, upper: 1 })).toThrow(
      new RangeError('rectangular: lower must be < upper, got [1,1]'),
    );
    expect(() => triangular({ lower: 2, upper: 1 })).toThrow(
      new RangeError('triangular: lower must be < upper, got [2,1]'),
    );
    expect(() => trapezoidal({ lower: Number.NaN, upper: 1, topRatio: 0.5 })).toThrow(
      new RangeError('trapezoidal: lower must be a finite number, got NaN'),
    );
    expect(() => curvilinear({ lower: 0, upper: Number.POSITIVE_INFINITY, limitHalfWidth: 1 })).toThrow(
      new RangeError('curvilinear: upper must be a finite number, got Infinity'),
    );
  });

  test('ratios and widths out of range', () => {
    expect(() => trapezoidal({ ...unit, topRatio: 1.01 })).toThrow(
      new RangeError('trapezoidal: topRatio must be 0 to 1, got 1.01'),
    );
    expect(() => trapezoidal({ ...unit, topRatio: -0.01 })).toThrow(
      new RangeError('trapezoidal: topRatio must be 0 to 1, got -0.01'),
    );
    expect(() => curvilinear({ ...unit, limitHalfWidth: 1.5 })).toThrow(
      new RangeError('curvilinear: limitHalfWidth must be <= half the width, 1, got 1.5'),
    );
    expect(() => curvilinear({ ...unit, limitHalfWidth: 0 })).toThrow(
      new RangeError('curvilinear: limitHalfWidth must be > 0, got 0'),
    );
    expect(() => arcsine({ centre: 0, halfWidth: -1 })).toThrow(
      new RangeError('arcsine: halfWidth must be > 0, got -1'),
    );
    expect(() => arcsine({ centre: Number.NaN, halfWidth: 1 })).toThrow(
      new RangeError('arcsine: centre must be a finite number, got NaN'),
    );
    expect(() => normal({ mean: Number.NaN, standardDeviation: 1 })).toThrow(
      new RangeError('normal: mean must be a finite number, got NaN'),
    );
    expect(() => normal({ mean: 0, standardDeviation: 0 })).toThrow(
      new RangeError('normal: standardDeviation must be > 0, got 0'),
    );
    expect(() => student({ location: Number.NaN, scale: 1, degreesOfFreedom: 2 })).toThrow(
      new RangeError('student: location must be a finite number, got NaN'),
    );
    expect(() => student({ location: 0, scale: 0, degreesOfFreedom: 2 })).toThrow(
      new RangeError('student: scale must be > 0, got 0'),
    );
    expect(() => student({ location: 0, scale: 1, degreesOfFreedom: 0 })).toThrow(
      new RangeError('student: degreesOfFreedom must be > 0, got 0'),
    );
    expect(() => constant(Number.NaN)).toThrow(
      new RangeError('constant: value must be a finite number, got NaN'),
    );
  });
});

describe('random values', () => {
  /** One random number after the other. */
  const draws = (...values: number[]) => {
    const left = [...values];
    return () => left.shift() ?? Number.NaN;
  };

  test('follow from uniform numbers as the shapes are made (JCGM 101, 6.4)', () => {
    expect(arcsine({ centre: 0, halfWidth: 1 }).sample(draws(0.75))).toBeCloseTo(Math.SQRT1_2, 15);
    // Half-widths 0.75 and 0.25 of the two rectangles, at their parts 0.5 and -0.8.
    expect(trapezoidal({ ...unit, topRatio: 0.5 }).sample(draws(0.75, 0.1))).toBeCloseTo(0.175, 15);
    // A half-width from 0.7 to 1.3, at its quarter: 0.85.
    expect(curvilinear({ ...unit, limitHalfWidth: 0.3 }).sample(draws(0.25, 1))).toBeCloseTo(0.85, 15);
  });

  test('a normal value asked for share 0 is far below and finite', () => {
    const x = normal({ mean: 0, standardDeviation: 1 }).sample(() => 0);
    expect(x).toBeLessThan(-8);
    expect(Number.isFinite(x)).toBe(true);
  });

  test('a t value skips points outside the circle and its very centre (Bailey 1994)', () => {
    const draws = [0.99, 0.99, 0.5, 0.5, 0.75, 0.5];
    const t = student({ location: 0, scale: 1, degreesOfFreedom: 2 }).sample(() => draws.shift() ?? 0.5);
    // u = 0.5, v = 0, w = 0.25: t = u sqrt(2 (1/w - 1)/w) = sqrt(6).
    expect(t).toBeCloseTo(Math.sqrt(6), 12);
    expect(draws).toEqual([]);
  });

  test('a t value of very many degrees keeps its digits: it is that of the polar method for normal ones', () => {
    const draws = [0.75, 0.5];
    const t = student({ location: 0, scale: 1, degreesOfFreedom: 1e14 }).sample(() => draws.shift() ?? 0.5);
    // G. Marsaglia: u sqrt(-2 ln w / w), with u = 0.5 and w = 0.25.
    expect(t).toBeCloseTo(Math.sqrt(2 * Math.log(4)), 12);
  });
});

test('sin x / x is 1 at 0 and meets its series', () => {
  expect(sinc(0)).toBe(1);
  expect(sinc(1e-5)).toBeCloseTo(1 - 1e-10 / 6, 15);
  expect(sinc(9.99e-6)).toBeCloseTo(1 - 9.98001e-11 / 6, 15);
  expect(sinc(Math.PI)).toBeCloseTo(0, 15);
  expect(sinc(-2)).toBeCloseTo(Math.sin(2) / 2, 15);
});
