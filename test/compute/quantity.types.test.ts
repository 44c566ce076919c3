import { describe, expect, it } from 'vitest';
import { addGain, levelDifference, levelToPower, powerToLevel } from '../../src/compute/level.ts';
import {
  gainDb,
  levelDbm,
  ohms,
  powerW,
  voltsPeak,
  voltsPeakToPeak,
  voltsRms,
} from '../../src/compute/quantity.ts';
import { peakOfPeakToPeak, powerOfPeak, powerOfPeakToPeak, powerOfVolts } from '../../src/compute/sine.ts';

/** What does not compile is checked by the types run: a directive without an error beneath it is itself an error. */
describe('quantities that look alike', () => {
  it('are told apart: a gain is no level, a level is no gain', () => {
    const level = levelDbm(10);
    const gain = gainDb(3);
    // @ts-expect-error two levels do not add: 10 dBm + 10 dBm is no 20 dBm
    expect(addGain({ level, gain: level })).toBe(20);
    // @ts-expect-error a gain is no level to start from
    expect(addGain({ level: gain, gain })).toBe(6);
    // @ts-expect-error a gain has no power
    expect(levelToPower(gain)).toBeGreaterThan(0);
    // @ts-expect-error the difference of a level and a gain means nothing
    expect(levelDifference({ level, reference: gain })).toBe(7);
    // @ts-expect-error a bare number is not yet a level
    expect(levelToPower(10)).toBeGreaterThan(0);
  });

  it('are told apart: RMS, peak and peak-to-peak', () => {
    const resistance = ohms(50);
    // @ts-expect-error peak-to-peak taken as peak is four times the power
    expect(powerOfPeak({ peak: voltsPeakToPeak(20), resistance })).toBe(4);
    // @ts-expect-error peak taken as RMS is twice the power
    expect(powerOfVolts({ volts: voltsPeak(10), resistance })).toBe(2);
    // @ts-expect-error RMS is not what stands between trough and crest
    expect(powerOfPeakToPeak({ peakToPeak: voltsRms(20), resistance })).toBe(1);
    // @ts-expect-error a resistance in bare ohms is not checked yet
    expect(powerOfVolts({ volts: voltsRms(5), resistance: 50 })).toBe(0.5);
  });

  it('fit where they belong', () => {
    expect(addGain({ level: levelDbm(10), gain: gainDb(-20) })).toBe(-10);
    expect(powerToLevel(powerW(1))).toBe(30);
    expect(peakOfPeakToPeak(voltsPeakToPeak(20))).toBe(10);
  });
});
