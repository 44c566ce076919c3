import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`bands.${name}`);
const nb = '\u00a0';
const milliwatts = (dbm: number): number => 10 ** (dbm / 10);
const volts = (dbm: number): string => Math.sqrt((milliwatts(dbm) / 1000) * 50).toFixed(2);

describe('the numbers of the lesson on decibels and percentages, each by hand', () => {
  it('are one decibel to either side of 27 dBm', () => {
    const [low, middle, high] = [26, 27, 28].map(milliwatts);
    expect(value('middle')).toBe(`27${nb}dBm`);
    expect(value('half')).toBe(`±1${nb}dB`);
    expect(value('watts')).toBe(`${middle?.toFixed(0)}${nb}mW, ${low?.toFixed(0)} to ${high?.toFixed(0)}`);
    expect(value('up')).toBe(`${((high ?? 0) - (middle ?? 0)).toFixed(0)}${nb}mW`);
    expect(value('down')).toBe(`${((middle ?? 0) - (low ?? 0)).toFixed(0)}${nb}mW`);
    expect(value('volts')).toBe(`${volts(27)}${nb}V RMS, ${volts(26)} to ${volts(28)}`);
  });

  it('are percentages of power and of volts', () => {
    expect(value('power')).toBe(`+25.9/−20.6${nb}%`);
    expect(value('voltsPercent')).toBe(`+12.2/−10.9${nb}%`);
    expect(value('tripled')).toBe(`+99.5/−49.9${nb}%`);
    expect(value('tenth')).toBe(`±2.3${nb}%`);
  });

  it('are the rule for small bands: ln 10 / 10 of power a decibel, half of it in volts', () => {
    expect(value('powerPerDb')).toBe(`${(10 * Math.LN10).toFixed(0)}${nb}%`);
    expect(value('voltsPerDb')).toBe(`${(5 * Math.LN10).toFixed(1)}${nb}%`);
    expect(value('ruleTenth')).toBe(`±2.3${nb}%`);
    expect(value('ruleOne')).toBe(`±23${nb}%`);
  });

  it('are bands that are even in volts or in watts', () => {
    expect(value('fiveVoltsDb')).toBe(
      `+${(20 * Math.log10(1.05)).toFixed(2)}/−${(-20 * Math.log10(0.95)).toFixed(2)}${nb}dB`,
    );
    expect(value('fiveVolts')).toBe(`+10.2/−9.8${nb}%`); // 1.05² − 1 = 10.25 %, 1 − 0.95² = 9.75 %
    expect(value('fivePower')).toBe(`+0.21/−0.22${nb}dB`);
    expect(value('thirdOfPower')).toBe(
      `+${(10 * Math.log10(4 / 3)).toFixed(2)}/−${(10 * Math.log10(3 / 2)).toFixed(2)}${nb}dB`,
    );
  });

  it('are two means of 10, 10 and 13 dBm', () => {
    const mean = (milliwatts(10) + milliwatts(10) + milliwatts(13)) / 3;
    expect(value('ofDecibels')).toBe(`11.00${nb}dBm`);
    expect(value('ofDecibelsWatts')).toBe(`${milliwatts(11).toFixed(1)}${nb}mW`);
    expect(value('ofPowersWatts')).toBe(`${mean.toFixed(1)}${nb}mW`);
    expect(value('ofPowers')).toBe(`${(10 * Math.log10(mean)).toFixed(2)}${nb}dBm`);
    expect(value('apart')).toBe(`0.24${nb}dB`);
    expect(value('nearApart')).toBe(`0.03${nb}dB`);
    expect(value('rule')).toBe((Math.LN10 / 20).toFixed(3));
  });

  it('are what the mistakes cost', () => {
    expect(value('costSame')).toBe(`±1${nb}% for +25.9/−20.6${nb}%`);
    expect(value('costTen')).toBe(`±10${nb}% for +25.9/−20.6${nb}%`);
    const mirrored = 2 * milliwatts(27) - milliwatts(28);
    expect(value('costMirrored')).toBe(
      `${mirrored.toFixed(0)}${nb}mW for ${milliwatts(26).toFixed(0)}${nb}mW`,
    );
    expect(value('costSquared')).toBe(`±25${nb}% for +10.2/−9.8${nb}%`);
    expect(value('costMean')).toBe(`10.0${nb}mW for ${((1 + 10 + 100) / 3).toFixed(1)}${nb}mW`);
  });
});
