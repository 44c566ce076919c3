import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rayleigh } from '../../../src/compute/distribution/rayleigh.ts';
import { rice } from '../../../src/compute/distribution/rice.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { scaledBesselI } from '../../../src/compute/special/bessel-i.ts';

const scale = fc.double({ min: 0.01, max: 100, noNaN: true });
const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });

describe('Rayleigh', () => {
  test('share below undoes quantile', () => {
    fc.assert(
      fc.property(scale, share, (s, p) => {
        expect(rayleigh({ scale: s }).shareBelow(rayleigh({ scale: s }).quantile(p))).toBeCloseTo(p, 13);
      }),
    );
  });

  test('is the length of two unit normal values: half lies below sqrt(2 ln 2)', () => {
    const d = rayleigh({ scale: 1 });
    expect(d.shape).toBe('rayleigh');
    expect(d.quantile(0.5)).toBeCloseTo(Math.sqrt(2 * Math.LN2), 14);
    expect(d.mean).toBeCloseTo(1.2533141373155003, 14);
    expect(d.standardDeviation).toBeCloseTo(0.6551363775620336, 14);
    expect(d.density(1)).toBeCloseTo(Math.exp(-0.5), 14);
    expect(d.limits).toEqual({ lower: 0, upper: Number.POSITIVE_INFINITY });
    expect([-1, 0].map((x) => d.density(x) + d.shareBelow(x))).toEqual([0, 0]);
    expect([d.quantile(0), d.quantile(1)]).toEqual([0, Number.POSITIVE_INFINITY]);
    expect(d.sample(() => 0.5)).toBeCloseTo(Math.sqrt(2 * Math.LN2), 14);
  });

  test('at another scale densities are as much thinner as values are spread', () => {
    for (const s of [0.2, 5]) expect(rayleigh({ scale: s }).density(s)).toBeCloseTo(Math.exp(-0.5) / s, 13);
  });

  test('refuses a scale not above zero', () => {
    expect(() => rayleigh({ scale: 0 })).toThrow(new RangeError('rayleigh: scale must be > 0, got 0'));
    expect(() => rayleigh({ scale: 1 }).quantile(-1)).toThrow('quantile: share must be 0 to 1, got -1');
  });
});

describe('Rice', () => {
  const offset = fc.double({ min: 0.001, max: 60, noNaN: true });

  test('share below undoes quantile', () => {
    fc.assert(
      fc.property(offset, scale, share, (v, s, p) => {
        const d = rice({ offset: v * s, scale: s });
        expect(Math.abs(d.shareBelow(d.quantile(p)) - p)).toBeLessThan(1e-10);
      }),
    );
  });

  test('the density is the slope of the share below', () => {
    fc.assert(
      fc.property(offset, scale, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (v, s, p) => {
        const d = rice({ offset: v * s, scale: s });
        const x = d.quantile(p);
        // wide enough that the last digits of the shares, of which the slope is a small difference, do not show
        const h = 1e-4 * s;
        const slope = (d.shareBelow(x + h) - d.shareBelow(x - h)) / (2 * h);
        expect(slope / d.density(x)).toBeCloseTo(1, 5);
      }),
    );
  });

  test('the mean square is offset^2 + 2 scale^2', () => {
    fc.assert(
      fc.property(offset, scale, (v, s) => {
        const { mean = 0, standardDeviation = 0 } = rice({ offset: v * s, scale: s });
        expect((mean ** 2 + standardDeviation ** 2) / (s * s * (v * v + 2))).toBeCloseTo(1, 10);
      }),
    );
  });

  test('beyond any length lies what its density holds there, to 1e-11', () => {
    const d = rice({ offset: 1, scale: 1 });
    // Simpson's rule over 12 scales, beyond which nothing is left.
    const steps = 4000;
    for (const from of [3, 4.5, 5.5, 6.5]) {
      const heights = Array.from({ length: steps + 1 }, (_, k) => d.density(from + (12 * k) / steps));
      const weighed = heights.map((height, k) => height * (k === 0 || k === steps ? 1 : k % 2 === 0 ? 2 : 4));
      const beyond = (weighed.reduce((sum, height) => sum + height, 0) * 12) / steps / 3;
      expect(Math.abs(1 - d.shareBelow(from) - beyond)).toBeLessThan(1e-11);
    }
  });

  test('shares below agree with 30-digit integrals of the density, from next to no offset to a thousand scales', () => {
    // offset, length, share below: mpmath 1.3, quad of x exp(-(x^2 + a^2)/2) I0(x a)
    const rows: readonly (readonly [number, number, number])[] = [
      [1e-8, 3, 0.988891003461758],
      [1e-5, 1, 0.393469340272203],
      [1, 1e-4, 3.03265329477235e-9],
      [0.3, 1e-3, 4.77998626794369e-7],
      [10, 0.5, 2.14784908076891e-22],
      [10, 8, 0.0198957903579497],
      [100, 101, 0.840137887095144],
      [500, 500, 0.499601057520127],
      [1000, 998, 0.0227231229502843],
      [1000, 1001, 0.841223790922404],
    ];
    for (const [offset, length, below] of rows)
      expect(rice({ offset, scale: 1 }).shareBelow(length) / below).toBeCloseTo(1, 11);
  });

  test('with next to no offset it is the Rayleigh distribution, down to lengths whose square is no number', () => {
    const plain = rayleigh({ scale: 1 });
    for (const offset of [1e-5, 1e-20, 1e-200]) {
      const d = rice({ offset, scale: 1 });
      for (const p of [1e-6, 0.025, 0.5, 0.975]) expect(d.quantile(p) / plain.quantile(p)).toBeCloseTo(1, 9);
      for (const x of [1e-170, 1e-200]) expect(d.shareBelow(x)).toBe(0);
    }
  });

  test('a random value is the length of the point and two normal steps', () => {
    const draws = [0.8413447460685429, 0.5]; // One standard deviation along, none across.
    expect(rice({ offset: 3, scale: 2 }).sample(() => draws.shift() ?? 0)).toBeCloseTo(5, 12);
  });

  test('far from 0 it is a normal distribution about sqrt(offset^2 + scale^2)', () => {
    const d = rice({ offset: 500, scale: 1 });
    expect(d.mean).toBeCloseTo(500.001, 6);
    expect(d.standardDeviation).toBeCloseTo(1, 5);
    expect(d.shareBelow(500.001 + 1.959964)).toBeCloseTo(0.975, 6);
  });

  test('squared and x1 = 0.010 and 0.050, u = 0.005, it is the comparison loss of JCGM 101, 9.4', () => {
    // Exact values of the non-central chi-square distribution that clause 9.4.2.2 names; the clause prints trials.
    const interval = (x1: number) =>
      [0.025, 0.975].map((p) => 1e6 * rice({ offset: x1, scale: 0.005 }).quantile(p) ** 2);
    expect(interval(0)[0]).toBeCloseTo(1.2659, 4);
    expect(interval(0)[1]).toBeCloseTo(184.444, 3);
    expect(interval(0.01)[0]).toBeCloseTo(8.547, 3);
    expect(interval(0.01)[1]).toBeCloseTo(427.123, 3);
    expect(interval(0.05)[0]).toBeCloseTo(1638.48, 2);
    expect(interval(0.05)[1]).toBeCloseTo(3603.36, 2);
  });

  test('with no offset it is the Rayleigh distribution under its own name', () => {
    const d = rice({ offset: 0, scale: 2 });
    expect(d.shape).toBe('rice');
    expect(d.quantile(0.3)).toBe(rayleigh({ scale: 2 }).quantile(0.3));
  });

  test('random values have its mean and standard deviation', () => {
    const d = rice({ offset: 1.5, scale: 0.5 });
    const random = randomFrom(11);
    const count = 50000;
    const values = Array.from({ length: count }, () => d.sample(random));
    const mean = values.reduce((sum, x) => sum + x, 0) / count;
    const deviation = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / count);
    expect(Math.abs(mean - (d.mean as number))).toBeLessThan(0.01);
    expect(Math.abs(deviation - (d.standardDeviation as number))).toBeLessThan(0.01);
    expect(Number.isFinite(d.sample(() => 0))).toBe(true);
  });

  test('ends', () => {
    const d = rice({ offset: 1, scale: 1 });
    expect(d.shape).toBe('rice');
    expect(d.limits).toEqual({ lower: 0, upper: Number.POSITIVE_INFINITY });
    expect([d.quantile(0), d.quantile(1)]).toEqual([0, Number.POSITIVE_INFINITY]);
    expect([-1, 0].map((x) => d.density(x) + d.shareBelow(x))).toEqual([0, 0]);
    expect(d.shareBelow(1e6)).toBe(1);
  });

  test('refuses what is out of range', () => {
    expect(() => rice({ offset: -1, scale: 1 })).toThrow(new RangeError('rice: offset must be >= 0, got -1'));
    expect(() => rice({ offset: 1, scale: 0 })).toThrow(new RangeError('rice: scale must be > 0, got 0'));
    expect(() => rice({ offset: 1, scale: 1 }).quantile(2)).toThrow(
      new RangeError('quantile: share must be 0 to 1, got 2'),
    );
  });
});

describe('modified Bessel functions', () => {
  test('I0 and I1 of 1 (DLMF tables: 1.2660658778, 0.5651591040)', () => {
    expect(scaledBesselI(0, 1) * Math.E).toBeCloseTo(1.2660658777520084, 13);
    expect(scaledBesselI(1, 1) * Math.E).toBeCloseTo(0.565159103992485, 13);
    expect(scaledBesselI(0, 0)).toBeCloseTo(1, 15);
    expect(scaledBesselI(1, 0)).toBeCloseTo(0, 15);
  });

  test('the two ways of computing them meet', () => {
    for (const order of [0, 1] as const) {
      const [below, above] = [scaledBesselI(order, 39.999999), scaledBesselI(order, 40)];
      expect(below / above).toBeCloseTo(1 + 0.5e-6 / 40, 9);
    }
  });
});
