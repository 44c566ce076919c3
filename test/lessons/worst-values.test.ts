import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const worst = (name: string): string => textOfValue(`worst.${name}`);

describe('the numbers of the lesson on the worst case', () => {
  it('are sums of limits by hand', () => {
    expect(worst('pad')).toBe(`±0.50${nb}dB`);
    expect(worst('meter')).toBe(`±0.30${nb}dB`);
    expect(worst('sum')).toBe(`±1.8${nb}dB`);
    expect(worst('twoSum')).toBe(`±1.3${nb}dB`);
    expect(worst('eightSum')).toBe(`±4.3${nb}dB`);
    expect(worst('padsAlone')).toBe(`±1.5${nb}dB`);
  });

  it('are near the end what four even parts give by hand', () => {
    expect(worst('rare')).toBe(`${((100 * 2 * 0.18 ** 4) / (24 * 0.6)).toFixed(3)}${nb}%`);
  });

  it('have bands of 95 % between one and two standard uncertainties of a bell, narrower than k = 2 there', () => {
    const u = (count: number): number => Math.sqrt((count * 0.25 + 0.09) / 3);
    for (const [name, count] of [
      ['twoMost', 2],
      ['most', 3],
      ['eightMost', 8],
    ] as const) {
      const half = Number(/±([\d.]+)/.exec(worst(name))?.[1]);
      expect(half, name).toBeLessThanOrEqual(2 * u(count) + 0.05);
      expect(half, name).toBeGreaterThan(1.85 * u(count));
    }
  });

  it('are how much wider the guarantee is, more for more pads', () => {
    const ratios = ['twoRatio', 'ratio', 'eightRatio'].map((name) => Number(worst(name)));
    expect(ratios).toEqual([1.5, 1.7, 2.6]);
  });

  it('are the level at the meter, at the upper limit with each pad at its lowest', () => {
    expect(worst('allowed')).toBe(`±1.5${nb}dB`);
    expect(worst('room')).toBe(`±0.46${nb}dB`);
    expect(worst('room')).toBe(
      `±${(1.5 - Number(/±([\d.]+)/.exec(worst('mostFine'))?.[1])).toFixed(2)}${nb}dB`,
    );
    expect(worst('pads')).toBe(`20${nb}dB, 10${nb}dB and 10${nb}dB`);
    expect(worst('padLess')).toBe(`0.50${nb}dB`);
    expect(Number.parseFloat(worst('lowest'))).toBe(20 + 10 + 10 - 3 * 0.5);
    expect(worst('upper')).toBe(`28.5${nb}dBm`);
    expect(worst('lowest')).toBe(`38.5${nb}dB`);
    expect(worst('atMeter')).toBe(`\u221210.0${nb}dBm`);
  });

  it('are what the mistakes cost', () => {
    expect(worst('calledU')).toBe(`±1.8${nb}dB where ±1.0${nb}dB hold 95${nb}% of the rows`);
    const root = Math.hypot(0.5, 0.5, 0.5, 0.3);
    expect(worst('calledLimit')).toBe(`±${root.toFixed(2)}${nb}dB, and 8.4${nb}% of the rows lie beyond`);
    expect(worst('bellAdded')).toBe(`“at most ±1.3${nb}dB”, and 1.1${nb}% of the rows lie beyond`);
  });
});
