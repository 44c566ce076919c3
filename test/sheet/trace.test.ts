import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Waveform } from '#compute';
import { type Trace, traceSums } from '../../src/sheet/trace.ts';
import { slipOutcome, slippedPower, TRACE_SLIPS } from '../../src/sheet/trace-slips.ts';

const wave = fc.constantFrom<Waveform[]>('sine', 'square', 'triangle');
const trace: fc.Arbitrary<Trace> = fc.record({
  peakToPeakV: fc.double({ min: 0.01, max: 1000, noNaN: true }),
  loadOhm: fc.double({ min: 1, max: 1000, noNaN: true }),
  wave,
});
function near(got: number, wish: number, relative = 1e-12): void {
  expect(Math.abs(got - wish)).toBeLessThanOrEqual(relative * Math.abs(wish));
}

describe('a trace across a load', () => {
  it('twice as high brings four times the power, whatever its shape', () => {
    fc.assert(
      fc.property(trace, (one) => {
        const twice = { ...one, peakToPeakV: 2 * one.peakToPeakV };
        near(traceSums(twice).power, 4 * traceSums(one).power);
        near(traceSums(twice).level - traceSums(one).level, 20 * Math.log10(2), 1e-9);
      }),
    );
  });

  it('has its measures in order: average, RMS, peak, half of the height', () => {
    fc.assert(
      fc.property(trace, (one) => {
        const { averageV, rms, peak, peakToPeak, power, greatestW } = traceSums(one);
        expect(averageV).toBeLessThanOrEqual(rms * (1 + 1e-12));
        expect(rms).toBeLessThanOrEqual(peak * (1 + 1e-12));
        expect(2 * peak).toBe(peakToPeak);
        expect(power).toBeLessThanOrEqual(greatestW * (1 + 1e-12));
      }),
    );
  });

  it('brings into 50 ohms what the anchors of the trade say (1 W is 20 Vpp, 7.071 V RMS; common practice, V²/R)', () => {
    for (const [peakToPeakV, power, rms] of [
      [0.6325, 0.001, 0.2236],
      [6.325, 0.1, 2.236],
      [20, 1, 7.071],
      [44.72, 5, 15.81],
    ] as const) {
      const sums = traceSums({ peakToPeakV, loadOhm: 50, wave: 'sine' });
      near(sums.power, power, 2e-4);
      near(sums.rms, rms, 2e-4);
    }
  });

  it('of no height or into no load is refused', () => {
    expect(() => traceSums({ peakToPeakV: 0, loadOhm: 50, wave: 'sine' })).toThrow(RangeError);
    expect(() => traceSums({ peakToPeakV: 1, loadOhm: 0, wave: 'sine' })).toThrow(
      'ohms: value must be > 0, got 0',
    );
  });
});

describe('the usual slips', () => {
  const sine = fc.record({
    peakToPeakV: fc.double({ min: 0.01, max: 1000, noNaN: true }),
    loadOhm: fc.double({ min: 1, max: 1000, noNaN: true }),
    wave: fc.constant<Waveform>('sine'),
  });

  it('on a sine cost the same factor at any height and load: 4, 8 and 2; 6.02, 9.03 and 3.01 dB', () => {
    fc.assert(
      fc.property(sine, (one) => {
        near(slipOutcome('wholeAsPeak', one).factor, 4);
        near(slipOutcome('wholeAsRms', one).factor, 8);
        near(slipOutcome('peakAsRms', one).factor, 2);
        near(slipOutcome('sineForAll', one).factor, 1);
        near(slipOutcome('averageMeter', one).factor, 1);
        near(slipOutcome('probe', one).factor, 0.01);
      }),
    );
    expect(slipOutcome('wholeAsPeak', { peakToPeakV: 1, loadOhm: 50, wave: 'sine' }).error.toFixed(2)).toBe(
      '6.02',
    );
    expect(slipOutcome('wholeAsRms', { peakToPeakV: 1, loadOhm: 50, wave: 'sine' }).error.toFixed(2)).toBe(
      '9.03',
    );
  });

  it('multiply: the height for RMS is the height for the peak, and the peak for RMS', () => {
    fc.assert(
      fc.property(sine, (one) =>
        near(
          slipOutcome('wholeAsRms', one).factor,
          slipOutcome('wholeAsPeak', one).factor * slipOutcome('peakAsRms', one).factor,
        ),
      ),
    );
  });

  it('by a formula for sines halve a square wave and make half as much again of a triangle', () => {
    near(slipOutcome('sineForAll', { peakToPeakV: 3, loadOhm: 50, wave: 'square' }).factor, 1 / 2);
    near(slipOutcome('sineForAll', { peakToPeakV: 3, loadOhm: 50, wave: 'triangle' }).factor, 3 / 2);
  });

  it('by a meter that averages show 11 % too much of a square wave and 3.8 % too little of a triangle, in volts (common practice)', () => {
    const volts = (shape: Waveform): number =>
      100 * (Math.sqrt(slipOutcome('averageMeter', { peakToPeakV: 3, loadOhm: 50, wave: shape }).factor) - 1);
    expect(volts('square').toFixed(0)).toBe('11');
    expect(volts('triangle').toFixed(1)).toBe('-3.8');
  });

  it('of the load go as the load once, and cost nothing at 50 ohms', () => {
    fc.assert(fc.property(trace, (one) => near(slipOutcome('assumedLoad', one).factor, one.loadOhm / 50)));
  });

  it('by ten times the logarithm of volts halve the level in dBm', () => {
    fc.assert(
      fc.property(trace, (one) => {
        expect(slipOutcome('tenLog', one).level).toBeCloseTo(traceSums(one).level / 2, 9);
      }),
    );
  });

  it('each give a power that agrees with their factor and their error', () => {
    fc.assert(
      fc.property(trace, fc.constantFrom(...TRACE_SLIPS), (one, slip) => {
        const { power, factor, error } = slipOutcome(slip, one);
        expect(power).toBe(slippedPower(slip, one));
        near(factor * traceSums(one).power, power);
        near(10 ** (error / 10), factor, 1e-9);
      }),
    );
  });
});
