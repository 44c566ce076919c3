import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`line.${name}`);
const nb = '\u00a0';
const minus = '\u2212';
const watts = (level: number): number => 10 ** (level / 10) / 1000;
const milliwatts = (power: number, decimals = 0): string => `${(1000 * power).toFixed(decimals)}${nb}mW`;
const UPPER = 27 + 1.5;

describe('the numbers of the lesson on a line, each by hand', () => {
  it('are the levels from part to part: 27, 7, 6.9 and -13.1 dBm', () => {
    expect(value('level')).toBe(`27.0${nb}dBm`);
    expect(value('power')).toBe(milliwatts(watts(27)));
    expect(value('afterFirst')).toBe(`7.0${nb}dBm, ${milliwatts(watts(7), 2)}`);
    expect(value('afterCoax')).toBe(`6.9${nb}dBm`);
    expect(value('atInput')).toBe(`${minus}13.1${nb}dBm, ${(1e6 * watts(-13.1)).toFixed(1)}${nb}µW`);
    expect([value('reading'), value('loss')]).toEqual([`${minus}13.1${nb}dBm`, `40.1${nb}dB`]);
  });

  it('are heats at the upper limit: what goes in less what comes out', () => {
    expect(value('firstShare')).toBe(`99${nb}%`);
    expect(value('upper')).toBe(`28.5${nb}dBm`);
    expect(value('upperPower')).toBe(milliwatts(watts(UPPER)));
    expect(value('firstHeat')).toBe(milliwatts(watts(UPPER) * (1 - 10 ** -2.05)));
    // behind the first pad at its lowest attenuation, 19.5 dB, and the coax at 0.05 dB
    expect(value('secondHeat')).toBe(milliwatts(watts(UPPER - 19.55) * (1 - 10 ** -2.05), 2));
    expect(value('amplifiedHeat')).toBe(`${(watts(UPPER + 10) * (1 - 10 ** -2.05)).toFixed(2)}${nb}W`);
  });

  it('are the most that can arrive, with every part and without one', () => {
    expect(value('atMost')).toBe(`${minus}10.6${nb}dBm`); // 28.5 - 19.5 - 0.05 - 19.5 = -10.55
    expect(value('margin')).toBe(`10.6${nb}dB below what damages the input`);
    const without = `up to 9.0${nb}dBm, 9.0${nb}dB above what damages the input`; // 28.5 - 0.05 - 19.5 = 8.95
    expect([value('withoutFirst'), value('withoutSecond')]).toEqual([without, without]);
    expect(value('withoutFirstInto')).toBe(milliwatts(watts(UPPER - 0.05)));
  });

  it('are slips: the loss once, twice, and once the other way', () => {
    expect(value('forgotten')).toBe(`${minus}13.1${nb}dBm for 27.0${nb}dBm, ${minus}40.1${nb}dB`);
    expect(value('forgottenPower')).toBe(`${(1e6 * watts(-13.1)).toFixed(1)}${nb}µW`);
    expect(value('subtracted')).toBe(`${minus}53.2${nb}dBm for 27.0${nb}dBm, ${minus}80.2${nb}dB`);
    expect(value('twice')).toBe(`67.1${nb}dBm for 27.0${nb}dBm, +40.1${nb}dB`);
  });

  it('are what the sister’s beam radiates: 27 - 0.6 + 5, and 2.15 dB less over a dipole', () => {
    expect(value('atAntenna')).toBe(`26.4${nb}dBm`);
    expect(value('eirpLevel')).toBe(`31.40${nb}dBm`);
    expect(value('eirp')).toBe(`31.40${nb}dBm, ${watts(31.4).toFixed(2)}${nb}W`);
    expect(value('erp')).toBe(`29.25${nb}dBm, ${milliwatts(watts(31.4 - 2.15))}`);
    expect(value('dipole')).toBe(`2.15${nb}dB`);
    expect(value('reference')).toBe(`33.55${nb}dBm for 31.40${nb}dBm, +2.15${nb}dB`);
    expect(value('coaxShare')).toBe(`${(100 * 10 ** -0.06).toFixed(0)}${nb}%`);
  });

  it('are volts across 50 ohms of a quarter of a watt, and of the upper limit', () => {
    expect(value('quarterVolts')).toBe(`${Math.sqrt(0.25 * 50).toFixed(1)}${nb}V RMS`);
    expect(value('upperVolts')).toBe(`${Math.sqrt(watts(UPPER) * 50).toFixed(2)}${nb}V RMS`);
  });
});
