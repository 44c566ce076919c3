import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`trace.${name}`);
const nb = '\u00a0';
const PEAK = 14.1 / 2;
const MEAN = PEAK ** 2 / 2 / 50;
const milliwatts = (watts: number): string => `${(1000 * watts).toFixed(0)}${nb}mW`;

describe('the numbers of the lesson on a trace, each by hand', () => {
  it('are the measures of a sine of 14.1 V from trough to crest', () => {
    expect(value('whole')).toBe(`14.1${nb}Vpp`);
    expect(value('peak')).toBe(`7.05${nb}V`);
    expect(value('rms')).toBe(`${(PEAK / Math.SQRT2).toFixed(2)}${nb}V`);
    expect(value('average')).toBe(`${((2 * PEAK) / Math.PI).toFixed(2)}${nb}V`);
  });

  it('are its power into 50 ohms, its level, and the power at the crest', () => {
    expect(value('power')).toBe(milliwatts(MEAN));
    expect(value('level')).toBe(`${(10 * Math.log10(1000 * MEAN)).toFixed(2)}${nb}dBm`);
    expect(value('greatest')).toBe(milliwatts(2 * MEAN));
  });

  it('are the squares: a square wave heats twice as much as a sine, a triangle two thirds as much', () => {
    expect(value('squarePower')).toBe(milliwatts(2 * MEAN));
    expect(value('trianglePower')).toBe(milliwatts((2 / 3) * MEAN));
  });

  it('are the costs of slips: 4, 8, 2, 1/2, 3/2, 75/50 and 1/100 times the power', () => {
    expect(value('wholeAsPeak')).toBe(`4.0${nb}times the power, +6.02${nb}dB`);
    expect(value('wholeAsRms')).toBe(`8.0${nb}times the power, +9.03${nb}dB`);
    expect(value('peakAsRms')).toBe(`2.0${nb}times the power, +3.01${nb}dB`);
    expect(value('sineForSquare')).toBe(`0.50${nb}times the power, \u22123.01${nb}dB`);
    expect(value('sineForTriangle')).toBe(`1.5${nb}times the power, +1.76${nb}dB`);
    expect(value('assumedLoad')).toBe(`1.5${nb}times the power, +1.76${nb}dB`);
    expect(value('probe')).toBe(`0.010${nb}times the power, \u221220.00${nb}dB`);
    expect(value('averageCost')).toBe(
      `1.2${nb}times the power, +${(20 * Math.log10(Math.PI / Math.sqrt(8))).toFixed(2)}${nb}dB`,
    );
    expect(value('probeDb')).toBe(`\u221220.00${nb}dB`);
  });

  it('are half the level by ten times the logarithm of volts', () => {
    const level = 10 * Math.log10(1000 * MEAN);
    expect(value('tenLog')).toContain(`\u2212${(level / 2).toFixed(2)}${nb}dB`);
    expect(value('tenLog')).toContain(`${(10 ** (-level / 20)).toFixed(3)}${nb}times the power`);
  });

  it('are percentages squared as factors', () => {
    expect(value('round')).toBe(`+10.25/\u22129.75${nb}%`); // 1.05² and 0.95²
    expect(value('vertical')).toBe(`+6.09/\u22125.91${nb}%`); // 1.03² and 0.97²
    expect(value('verticalDb')).toBe(`±0.26${nb}dB`); // 20 lg 1.03 = 0.257, 20 lg 0.97 = -0.265
    expect(value('squared')).toBe(`+25.0${nb}%`);
    expect([value('averageSquare'), value('averageTriangle')]).toEqual([`+11.1${nb}%`, `\u22123.8${nb}%`]);
  });

  it('are an open end: twice the volts, four times the power', () => {
    expect([value('openVolts'), value('openTimes')]).toEqual([`+6.02${nb}dB`, `4${nb}times`]);
  });

  it('are volts across 50 ohms at the nominal level and at the upper limit', () => {
    const rms = (level: number): string => `${Math.sqrt(10 ** (level / 10) * 0.05).toFixed(2)}${nb}V RMS`;
    expect([value('nominalVolts'), value('upperVolts')]).toEqual([rms(27), rms(28.5)]);
    expect(value('upperPower')).toBe(milliwatts(10 ** 2.85 / 1000));
  });
});
