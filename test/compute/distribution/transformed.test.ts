import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { type Transform, transformed } from '../../../src/compute/distribution/transformed.ts';
import { inDecibels } from './shapes.ts';

const unit = rectangular({ lower: 0, upper: 1 });
const logarithm: Omit<Transform, 'of'> = {
  forward: Math.log,
  inverse: Math.exp,
  slope: (x) => 1 / x,
};

describe('a transformed shape', () => {
  test('moves quantiles by the function, rising or falling', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.constantFrom(-20, 10),
        (p, factor) => {
          const of = rectangular({ lower: -0.2, upper: 0.3 });
          const wanted = factor * Math.log10(1 + of.quantile(factor < 0 ? 1 - p : p));
          expect(inDecibels(of, factor).quantile(p)).toBeCloseTo(wanted, 12);
        },
      ),
    );
  });

  test('3 % of volts reaches +0.257 and -0.265 dB', () => {
    const d = inDecibels(rectangular({ lower: -0.03, upper: 0.03 }));
    expect(d.limits.upper).toBeCloseTo(20 * Math.log10(1.03), 12);
    expect(d.limits.lower).toBeCloseTo(20 * Math.log10(0.97), 12);
    expect(d.shape).toBe('transformed');
  });

  test('the logarithm of a uniform value is exponential: mean -1, standard deviation 1', () => {
    const d = transformed({ of: unit, ...logarithm });
    expect(d.mean).toBeCloseTo(-1, 11);
    expect(d.standardDeviation).toBeCloseTo(1, 10);
    expect(d.limits).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 0 });
    expect(d.density(-2)).toBeCloseTo(Math.exp(-2), 12);
    expect(d.shareBelow(-2)).toBeCloseTo(Math.exp(-2), 12);
    expect(d.density(0.5)).toBe(0);
  });

  test('the exponential of a normal value is lognormal', () => {
    const u = 0.5;
    const d = transformed({
      of: normal({ mean: 0.2, standardDeviation: u }),
      forward: Math.exp,
      inverse: Math.log,
      slope: Math.exp,
    });
    expect(d.mean).toBeCloseTo(Math.exp(0.2 + (u * u) / 2), 9);
    expect(d.standardDeviation).toBeCloseTo(Math.exp(0.2 + (u * u) / 2) * Math.sqrt(Math.expm1(u * u)), 8);
    expect(d.limits).toEqual({ lower: 0, upper: Number.POSITIVE_INFINITY });
    expect(d.shareBelow(-1)).toBe(0);
    expect(d.quantile(0)).toBe(0);
    expect(d.quantile(1)).toBe(Number.POSITIVE_INFINITY);
  });

  test('the square root of a U shape squared: shares follow', () => {
    const of = arcsine({ centre: 0.5, halfWidth: 0.5 });
    const d = transformed({
      of,
      forward: Math.sqrt,
      inverse: (y) => y * y,
      slope: (x) => 0.5 / Math.sqrt(x),
    });
    expect(d.shareBelow(Math.sqrt(0.5))).toBeCloseTo(0.5, 14);
    // sqrt((1 + cos a)/2) = |cos(a/2)|: the mean of |cos| is 2/pi.
    expect(d.mean).toBeCloseTo(2 / Math.PI, 11);
    expect(d.standardDeviation).toBeCloseTo(Math.sqrt(0.5 - 4 / Math.PI ** 2), 10);
  });

  test('turned there and back it is what it was', () => {
    const of = normal({ mean: 0, standardDeviation: 0.1 });
    const back = transformed({
      of: inDecibels(of),
      forward: (y) => 10 ** (y / 20) - 1,
      inverse: (x) => 20 * Math.log10(1 + x),
      slope: (y) => (Math.LN10 / 20) * 10 ** (y / 20),
    });
    expect(back.quantile(0.1)).toBeCloseTo(of.quantile(0.1), 12);
    expect(back.density(0.05)).toBeCloseTo(of.density(0.05), 10);
    expect(back.mean).toBeCloseTo(0, 10);
    expect(back.standardDeviation).toBeCloseTo(0.1, 9);
  });
});

describe('a domain', () => {
  test('cuts what lies outside and shares its part among the rest', () => {
    const d = transformed({
      of: rectangular({ lower: -1, upper: 3 }),
      ...logarithm,
      domain: { lower: 1, upper: 2 },
    });
    expect(d.limits.lower).toBe(0);
    expect(d.limits.upper).toBe(Math.LN2);
    expect(d.quantile(0.5)).toBeCloseTo(Math.log(1.5), 14);
    expect(d.shareBelow(Math.log(1.25))).toBeCloseTo(0.25, 14);
    expect(d.density(Math.log(1.5))).toBeCloseTo(1.5, 13);
    expect(d.mean).toBeCloseTo(2 * Math.LN2 - 1, 12);
    expect(d.sample(() => 0.5)).toBeCloseTo(Math.log(1.5), 14);
    // One at its own ends, where x is 1 and 2; nothing beyond, although the shape of x goes on.
    expect(d.density(0)).toBeCloseTo(1, 13);
    expect(d.density(Math.LN2)).toBeCloseTo(2, 13);
    expect([d.density(-0.1), d.density(0.8), d.shareBelow(-0.1), d.shareBelow(0.8)]).toEqual([0, 0, 0, 1]);
  });

  test('gives its own ends as the quantiles of 0 and 1, to the last bit', () => {
    for (const lower of [0.1, 0.3, 0.7, 1.1]) {
      const of = student({ location: 0.4, scale: 0.3, degreesOfFreedom: 3 });
      for (const factor of [1, -1]) {
        const d = transformed({
          of,
          forward: (x) => factor * Math.log(x),
          inverse: (y) => Math.exp(factor * y),
          slope: (x) => factor / x,
          domain: { lower, upper: 1.3 },
        });
        expect({ lower: d.quantile(0), upper: d.quantile(1) }).toEqual(d.limits);
      }
    }
  });

  test('beyond the ends nothing is asked of an inverse that is not defined there', () => {
    const d = transformed({
      of: unit,
      forward: (x) => -x * x,
      inverse: (y) => Math.sqrt(-y),
      slope: (x) => -2 * x,
    });
    expect([d.shareBelow(0.5), d.density(0.5), d.shareBelow(-1.5), d.density(-1.5)]).toEqual([1, 0, 0, 0]);
  });

  test('draws anew what falls outside, or by quantile where little lies inside', () => {
    const draws = [0.1, 0.3, 0.75];
    const much = transformed({
      of: rectangular({ lower: -1, upper: 3 }),
      ...logarithm,
      domain: { lower: 0.5, upper: 3 },
    });
    // -0.6 and 0.2 lie outside, 2 inside.
    expect(much.sample(() => draws.shift() ?? 0)).toBeCloseTo(Math.LN2, 14);
    const below = transformed({
      of: rectangular({ lower: 0, upper: 2.5 }),
      ...logarithm,
      domain: { lower: 0.5, upper: 2 },
    });
    // 2.25 lies outside, 1 inside.
    const more = [0.9, 0.4];
    expect(below.sample(() => more.shift() ?? 0)).toBeCloseTo(0, 14);
    const little = transformed({
      of: normal({ mean: 0, standardDeviation: 1 }),
      ...logarithm,
      domain: { lower: 2, upper: 3 },
    });
    expect(little.sample(() => 0)).toBeCloseTo(Math.LN2, 10);
    expect(little.sample(() => 0.999999999)).toBeLessThan(Math.log(3));
  });

  test('with a fat tail across it, every quantile stays a number', () => {
    const d = inDecibels(student({ location: 0, scale: 0.3, degreesOfFreedom: 1 }));
    for (const p of [1e-9, 0.01, 0.5, 0.99, 1 - 1e-9]) expect(Number.isFinite(d.quantile(p))).toBe(true);
    for (const y of [-300, -20, 0, 20, 300]) expect(d.density(y)).toBeGreaterThanOrEqual(0);
    expect(d.mean).toBeUndefined();
    expect(d.standardDeviation).toBeUndefined();
  });

  test('a shape without standard deviation passes that on, its mean is kept', () => {
    const d = inDecibels(student({ location: 0, scale: 0.01, degreesOfFreedom: 2 }));
    const count = 100000;
    let sum = 0;
    for (let k = 0; k < count; k++) sum += d.quantile((k + 0.5) / count);
    expect(Math.abs((d.mean as number) - sum / count)).toBeLessThan(2e-4);
    expect(d.standardDeviation).toBeUndefined();
  });

  test('the two ways of averaging agree where little is cut and where more is', () => {
    const deviation = (scale: number) =>
      inDecibels(student({ location: 0, scale, degreesOfFreedom: 9 })).standardDeviation as number;
    // 4e-9 of the shape is cut for a scale of 0.05, less than 1e-10 for 0.03: the ratio follows the scale smoothly.
    expect(deviation(0.05) / deviation(0.03)).toBeCloseTo((0.05 / 0.03) * 1.0034, 2);
  });

  test('that the shape does not reach is refused', () => {
    const far = {
      of: normal({ mean: 0, standardDeviation: 1 }),
      ...logarithm,
      domain: { lower: 50, upper: 60 },
    };
    expect(() => transformed(far)).toThrow(
      new RangeError('transformed: the shape must reach into the domain, got {"lower":50,"upper":60}'),
    );
    expect(() => transformed({ of: unit, ...logarithm, domain: { lower: 2, upper: 3 } })).toThrow(
      new RangeError('transformed: the shape must reach into the domain, got {"lower":2,"upper":1}'),
    );
  });
});

describe('a function that will not do', () => {
  test('not a number at a limit', () => {
    expect(() => transformed({ of: rectangular({ lower: -1, upper: 1 }), ...logarithm })).toThrow(
      'transformed: forward must be monotone over the limits of the shape',
    );
    expect(() => transformed({ of: rectangular({ lower: -2, upper: -1 }), ...logarithm })).toThrow(
      RangeError,
    );
  });

  test('not a number at one limit of a falling one', () => {
    const falling = { forward: (x: number) => -Math.log(x), inverse: Math.exp, slope: (x: number) => -1 / x };
    expect(() => transformed({ of: rectangular({ lower: -1, upper: 2 }), ...falling })).toThrow(
      'transformed: forward must be monotone over the limits of the shape',
    );
  });

  test('level, or sloping the other way in the middle', () => {
    const flat = { forward: () => 1, inverse: () => 0, slope: () => 0 };
    expect(() => transformed({ of: unit, ...flat })).toThrow(
      new RangeError('transformed: forward must be monotone over the limits of the shape, got [1,1]'),
    );
    const wrong = { forward: (x: number) => x, inverse: (y: number) => y, slope: () => -1 };
    expect(() => transformed({ of: unit, ...wrong })).toThrow(RangeError);
  });
});
