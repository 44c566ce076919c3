import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { harmonicsLimitsDb } from '../../src/compute/validity.ts';
import { expectPrinted, expectWithin } from './near.ts';

const harmonic = fc.double({ min: -80, max: -21, noNaN: true });
const samples = 2000;
const peakLimits = (harmonicsDbc: readonly number[]) => harmonicsLimitsDb({ harmonicsDbc, responds: 'peak' });
const powerRise = (harmonicsDbc: readonly number[]) =>
  harmonicsLimitsDb({ harmonicsDbc, responds: 'mean' }).upper;

describe('harmonics on a peak detector', () => {
  it.each([
    [-20, -0.92, 0.83],
    [-30, -0.28, 0.27],
    [-40, -0.09, 0.09],
  ])('one at %i dBc moves a peak by %f to %f dB', (dbc, lower, upper) => {
    const limits = peakLimits([dbc]);
    expectPrinted(limits.lower, lower, 2);
    expectPrinted(limits.upper, upper, 2);
  });

  it('raise the true power by no more than 0.04 dB at -20 dBc', () => {
    expectPrinted(powerRise([-20]), 0.04, 2);
  });

  it('never move a peak beyond the limits, nor the mean power from its value, at any phase', () => {
    const phase = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(harmonic, harmonic, phase, phase, (second, third, a, b) => {
        const at = (t: number) =>
          Math.cos(t) + 10 ** (second / 20) * Math.cos(2 * t + a) + 10 ** (third / 20) * Math.cos(3 * t + b);
        const wave = Array.from({ length: samples }, (_, i) => at((2 * Math.PI * i) / samples));
        const peakDb = 20 * Math.log10(Math.max(...wave));
        const { lower, upper } = peakLimits([second, third]);
        expect(peakDb).toBeGreaterThanOrEqual(lower - 1e-4);
        expect(peakDb).toBeLessThanOrEqual(upper + 1e-9);
        const power = wave.reduce((sum, v) => sum + v * v, 0) / samples;
        expectWithin(powerRise([second, third]), 10 * Math.log10(2 * power), 1e-9);
      }),
      { numRuns: 50 },
    );
  });

  it('that are absent do nothing', () => {
    expect(peakLimits([])).toEqual({ lower: 0, upper: 0 });
    expect(powerRise([])).toBe(0);
  });
});
