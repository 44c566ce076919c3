import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`power.${name}`);
const nb = '\u00a0';
const minus = '\u2212';
const PEAK = 0.5;
const MEAN = PEAK * (22 / 50);
const SUPPLY = 12 * 0.12;
const COAX = 10 ** (-0.5 / 10);
const REFLECTED = ((1.5 - 1) / (1.5 + 1)) ** 2;
const milliwatts = (power: number, decimals = 0): string => `${(1000 * power).toFixed(decimals)}${nb}mW`;
const db = (ratio: number): string => {
  const size = 10 * Math.log10(ratio);
  return `${size < 0 ? minus : '+'}${Math.abs(size).toFixed(2)}${nb}dB`;
};

describe('the numbers of the lesson on which power is meant, each by hand', () => {
  it('are peak and mean: 22 of 50 units, half for dits and two tones', () => {
    expect(value('peak')).toBe(milliwatts(PEAK));
    expect(value('mean')).toBe(milliwatts(MEAN));
    expect([value('paris'), value('parisDb')]).toEqual([`44${nb}%`, db(22 / 50)]);
    expect([value('dits'), value('tones'), value('half')]).toEqual([
      milliwatts(PEAK / 2),
      milliwatts(PEAK / 2),
      db(1 / 2),
    ]);
  });

  it('are slips of the average', () => {
    expect(value('meanAsPeak')).toBe(`${milliwatts(MEAN)} for ${milliwatts(PEAK)}, ${db(22 / 50)}`);
    expect(value('peakAsMean')).toBe(`${milliwatts(PEAK)} for ${milliwatts(MEAN)}, ${db(50 / 22)}`);
    expect(value('twiceTheMean')).toBe(`1.00${nb}W for ${milliwatts(PEAK)}, ${db(2)}`);
    expect(value('twiceKeyed')).toBe(`${milliwatts(2 * MEAN)} for ${milliwatts(PEAK)}, ${db(44 / 50)}`);
  });

  it('are what the coax leaves, what comes back, and what stays', () => {
    expect(value('incident')).toBe(milliwatts(MEAN));
    expect(value('atLoad')).toBe(milliwatts(MEAN * COAX));
    expect(value('reflected')).toBe(milliwatts(MEAN * COAX * REFLECTED, 2));
    expect(value('reflectedShare')).toBe(`${(100 * REFLECTED).toFixed(0)}${nb}%`);
    expect(value('reflectedDb')).toBe(db(1 - REFLECTED));
    const delivered = MEAN * COAX * (1 - REFLECTED);
    expect(value('delivered')).toBe(milliwatts(delivered));
    expect(value('forwardAtSocket')).toBe(
      `${milliwatts(MEAN)} for ${milliwatts(delivered)}, ${db(MEAN / delivered)}`,
    );
  });

  it('are the supply: volts times amperes, and what becomes of it', () => {
    expect(value('input')).toBe(`${SUPPLY.toFixed(2)}${nb}W`);
    expect(value('heat')).toBe(milliwatts(SUPPLY - PEAK));
    expect(value('efficiency')).toBe(`${((100 * PEAK) / SUPPLY).toFixed(0)}${nb}%`);
    expect(value('keyedHeat')).toBe(milliwatts((SUPPLY - PEAK) * (22 / 50)));
    expect(value('keyedInput')).toBe(milliwatts((SUPPLY * 22) / 50));
    expect(value('peakOverMean')).toBe(
      `${((100 * PEAK * 50) / 22 / SUPPLY).toFixed(0)}${nb}% for ${((100 * PEAK) / SUPPLY).toFixed(0)}${nb}%, ${db(50 / 22)}`,
    );
  });
});
