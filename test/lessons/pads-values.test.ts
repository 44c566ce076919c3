import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const pads = (name: string): string => textOfValue(`pads.${name}`);
const lg = (ratio: number): number => 20 * Math.log10(ratio);

describe('the numbers of the lesson on pads, each by hand', () => {
  it('are the sum: 7 dBm, 20 dB of pad and 0.1 dB of coax', () => {
    expect(pads('shown')).toBe(`7.0${nb}dBm`);
    expect(pads('losses')).toBe(`20.1${nb}dB`);
    expect(pads('result')).toBe(`27.1${nb}dBm ±0.68${nb}dB`);
    const ends = [27.1, 27.1 - 0.68, 27.1 + 0.68].map((dbm) => Math.round(10 ** (dbm / 10)));
    expect(ends[0]).toBe(513);
    expect(pads('watts')).toMatch(/^513\u00a0mW, 439 to 600$/);
    expect(Math.abs((ends[1] ?? 0) - 439)).toBeLessThanOrEqual(1);
    expect(Math.abs((ends[2] ?? 0) - 600)).toBeLessThanOrEqual(1);
  });

  it('are shares of the variance: limits squared over three', () => {
    const whole = (0.68 / 2) ** 2;
    const percent = (limit: number): number => (100 * limit ** 2) / 3 / whole;
    expect(pads('padShare')).toBe(`${Math.round(percent(0.5))}${nb}%`);
    expect(pads('coaxShare')).toBe(`${percent(0.05).toFixed(1)}${nb}%`);
    expect(pads('connectorsShare')).toBe(pads('coaxShare'));
    expect(pads('padMeasured')).toBe(`±0.38${nb}dB`);
    expect(pads('band')).toBe(`±0.68${nb}dB`);
  });

  it('are the match without a pad, with a perfect one and with a real one', () => {
    const r = (1 / 3) * (1 / 9);
    expect(pads('bare')).toBe(`+${lg(1 + r).toFixed(2)}/\u2212${(-lg(1 - r)).toFixed(2)}${nb}dB`);
    expect(pads('bareU')).toBe(`${((20 / Math.LN10) * r * Math.SQRT1_2).toFixed(2)}${nb}dB`);
    expect(pads('perfect')).toBe(`±${lg(1 + r * 10 ** -0.6).toFixed(2)}${nb}dB`);
    expect(pads('real')).toBe(`+0.34/\u22120.36${nb}dB`);
    expect(pads('realU')).toBe(`0.16${nb}dB`);
    const own = 0.15 / 2.15;
    expect(pads('manyDb')).toBe(`±${lg((1 + own / 3) * (1 + own / 9)).toFixed(2)}${nb}dB`);
    const club = 0.2 * (0.2 / 2.2);
    expect(pads('clubBare')).toBe(`±${lg(1 + club).toFixed(2)}${nb}dB`);
    expect(pads('clubBareU')).toBe(`${((20 / Math.LN10) * club * Math.SQRT1_2).toFixed(2)}${nb}dB`);
    expect([pads('clubMatch'), pads('clubU')]).toEqual([`±0.18${nb}dB`, `0.09${nb}dB`]);
  });

  it('are what is left if only the pad’s input is meant', () => {
    const own = 0.15 / 2.15;
    // The club's meter has an SWR of 1.2: a reflection of 1/11.
    const club = own / 11;
    expect(pads('accepted')).toBe(`+${lg(1 + club).toFixed(2)}/\u2212${(-lg(1 - club)).toFixed(2)}${nb}dB`);
    expect(pads('acceptedLoss')).toBe(`${(-10 * Math.log10(1 - own ** 2)).toFixed(2)}${nb}dB`);
  });

  it('are the check with one more pad', () => {
    expect([pads('due'), pads('allowed')]).toEqual([`10${nb}dB`, `±0.4${nb}dB`]);
    expect([pads('moved'), pads('shortfall')]).toEqual([`9.1${nb}dB`, `0.9${nb}dB`]);
    expect(pads('costsOverload')).toContain(`0.9${nb}dB or more`);
    expect(pads('costsLess')).toBe(`21.0${nb}dBm on a meter that holds up to 20.0${nb}dBm: no result`);
    expect(pads('costsMatch')).toBe(`${pads('real')} where it was ${pads('bare')}`);
  });

  it('are the cautions: the upper power at the socket, and a pad half a decibel off', () => {
    const power = 10 ** 2.85;
    expect(pads('upperPower')).toBe(`${power.toFixed(0)}${nb}mW`);
    expect(pads('upperVolts')).toBe(`${Math.sqrt((power / 1000) * 50).toFixed(2)}${nb}V RMS`);
    expect(pads('padHeat')).toBe(`${(power * (1 - 10 ** -2.05)).toFixed(0)}${nb}mW`);
    expect(pads('atInput')).toBe(`${(28.5 - 19.5).toFixed(1)}${nb}dBm`);
    expect(pads('withoutPad')).toBe(`28.5${nb}dBm, ${pads('upperVolts')}`);
    expect(Number.parseFloat(pads('withoutPad'))).toBeGreaterThan(Number.parseFloat(pads('damage')) + 8);
  });
});
