import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { mismatch } from '../../../src/compute/distribution/mismatch.ts';
import { type Knowledge, mismatchWithin } from '../../../src/compute/distribution/mismatch-within.ts';
import { mismatchLimits } from '../../../src/compute/mismatch-limits.ts';
import { gainDb } from '../../../src/compute/quantity.ts';
import { randomFrom } from '../../../src/compute/random.ts';

const reflection = fc.double({ min: 0.01, max: 0.7, noNaN: true });
const small = fc.double({ min: 0.005, max: 0.15, noNaN: true });
const knowledges = ['magnitude', 'disc', 'uniformMagnitude'] as const satisfies readonly Knowledge[];
const between = fc
  .tuple(small, small, fc.double({ min: -20, max: -0.5, noNaN: true }))
  .map(([input, output, gain]) => ({ input, output, gain: gainDb(gain) }));
const share = fc.double({ min: 0.002, max: 0.998, noNaN: true });

const powerOf = (level: number) => 10 ** (level / 10);

/** Mean and standard deviation of a function of the quantity, by equal steps of share. */
function momentsOf(d: Distribution, f: (x: number) => number, count = 4000) {
  const values = Array.from({ length: count }, (_, k) => f(d.quantile((k + 0.5) / count)));
  const mean = values.reduce((sum, x) => sum + x, 0) / count;
  return { mean, deviation: Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / count) };
}

/**
 * Share of all settings of the three phases for which 20 lg |(1 - A)(1 - B) - C| lies between two levels, counted one by one: source 0.4, load 0.5,
 * a two-port of -3 dB that reflects 0.3 and 0.2.
 */
function shareByPhases(lower: number, upper: number): number {
  const [a, b, c] = [0.4 * 0.3, 0.5 * 0.2, 10 ** (-3 / 10) * 0.4 * 0.5];
  const turn = Array.from({ length: 90 }, (_, k) => (2 * Math.PI * (k + 0.5)) / 90);
  const [low, high] = [10 ** (lower / 10), 10 ** (upper / 10)];
  let count = 0;
  for (const alpha of turn)
    for (const beta of turn) {
      const [re1, im1] = [1 - a * Math.cos(alpha), -a * Math.sin(alpha)];
      const [re2, im2] = [1 - b * Math.cos(beta), -b * Math.sin(beta)];
      const [re, im] = [re1 * re2 - im1 * im2, re1 * im2 + im1 * re2];
      for (const gamma of turn) {
        const power = (re - c * Math.cos(gamma)) ** 2 + (im - c * Math.sin(gamma)) ** 2;
        if (power >= low && power < high) count += 1;
      }
    }
  return count / turn.length ** 3;
}

describe('mismatch of known magnitudes', () => {
  test('its density is the slope of its share below, through a two-port too', () => {
    for (const [source, load] of [
      [0.1, 0.2],
      [0.5, 0.6],
    ] as const) {
      const d = mismatch({ source, load });
      for (const p of [0.05, 0.3, 0.5, 0.9]) {
        const x = d.quantile(p);
        const slope = (d.shareBelow(x + 1e-6) - d.shareBelow(x - 1e-6)) / 2e-6;
        expect(d.density(x) / slope).toBeCloseTo(1, 6);
      }
    }
    const pad = { input: 0.3, output: 0.2, gain: gainDb(-3) };
    const d = mismatch({ source: 0.4, load: 0.5, between: pad });
    const near = 0.02 * (d.limits.upper - d.limits.lower);
    for (const p of [0.1, 0.3, 0.5, 0.9]) {
      const x = d.quantile(p);
      expect(d.density(x) / (shareByPhases(x - near, x + near) / (2 * near))).toBeCloseTo(1, 1);
    }
    expect(d.shape).toBe('mismatch');
    const { deviation } = momentsOf(d, (level) => level, 20_000);
    expect((d.standardDeviation ?? 0) / deviation).toBeCloseTo(1, 3);
  });

  test('lies between 20 lg(1 - Gs Gl) and 20 lg(1 + Gs Gl)', () => {
    fc.assert(
      fc.property(reflection, reflection, share, (source, load, p) => {
        const d = mismatch({ source, load });
        expect(d.limits.lower).toBeCloseTo(20 * Math.log10(1 - source * load), 10);
        expect(d.limits.upper).toBeCloseTo(20 * Math.log10(1 + source * load), 10);
        expect(d.quantile(p)).toBeGreaterThan(d.limits.lower);
        expect(d.quantile(p)).toBeLessThan(d.limits.upper);
      }),
    );
  });

  test('half of all phases add and half subtract: at a quarter turn the level is 10 lg(1 + r^2)', () => {
    fc.assert(
      fc.property(reflection, reflection, (source, load) => {
        const d = mismatch({ source, load });
        expect(d.quantile(0.5)).toBeCloseTo(10 * Math.log10(1 + (source * load) ** 2), 10);
      }),
    );
  });

  test('the mean is 0 dB and the mean power ratio 1 + r^2', () => {
    const d = mismatch({ source: 0.5, load: 0.6 });
    expect(d.mean).toBe(0);
    expect(momentsOf(d, (x) => x).mean).toBeCloseTo(0, 6);
    expect(momentsOf(d, powerOf).mean).toBeCloseTo(1 + 0.3 ** 2, 6);
    expect(momentsOf(d, (x) => x).deviation / (d.standardDeviation as number)).toBeCloseTo(1, 5);
  });

  test('the power ratio spreads by sqrt(2) Gs Gl: divided by the root of two, not of three', () => {
    const d = mismatch({ source: 0.2, load: 0.09 });
    expect(momentsOf(d, powerOf).deviation / (0.2 * 0.09)).toBeCloseTo(Math.SQRT2, 5);
  });

  test('VSWR 1.5 on 2.0 gives +0.561 and -0.599 dB', () => {
    const d = mismatch({ source: 0.2, load: 1 / 3 });
    expect(d.limits.upper).toBeCloseTo(0.561, 3);
    expect(d.limits.lower).toBeCloseTo(-0.599, 3);
    expect(d.shape).toBe('mismatch');
  });

  test('nothing reflected is no correction at all', () => {
    expect(mismatch({ source: 0, load: 0.5 }).shape).toBe('constant');
    expect(mismatch({ source: 0, load: 0.5 }).mean).toBe(0);
  });

  test('refuses magnitudes of one or more', () => {
    expect(() => mismatch({ source: 1, load: 0.5 })).toThrow(RangeError);
    expect(() => mismatch({ source: -0.1, load: 0.5 })).toThrow(RangeError);
  });
});

describe('mismatch of magnitudes known only within bounds', () => {
  test('the power ratio spreads by 1/sqrt(2) for two discs and sqrt(2)/3 for two uniform magnitudes', () => {
    const greatest = 0.2 * 0.1;
    const spread = (kind: Knowledge) =>
      momentsOf(mismatchWithin({ source: 0.2, load: 0.1, knowledge: { source: kind, load: kind } }), powerOf)
        .deviation / greatest;
    expect(spread('magnitude')).toBeCloseTo(Math.SQRT2, 4);
    expect(spread('disc')).toBeCloseTo(Math.SQRT1_2, 4);
    expect(spread('uniformMagnitude')).toBeCloseTo(Math.SQRT2 / 3, 4);
  });

  test('quantiles have mean 0 dB and the standard deviation stated, for all nine kinds', () => {
    for (const source of knowledges)
      for (const load of knowledges) {
        const d = mismatchWithin({ source: 0.5, load: 0.4, knowledge: { source, load } });
        const { mean, deviation } = momentsOf(d, (x) => x);
        expect(d.mean).toBe(0);
        expect(Math.abs(mean)).toBeLessThan(1e-4);
        expect(deviation / (d.standardDeviation as number)).toBeCloseTo(1, 3);
      }
  });

  test('share below undoes quantile and its slope is the density', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...knowledges),
        fc.constantFrom(...knowledges),
        share,
        (source, load, p) => {
          const d = mismatchWithin({ source: 0.4, load: 0.3, knowledge: { source, load } });
          const x = d.quantile(p);
          expect(d.shareBelow(x)).toBeCloseTo(p, 7);
          const step = 1e-5;
          // Near 0 dB the density of small reflections has a peak without end.
          if (Math.abs(x) > 0.01 && p > 0.02 && p < 0.98)
            expect((d.shareBelow(x + step) - d.shareBelow(x - step)) / (2 * step) / d.density(x)).toBeCloseTo(
              1,
              3,
            );
        },
      ),
    );
  });

  test('one known magnitude leaves sqrt(2 E w^2), w the other as a part of its bound', () => {
    // E w^2 is 1/2 over a disc and 1/3 where every magnitude is alike.
    for (const [kind, square] of [
      ['disc', 1 / 2],
      ['uniformMagnitude', 1 / 3],
    ] as const)
      for (const knowledge of [
        { source: kind, load: 'magnitude' },
        { source: 'magnitude', load: kind },
      ] as const) {
        const d = mismatchWithin({ source: 0.2, load: 0.1, knowledge });
        expect(d.shape).toBe('mismatch');
        expect(momentsOf(d, powerOf).deviation / (0.2 * 0.1)).toBeCloseTo(Math.sqrt(2 * square), 4);
      }
  });

  test('random values lie below its quantiles as often as they should, for all nine kinds', () => {
    const random = randomFrom(8);
    const count = 20000;
    for (const source of knowledges)
      for (const load of knowledges) {
        const d = mismatchWithin({ source: 0.5, load: 0.4, knowledge: { source, load } });
        const drawn = Array.from({ length: count }, () => d.sample(random));
        for (const p of [0.1, 0.3, 0.9]) {
          const below = drawn.filter((x) => x <= d.quantile(p)).length / count;
          expect(Math.abs(below - p)).toBeLessThan(4.5 * Math.sqrt((p * (1 - p)) / count));
        }
      }
  });

  test('source and load may be exchanged', () => {
    const one = mismatchWithin({
      source: 0.4,
      load: 0.3,
      knowledge: { source: 'disc', load: 'uniformMagnitude' },
    });
    const other = mismatchWithin({
      source: 0.3,
      load: 0.4,
      knowledge: { source: 'uniformMagnitude', load: 'disc' },
    });
    for (const p of [0.03, 0.4, 0.9]) expect(one.quantile(p)).toBe(other.quantile(p));
  });

  test('knowing less than the magnitude narrows the spread', () => {
    const spread = (kind: Knowledge) =>
      mismatchWithin({ source: 0.4, load: 0.3, knowledge: { source: kind, load: 'magnitude' } })
        .standardDeviation as number;
    expect(spread('disc')).toBeLessThan(spread('magnitude'));
    expect(spread('uniformMagnitude')).toBeLessThan(spread('disc'));
  });

  test('nothing lies outside the limits, and nothing reflected is no correction', () => {
    const knowledge = { source: 'disc', load: 'disc' } as const;
    const d = mismatchWithin({ source: 0.4, load: 0.3, knowledge });
    const { lower, upper } = d.limits;
    expect([lower - 0.1, lower, upper, upper + 0.1].map((x) => d.shareBelow(x))).toEqual([0, 0, 1, 1]);
    expect([lower - 0.1, upper + 0.1].map((x) => d.density(x))).toEqual([0, 0]);
    expect([d.quantile(0), d.quantile(1)]).toEqual([lower, upper]);
    expect(() => d.quantile(1.5)).toThrow(new RangeError('quantile: share must be 0 to 1, got 1.5'));
    expect(mismatchWithin({ source: 0.4, load: 0, knowledge }).shape).toBe('constant');
  });
});

describe('mismatch through a two-port', () => {
  test('keeps within its limits, with mean 0 dB and the standard deviation stated', () => {
    fc.assert(
      fc.property(reflection, reflection, between, (source, load, pad) => {
        const d = mismatch({ source, load, between: pad });
        const limits = mismatchLimits({ source, load, between: pad });
        expect(d.limits.lower).toBe(limits.lower);
        expect(d.limits.upper).toBe(limits.upper);
        const { mean, deviation } = momentsOf(d, (x) => x, 1000);
        expect(Math.abs(mean)).toBeLessThan(2e-3 * (d.standardDeviation as number));
        expect(Math.abs(deviation / (d.standardDeviation as number) - 1)).toBeLessThan(5e-3);
      }),
      { numRuns: 25 },
    );
  });

  test('a perfect through piece is as if it were not there', () => {
    const plain = mismatch({ source: 0.3, load: 0.2 });
    const through = mismatch({ source: 0.3, load: 0.2, between: { input: 0, output: 0, gain: gainDb(0) } });
    for (const p of [0.03, 0.25, 0.5, 0.9]) expect(through.quantile(p)).toBeCloseTo(plain.quantile(p), 5);
    expect(through.standardDeviation).toBeCloseTo(plain.standardDeviation as number, 10);
  });

  test('a heavy pad leaves the mismatch of its own two ends', () => {
    const pad = { input: 0.1, output: 0.1, gain: gainDb(-60) };
    const d = mismatch({ source: 0.3, load: 0, between: pad });
    const own = mismatch({ source: 0.3, load: 0.1 });
    for (const p of [0.03, 0.5, 0.9]) expect(d.quantile(p)).toBeCloseTo(own.quantile(p), 5);
  });

  test('agrees with random phases, whichever of the three waves is the largest', () => {
    const pads = [
      { input: 0.05, output: 0.04, gain: gainDb(-1) },
      { input: 0.3, output: 0.05, gain: gainDb(-10) },
      { input: 0.05, output: 0.3, gain: gainDb(-10) },
    ];
    for (const pad of pads) {
      const d = mismatch({ source: 0.3, load: 0.4, between: pad });
      const random = randomFrom(5);
      const count = 40000;
      const levels = Array.from({ length: count }, () => {
        const wave = (r: number) => {
          const phase = 2 * Math.PI * random();
          return [r * Math.cos(phase), r * Math.sin(phase)] as const;
        };
        const [a, b, c] = [wave(0.3 * pad.input), wave(0.4 * pad.output), wave(0.12 * 10 ** (pad.gain / 10))];
        const re = (1 - a[0]) * (1 - b[0]) - a[1] * b[1] - c[0];
        const im = -(1 - a[0]) * b[1] - (1 - b[0]) * a[1] - c[1];
        return 10 * Math.log10(re * re + im * im);
      });
      for (const p of [0.025, 0.3, 0.5, 0.975]) {
        const below = levels.filter((x) => x <= d.quantile(p)).length / count;
        expect(Math.abs(below - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / count));
      }
      const drawn = Array.from({ length: count }, () => d.sample(random));
      const below = drawn.filter((x) => x <= d.quantile(0.3)).length / count;
      expect(Math.abs(below - 0.3)).toBeLessThan(4 * Math.sqrt(0.21 / count));
    }
  });

  /** Levels over a grid of all three phases, of waves as large as these. */
  const gridOf = ({ a, b, c }: { a: number; b: number; c: number }, steps = 48) => {
    const phases = Array.from({ length: steps }, (_, k) => (2 * Math.PI * (k + 0.5)) / steps);
    const waves = (r: number) => phases.map((phase) => [r * Math.cos(phase), r * Math.sin(phase)] as const);
    const levels: number[] = [];
    for (const [aRe, aIm] of waves(a))
      for (const [bRe, bIm] of waves(b))
        for (const [cRe, cIm] of waves(c)) {
          const re = (1 - aRe) * (1 - bRe) - aIm * bIm - cRe;
          const im = -(1 - aRe) * bIm - (1 - bRe) * aIm - cIm;
          levels.push(10 * Math.log10(re * re + im * im));
        }
    return levels;
  };

  test('of strong reflections has the spread of all phases', () => {
    const pad = { input: 0.4, output: 0.4, gain: gainDb(-3) };
    const levels = gridOf({ a: 0.28, b: 0.28, c: 0.49 * 10 ** -0.3 });
    const spread = Math.sqrt(levels.reduce((sum, x) => sum + x * x, 0) / levels.length);
    expect(mismatch({ source: 0.7, load: 0.7, between: pad }).standardDeviation).toBeCloseTo(spread, 8);
  });

  test('of strong reflections, the wave through both ways the largest, has their shares and draws', () => {
    const d = mismatch({ source: 0.8, load: 0.8, between: { input: 0.1, output: 0.45, gain: gainDb(-2) } });
    const levels = gridOf({ a: 0.08, b: 0.36, c: 0.64 * 10 ** -0.2 });
    for (const p of [0.05, 0.3, 0.5, 0.9]) {
      const below = levels.filter((x) => x <= d.quantile(p)).length / levels.length;
      expect(Math.abs(below - p)).toBeLessThan(3e-3);
    }
    const random = randomFrom(7);
    const drawn = Array.from({ length: 40000 }, () => d.sample(random));
    const spread = Math.sqrt(drawn.reduce((sum, x) => sum + x * x, 0) / drawn.length);
    expect(Math.abs(spread / (d.standardDeviation as number) - 1)).toBeLessThan(0.02);
  });

  test('of two ends far apart has in its middle, between its peaks, the density of two mismatches added', () => {
    const pad = { input: 0.375, output: 0.25, gain: gainDb(-200) };
    const d = mismatch({ source: 0.8, load: 0.8, between: pad });
    const one = mismatch({ source: 0.8, load: 0.375 });
    const other = mismatch({ source: 0.8, load: 0.25 });
    const steps = Array.from({ length: 4000 }, (_, k) => other.quantile((k + 0.5) / 4000));
    for (const p of [0.3, 0.4, 0.5]) {
      const x = d.quantile(p);
      const density = steps.reduce((sum, y) => sum + one.density(x - y), 0) / steps.length;
      expect(d.density(x) / density).toBeCloseTo(1, 2);
    }
  });

  test('with nothing reflected it is no correction', () => {
    expect(
      mismatch({ source: 0, load: 0, between: { input: 0.1, output: 0.1, gain: gainDb(-3) } }).shape,
    ).toBe('constant');
  });
});

describe('the density behind a two-port', () => {
  const pad = { input: 0.1, output: 0.1, gain: gainDb(-3) };
  const { density, limits } = mismatch({ source: 0.4, load: 0.5, between: pad });
  const hair = 1e-9 * (limits.upper - limits.lower);

  test('is nothing outside the limits, near and far, and something at them', () => {
    for (const x of [limits.lower - hair, limits.upper + hair, limits.lower - 1, limits.upper + 1])
      expect(Math.abs(density(x))).toBe(0);
    expect(density(limits.lower)).toBeGreaterThan(0);
    expect(density(limits.upper)).toBeGreaterThan(0);
    expect(density(Number.NaN)).toBe(0);
  });
});

describe('a mismatch of next to nothing', () => {
  test('keeps its U shape, however small both reflections are', () => {
    for (const magnitude of [1e-2, 1e-6, 1e-9, 1e-12, 1e-70]) {
      const { limits, quantile, shareBelow, standardDeviation } = mismatch({
        source: magnitude,
        load: magnitude,
      });
      const halfWidth = (20 / Math.LN10) * magnitude ** 2;
      expect(limits.upper / halfWidth).toBeCloseTo(1, 3);
      expect((standardDeviation ?? Number.NaN) / halfWidth).toBeCloseTo(Math.SQRT1_2, 3);
      // an arcsine shape has a tenth of its values below the cosine of a tenth of half a turn
      expect(quantile(0.1) / halfWidth).toBeCloseTo(-Math.cos(0.1 * Math.PI), 3);
      expect(shareBelow(0)).toBeCloseTo(0.5, 2);
    }
  });
});
