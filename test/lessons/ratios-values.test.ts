import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`ratios.${name}`);
const nb = '\u00a0';
const watts = (dbm: number): number => 10 ** (dbm / 10 - 3);

describe('the numbers of the lesson on ratios, each by hand', () => {
  it('are what two pads leave of half a watt', () => {
    expect(value('loss')).toBe(`26${nb}dB`);
    expect(value('left')).toBe(`${(1000 * watts(27 - 26)).toFixed(2)}${nb}mW`);
    expect(value('lossFactor')).toBe(`÷${(10 ** 2.6).toFixed(0)}`);
    expect(value('lossVolts')).toBe(`÷${(10 ** 1.3).toFixed(1)}`);
  });

  it('are the landmarks, as every table of decibels prints them', () => {
    expect(value('ten')).toBe('×10');
    expect(value('three')).toBe('×1.995');
    expect(value('two')).toBe(`3.01${nb}dB`);
    expect(value('twoVolts')).toBe(`6.02${nb}dB`);
    expect(value('twenty')).toBe('×100');
    expect(value('twentyVolts')).toBe('×10');
    expect(value('tenth')).toBe(`+2.3${nb}%`);
  });

  it('are the head’s answer and what it is off by', () => {
    expect(value('steps')).toBe('÷10 ÷10 ÷2 ÷2');
    expect(value('head')).toBe('÷400');
    expect(value('headOff')).toBe(`${(100 * (1 - 10 ** 2.6 / 400)).toFixed(1)}${nb}%`);
    expect(value('headOffDb')).toBe(`${(10 * Math.log10(400) - 26).toFixed(2)}${nb}dB`);
  });

  it('are the worst of thirty: six threes, each a hundredth short', () => {
    expect(value('worstGain')).toBe(`18${nb}dB and 28${nb}dB`);
    expect(value('worstOffDb')).toBe(`${(10 * Math.log10(64) - 18).toFixed(2)}${nb}dB`);
    expect(value('worstOff')).toBe(`${(100 * (64 / 10 ** 1.8 - 1)).toFixed(1)}${nb}%`);
    expect(value('padOff')).toBe(`${(100 * (10 ** 0.05 - 1)).toFixed(0)}${nb}%`);
  });

  it('are what the mistakes cost', () => {
    expect(value('costTenLg')).toBe('×2.0 reported for ×4.0');
    expect(value('costTwentyLg')).toBe('÷400 reported for ÷20'); // two digits: 398.1 and 19.95
    expect(value('costProbe')).toBe('÷100 in power');
    expect(value('probePower')).toBe('×100');
    expect(value('costTwice')).toBe('×20 reported for ×100');
  });

  it('are the cautions at the upper limit, 28.5 dBm', () => {
    expect(value('padHeat')).toBe(`${(1000 * (1 - 10 ** -2.05) * watts(28.5)).toFixed(0)}${nb}mW`);
    expect(value('secondPadIn')).toBe(`${(1000 * watts(28.5 - 19.5)).toFixed(2)}${nb}mW`);
    expect(value('upperVolts')).toBe(`${Math.sqrt(50 * watts(28.5)).toFixed(2)}${nb}V RMS`);
  });
});
