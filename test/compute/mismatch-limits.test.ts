import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mismatchLimits, reflectionThrough } from '../../src/compute/mismatch-limits.ts';
import { mismatchCorrection } from '../../src/compute/power-kind.ts';
import { gainDb } from '../../src/compute/quantity.ts';
import { mismatchLossDb, reflectionOfSwr } from '../../src/compute/reflection.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const magnitude = fc.double({ min: 0, max: 0.6, noNaN: true });
const phase = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
const pair = (a: number, b: number) =>
  mismatchLimits({ source: reflectionOfSwr(a), load: reflectionOfSwr(b) });

/** Pairs of SWR with their limits in dB, recomputed from 20 lg(1 +- Gs Gl). */
const pairs: [number, number, number, number][] = [
  [1.05, 1.05, 0.005, -0.005],
  [1.1, 1.1, 0.02, -0.02],
  [1.1, 1.2, 0.038, -0.038],
  [1.1, 2, 0.137, -0.139],
  [1.2, 1.2, 0.071, -0.072],
  [1.2, 1.5, 0.157, -0.159],
  [1.2, 3, 0.386, -0.404],
  [1.3, 2, 0.37, -0.386],
  [1.5, 1.5, 0.341, -0.355],
  [1.5, 3, 0.828, -0.915],
  [2, 2, 0.915, -1.023],
  [2, 3, 1.339, -1.584],
  [3, 3, 1.938, -2.499],
];

describe('limits of mismatch between two magnitudes', () => {
  it.each(pairs)('SWR %f on %f is %f, %f dB', (a, b, upper, lower) => {
    expectPrinted(pair(a, b).upper, upper, 3);
    expectPrinted(pair(a, b).lower, lower, 3);
  });

  it('are the exact maximum, 3.669 % for SWR 1.50 and 1.20, not the first-order 3.636 %', () => {
    const exact = 100 * (10 ** (pair(1.5, 1.2).upper / 10) - 1);
    expectPrinted(exact, 3.669, 3);
    expect(Math.abs(exact - 200 * reflectionOfSwr(1.5) * reflectionOfSwr(1.2))).toBeGreaterThan(0.03);
  });

  it('hold the correction of every phase, and are reached', () => {
    fc.assert(
      fc.property(magnitude, magnitude, phase, (source, load, angle) => {
        const { lower, upper } = mismatchLimits({ source, load });
        const product = source * load;
        const db = 10 * Math.log10(1 - 2 * product * Math.cos(angle) + product ** 2);
        expect(db).toBeGreaterThanOrEqual(lower - 1e-9);
        expect(db).toBeLessThanOrEqual(upper + 1e-9);
        expectWithin(lower, 20 * Math.log10(1 - product), 1e-12);
        expectWithin(upper, 20 * Math.log10(1 + product), 1e-12);
      }),
    );
  });

  it('vanish where either side is matched', () => {
    expect(mismatchLimits({ source: 0, load: 0.5 })).toEqual({ lower: 0, upper: 0 });
    expect(mismatchLimits({ source: 0.5, load: 0 })).toEqual({ lower: 0, upper: 0 });
  });
});

describe('limits of mismatch through a two-port', () => {
  it('hold the correction of every set of phases', () => {
    const two = fc.record({
      input: magnitude,
      output: magnitude,
      gain: fc.double({ min: -30, max: 0, noNaN: true }),
    });
    fc.assert(
      fc.property(magnitude, magnitude, two, phase, phase, phase, (source, load, port, a, b, c) => {
        const between = { ...port, gain: gainDb(port.gain) };
        const x = source * port.input;
        const y = load * port.output;
        const z = 10 ** (port.gain / 10) * source * load;
        if ((1 - x) * (1 - y) <= z) return;
        const { lower, upper } = mismatchLimits({ source, load, between });
        // (1 - x e^ia)(1 - y e^ib) - z e^ic, real and imaginary part.
        const re = 1 - x * Math.cos(a) - y * Math.cos(b) + x * y * Math.cos(a + b) - z * Math.cos(c);
        const im = -x * Math.sin(a) - y * Math.sin(b) + x * y * Math.sin(a + b) - z * Math.sin(c);
        const db = 20 * Math.log10(Math.hypot(re, im));
        expect(db).toBeGreaterThanOrEqual(lower - 1e-9);
        expect(db).toBeLessThanOrEqual(upper + 1e-9);
      }),
    );
  });

  it('are those without it where it is a perfect straight piece', () => {
    const between = { input: 0, output: 0, gain: gainDb(0) };
    const bare = mismatchLimits({ source: 0.3, load: 0.2 });
    expect(mismatchLimits({ source: 0.3, load: 0.2, between })).toEqual(bare);
  });

  it('of SWR 2.0 on 1.25: bare -0.33 to +0.32, perfect 6 dB pad 0.08, pad of SWR 1.15 -0.36 to +0.34 dB', () => {
    const ends = { source: reflectionOfSwr(2), load: reflectionOfSwr(1.25) };
    const real = reflectionOfSwr(1.15);
    const bare = mismatchLimits(ends);
    const ideal = mismatchLimits({ ...ends, between: { input: 0, output: 0, gain: gainDb(-6) } });
    const padded = mismatchLimits({ ...ends, between: { input: real, output: real, gain: gainDb(-6) } });
    expectPrinted(bare.lower, -0.33, 2);
    expectPrinted(bare.upper, 0.32, 2);
    expectPrinted(ideal.lower, -0.08, 2);
    expectPrinted(ideal.upper, 0.08, 2);
    expectPrinted(padded.lower, -0.36, 2);
    expectPrinted(padded.upper, 0.34, 2);
  });

  it('are refused where reflections could leave nothing, and a gain is no pad', () => {
    const close = { source: 0.9, load: 0.9, between: { input: 0.9, output: 0.9, gain: gainDb(0) } };
    expect(() => mismatchLimits(close)).toThrow(
      /^mismatchLimits: reflections must leave some power at the lower limit, got -/,
    );
    const gain = { source: 0, load: 0, between: { input: 0, output: 0, gain: gainDb(1) } };
    expect(() => mismatchLimits(gain)).toThrow(
      new RangeError('mismatchLimits: between.gain must be <= 0, got 1'),
    );
  });
});

describe('what a load sees through a pad', () => {
  it('is the pad itself where it takes away much, and the source where it takes nothing', () => {
    const between = { input: 0.05, output: 0.04, gain: gainDb(-60) };
    expectWithin(reflectionThrough({ source: 0.5, between }), 0.04, 1e-6);
    expectNear(reflectionThrough({ source: 0.5, between: { input: 0, output: 0, gain: gainDb(0) } }), 0.5);
  });

  it('is a quarter of the source behind a perfect 6.02 dB pad', () => {
    const between = { input: 0, output: 0, gain: gainDb(-6.020599913279624) };
    expectNear(reflectionThrough({ source: 0.4, between }), 0.1);
  });

  it('grows with the reflection at its input', () => {
    const at = (input: number) =>
      reflectionThrough({ source: 0.5, between: { input, output: 0, gain: gainDb(-3) } });
    expectNear(at(0.2) / at(0), 1 / 0.9);
  });

  it('is refused for magnitudes that are none', () => {
    const between = { input: 0, output: 0, gain: gainDb(-3) };
    const wish = 'must be from 0 to below 1, got 1';
    expect(() => reflectionThrough({ source: 1, between })).toThrow(
      new RangeError(`reflectionThrough: source ${wish}`),
    );
    expect(() => reflectionThrough({ source: 0, between: { ...between, input: 1 } })).toThrow(
      new RangeError(`reflectionThrough: between.input ${wish}`),
    );
    expect(() => reflectionThrough({ source: 0, between: { ...between, output: 1 } })).toThrow(
      new RangeError(`reflectionThrough: between.output ${wish}`),
    );
    expect(() => mismatchLimits({ source: 0, load: 1 })).toThrow(
      new RangeError(`mismatchLimits: load ${wish}`),
    );
  });
});

describe('the power that is meant decides on the mismatch', () => {
  const ends = { source: 0.3, load: 0.2 };

  it('into an ideal load both magnitudes count, phase unknown', () => {
    expect(mismatchCorrection({ delivery: 'intoIdeal', ...ends })).toEqual(mismatchLimits(ends));
  });

  it.each(['delivered', 'net'] as const)(
    '%s: a known loss by the load alone, the source drops out',
    (delivery) => {
      const { lower, upper } = mismatchCorrection({ delivery, ...ends });
      expect(lower).toBe(upper);
      expect(lower).toBe(-mismatchLossDb(0.2));
      expect(mismatchCorrection({ delivery, source: 0.9, load: 0.2 })).toEqual({ lower, upper });
    },
  );

  it('incident: nothing to correct', () => {
    expect(mismatchCorrection({ delivery: 'incident', ...ends })).toEqual({ lower: 0, upper: 0 });
  });
});
