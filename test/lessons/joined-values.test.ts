import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const minus = '\u2212';
const joined = (name: string): string => textOfValue(`joined.${name}`);
/** What a capacitance across equal source and load takes, in dB. */
const loss = (pico: number, mega: number, ohm: number): number =>
  10 * Math.log10(1 + (2 * Math.PI * mega * 1e6 * pico * 1e-12 * (ohm / 2)) ** 2);
const together = (...megahertz: readonly number[]): number =>
  1 / Math.sqrt(megahertz.reduce((sum, b) => sum + 1 / b ** 2, 0));

describe('the numbers of the lesson on joining, each by hand', () => {
  it('are what meters for direct voltage take', () => {
    expect(joined('needle')).toBe(`${minus}20.0${nb}%`);
    expect(joined('digitalOhms'), 'as the choice of the meter names it').toBe(`10${nb}MΩ`);
    expect(joined('needleOhms')).toBe(`200${nb}kΩ`);
    expect(joined('needleHigh')).toBe(`${minus}50.0${nb}%`);
    expect(joined('digital')).toBe(`${minus}${((100 * 50) / 10_050).toFixed(1)}${nb}%`);
    expect(joined('loaded')).toContain(`${minus}50.0${nb}%`);
  });

  it('are what the mean of a wave reads by the scale of a sine', () => {
    const sine = Math.PI / Math.sqrt(8);
    const triangle = (sine * Math.sqrt(3)) / 2;
    expect(joined('squareVolts')).toBe(`+${(100 * (sine - 1)).toFixed(1)}${nb}%`);
    expect(joined('squarePower')).toBe(`+${(100 * (sine ** 2 - 1)).toFixed(1)}${nb}%`);
    expect(joined('triangleVolts')).toBe(`${minus}${(100 * (1 - triangle)).toFixed(1)}${nb}%`);
    expect(joined('trianglePower')).toBe(`${minus}${(100 * (1 - triangle ** 2)).toFixed(1)}${nb}%`);
    expect(joined('squareAsSine')).toContain(joined('squarePower'));
  });

  it('are ends of ranges: what is stated, and three tenths of a bandwidth', () => {
    expect(joined('acMost')).toBe(`1${nb}kHz`);
    expect(joined('probe1Band')).toBe(`${together(100, 6).toFixed(1)}${nb}MHz`);
    expect(joined('probe1Most')).toBe(`${(0.3 * together(100, 6)).toFixed(1)}${nb}MHz`);
    expect(joined('probe10Most')).toBe(`${(0.3 * together(100, 150)).toFixed(1)}${nb}MHz`);
  });

  it('are what probes take', () => {
    expect([joined('probe1Farad'), joined('probe10Farad')]).toEqual([`100${nb}pF`, `12${nb}pF`]);
    expect(joined('probe10Loss')).toBe(`${minus}${loss(12, 3.58, 50).toFixed(4)}${nb}dB`);
    expect(joined('highPoint')).toBe(`${minus}${loss(12, 20, 1000).toFixed(2)}${nb}dB`);
    expect(joined('lowPoint')).toBe(`${minus}${loss(12, 20, 50).toFixed(3)}${nb}dB`);
    expect(joined('onefold')).toBe(`${minus}${loss(100, 1.5, 1000).toFixed(1)}${nb}dB`);
    expect(joined('tenfoldThere')).toBe(`${minus}${loss(12, 1.5, 1000).toFixed(2)}${nb}dB`);
    expect(joined('wire')).toContain(joined('onefold'));
  });

  it('are the cautions, with the upper end of the specification: 28.5 dBm', () => {
    const watts = 10 ** (28.5 / 10) / 1000;
    expect(joined('upperVolts')).toBe(`${Math.sqrt(50 * watts).toFixed(2)}${nb}V RMS`);
    expect(Math.sqrt(50 * watts)).toBeGreaterThan(5);
    expect(joined('upperPeak')).toBe(`${Math.sqrt(100 * watts).toFixed(1)}${nb}V peak`);
    expect(joined('withPad')).toBe(`9.0${nb}dBm`);
    expect(joined('withoutPad')).toBe(`28.5${nb}dBm`);
    expect(joined('damage')).toBe(`20${nb}dBm`);
  });
});
