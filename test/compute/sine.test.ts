import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelToPower } from '../../src/compute/level.ts';
import { levelDbm, ohms, powerW, voltsPeak, voltsPeakToPeak, voltsRms } from '../../src/compute/quantity.ts';
import {
  peakOfPeakToPeak,
  peakOfPower,
  peakOfRectifiedAverage,
  peakOfRms,
  peakToPeakOfPeak,
  peakToPeakOfPower,
  powerOfPeak,
  powerOfPeakToPeak,
  powerOfVolts,
  rectifiedAverageOfPeak,
  rmsOfPeak,
  voltsOfPower,
} from '../../src/compute/sine.ts';
import { averageMeterRatio, crestFactor, formFactor } from '../../src/compute/waveform.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const volts = fc.double({ min: 1e-6, max: 1e4, noNaN: true });
const resistance = fc.double({ min: 0.01, max: 1e6, noNaN: true }).map(ohms);
const fifty = ohms(50);

describe('a sine', () => {
  it('comes back from peak, peak-to-peak, RMS and rectified average', () => {
    fc.assert(
      fc.property(volts, (v) => {
        expectNear(peakOfRms(rmsOfPeak(voltsPeak(v))), v);
        expectNear(peakOfPeakToPeak(peakToPeakOfPeak(voltsPeak(v))), v);
        expectNear(peakOfRectifiedAverage(rectifiedAverageOfPeak(voltsPeak(v))), v);
      }),
    );
  });

  it('has rectified average < RMS < peak < peak-to-peak', () => {
    fc.assert(
      fc.property(volts, (v) => {
        const peak = voltsPeak(v);
        expect(rectifiedAverageOfPeak(peak)).toBeLessThan(rmsOfPeak(peak));
        expect(rmsOfPeak(peak)).toBeLessThan(peak);
        expect(peakToPeakOfPeak(peak)).toBe(2 * v);
      }),
    );
  });

  it('brings the same power into a resistance however its voltage is counted', () => {
    fc.assert(
      fc.property(volts, resistance, (v, r) => {
        const peak = voltsPeak(v);
        const power = powerOfVolts({ volts: rmsOfPeak(peak), resistance: r });
        expectNear(powerOfPeak({ peak, resistance: r }), power);
        expectNear(powerOfPeakToPeak({ peakToPeak: peakToPeakOfPeak(peak), resistance: r }), power);
      }),
    );
  });

  it('comes back from the power, however its voltage is counted', () => {
    fc.assert(
      fc.property(volts, resistance, (v, r) => {
        const rms = powerOfVolts({ volts: voltsRms(v), resistance: r });
        expectNear(voltsOfPower({ power: rms, resistance: r }), v);
        const peak = powerOfPeak({ peak: voltsPeak(v), resistance: r });
        expectNear(peakOfPower({ power: peak, resistance: r }), v);
        const whole = powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(v), resistance: r });
        expectNear(peakToPeakOfPower({ power: whole, resistance: r }), v);
      }),
    );
  });
});

describe('volts at 50 ohm: table of a university course', () => {
  it.each([
    [-20, 0.0223607, 0.0316228, 0.0632456],
    [-10, 0.0707107, 0.1, 0.2],
    [-6, 0.112069, 0.158489, 0.316979],
    [-3, 0.158301, 0.223872, 0.447744],
    [0, 0.223607, 0.316228, 0.632456],
    [3, 0.315853, 0.446684, 0.893367],
    [6, 0.446154, 0.630957, 1.26191],
    [13, 0.998815, 1.41254, 2.82508],
    [20, 2.23607, 3.16228, 6.32456],
    [30, 7.07107, 10, 20],
    [37, 15.8301, 22.3872, 44.7744],
    [40, 22.3607, 31.6228, 63.2456],
    [50, 70.7107, 100, 200],
  ])('%i dBm is %f V RMS, %f V peak, %f V peak-to-peak', (dbm, rms, peak, whole) => {
    const into = { power: levelToPower(levelDbm(dbm)), resistance: fifty };
    expectNear(voltsOfPower(into), rms, 5e-6);
    expectNear(peakOfPower(into), peak, 5e-6);
    expectNear(peakToPeakOfPower(into), whole, 5e-6);
  });

  it('5 W is 15.81 V RMS, 22.36 V peak, 44.72 V peak-to-peak', () => {
    const into = { power: powerW(5), resistance: fifty };
    expectPrinted(voltsOfPower(into), 15.81, 2);
    expectPrinted(peakOfPower(into), 22.36, 2);
    expectPrinted(peakToPeakOfPower(into), 44.72, 2);
  });

  it('500 mW is exactly 5 V RMS, and 28.5 dBm is 5.95 V', () => {
    expect(voltsOfPower({ power: powerW(0.5), resistance: fifty })).toBe(5);
    expectPrinted(voltsOfPower({ power: levelToPower(levelDbm(28.5)), resistance: fifty }), 5.95, 2);
  });
});

describe('mistakes of counting (common mistakes)', () => {
  it('peak-to-peak taken as peak is 4 times the power, taken as RMS 8 times; peak as RMS twice', () => {
    const peakToPeak = voltsPeakToPeak(20);
    const right = powerOfPeakToPeak({ peakToPeak, resistance: fifty });
    expectNear(powerOfPeak({ peak: voltsPeak(peakToPeak), resistance: fifty }), 4 * right);
    expectNear(powerOfVolts({ volts: voltsRms(peakToPeak), resistance: fifty }), 8 * right);
    expectNear(powerOfVolts({ volts: voltsRms(10), resistance: fifty }), 2 * right);
  });
});

describe('waveforms in contrast', () => {
  it('have crest factors of root two, one and root three', () => {
    expectNear(crestFactor('sine'), Math.SQRT2);
    expect(crestFactor('square')).toBe(1);
    expectNear(crestFactor('triangle'), Math.sqrt(3));
  });

  it('have form factors of 1.1107, 1 and 1.1547', () => {
    expectPrinted(formFactor('sine'), 1.1107, 4);
    expect(formFactor('square')).toBe(1);
    expectPrinted(formFactor('triangle'), 1.1547, 4);
  });

  it('are shown 11 % high (square) and 3.8 % low (triangle) by an average-responding meter', () => {
    expect(averageMeterRatio('sine')).toBe(1);
    expectPrinted(100 * (averageMeterRatio('square') - 1), 11.1, 1);
    expectPrinted(100 * (averageMeterRatio('triangle') - 1), -3.8, 1);
  });

  it('agree with sums over finely sampled periods', () => {
    const count = 60_000;
    const waves = {
      sine: (t: number) => Math.sin(2 * Math.PI * t),
      square: (t: number) => (t < 0.5 ? 1 : -1),
      triangle: (t: number) => 1 - 4 * Math.abs(t - 0.5),
    };
    for (const name of ['sine', 'square', 'triangle'] as const) {
      const samples = Array.from({ length: count }, (_, i) => waves[name]((i + 0.5) / count));
      const rms = Math.sqrt(samples.reduce((sum, v) => sum + v * v, 0) / count);
      const average = samples.reduce((sum, v) => sum + Math.abs(v), 0) / count;
      expectWithin(crestFactor(name), 1 / rms, 1e-6);
      expectWithin(formFactor(name), rms / average, 1e-6);
    }
  });
});

it('a negative rectified average is refused', () => {
  expect(() => peakOfRectifiedAverage(-1)).toThrow(/^voltsPeak: value must be >= 0, got -1\.57/);
});
