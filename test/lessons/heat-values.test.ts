import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const heat = (name: string): string => textOfValue(`heat.${name}`);
const reached = (minutes: number): number => 1 - Math.exp(-minutes / 8);

describe('the numbers of the lesson on substitution, each by hand', () => {
  it('are the readings and the result', () => {
    expect([heat('volts'), heat('amperes'), heat('riseRf'), heat('riseDc')]).toEqual([
      `5.00${nb}V`,
      `100.0${nb}mA`,
      `9.5${nb}K`,
      `9.4${nb}K`,
    ]);
    const u = Math.sqrt((0.5 ** 2 + 1 + (10 / 9.5) ** 2 + (10 / 9.4) ** 2 + 1) / 3);
    const band = 2 * 0.04343 * u;
    const level = 10 * Math.log10((500 * 9.5) / 9.4);
    expect(heat('result')).toBe(`${level.toFixed(2)}${nb}dBm ±${band.toFixed(2)}${nb}dB`);
    const watts = [level, level - band, level + band].map((dbm) => Math.round(10 ** (dbm / 10)));
    expect(heat('power')).toBe(`${watts[0]}${nb}mW, ${watts[1]} to ${watts[2]}`);
    expect(heat('kelvinShare')).toBe(`${(10 / 9.5).toFixed(1)}${nb}%`);
  });

  it('are what is reached after 8, 10 and 45 minutes', () => {
    expect(heat('afterOne')).toBe(`${Math.round(100 * reached(8))}${nb}%`);
    expect(heat('afterTen')).toBe(`${Math.round(100 * reached(10))}${nb}%`);
    expect(heat('afterAll')).toBe(`${(100 * reached(45)).toFixed(1)}${nb}%`);
    expect(heat('toCome')).toBe(`${(9.5 * (1 - reached(45))).toFixed(2)}${nb}K`);
  });

  it('are what an early reading leaves, in decibels and kelvins, and nothing if both are early', () => {
    const ratio = reached(10) / reached(45);
    expect(heat('hasty')).toBe(`\u2212${(-10 * Math.log10(ratio)).toFixed(2)}${nb}dB`);
    expect(heat('hastyKelvin')).toBe(`${(9.5 / ratio - 9.5).toFixed(1)}${nb}K`);
    expect(heat('alike')).toBe(`0.00${nb}dB`);
    expect(heat('costsHasty')).toBe(`${heat('hasty')}, ±0.11${nb}dB claimed`);
  });

  it('are what a room half a kelvin warmer does', () => {
    expect(heat('draught')).toBe(`\u2212${(-10 * Math.log10(8.9 / 9.4)).toFixed(2)}${nb}dB`);
    expect(heat('costsDraught')).toBe(`${heat('draught')}, ±0.11${nb}dB claimed`);
  });

  it('are other boxes: a better thermometer, two watts, and one kelvin', () => {
    expect(heat('better')).toBe(`±0.079${nb}dB`);
    expect(heat('two')).toContain(`33.061${nb}dBm ±0.090${nb}dB`);
    const u = Math.sqrt((0.5 ** 2 + 1 + 100 + 100 + 1) / 3);
    expect(Number.parseFloat(heat('costsLukewarm').slice(1))).toBeCloseTo(2 * 0.04343 * u, 1);
  });

  it('are the cautions: the upper power, its current and its warmth', () => {
    const upper = 10 ** 2.85;
    expect(heat('upper')).toBe(`${Math.round(upper)}${nb}mW`);
    expect(heat('upperRise')).toBe(`${Math.round((9.4 / 500) * upper)}${nb}K`);
    expect(heat('fiveWatts')).toBe(`${Math.round(9.4 * 10)}${nb}K`);
    expect(heat('current')).toBe(`${Math.round(1000 * Math.sqrt(upper / 1000 / 50))}${nb}mA`);
  });
});
