import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const shared = (name: string): string => textOfValue(`shared.${name}`);
/** U with k = 2 of rectangular parts with these weighted half-widths. */
const u = (...parts: readonly number[]): number =>
  2 * Math.sqrt(parts.reduce((sum, a) => sum + a * a, 0) / 3);
const band = (value: number, decimals = 2): string => `±${value.toFixed(decimals)}${nb}dB`;

describe('the numbers of the lesson on shared causes, each by hand', () => {
  it('are the sum: the batch twice, the own parts once each', () => {
    expect(shared('sum')).toBe(band(u(0.2, 0.2, 0.8)));
    expect(shared('sumIndependent')).toBe(band(u(0.2, 0.2, 0.4, 0.4)));
    expect(shared('sumWorst')).toBe(band(2 * (0.2 + 0.4), 1));
    expect(shared('r')).toBe((0.16 / 0.2).toFixed(2));
  });

  it('are the difference, without the batch', () => {
    expect(shared('difference')).toBe(band(u(0.2, 0.2)));
    expect(shared('differenceIndependent')).toBe(shared('sumIndependent'));
    expect(shared('differenceWorst')).toBe(`±0.40${nb}dB`);
  });

  it('are the mean, half the sum', () => {
    expect(shared('mean')).toBe(band(u(0.1, 0.1, 0.4)));
    expect(shared('meanIndependent')).toBe(band(u(0.1, 0.1, 0.2, 0.2)));
  });

  it('are what the Guide prints in tables H.2, H.3 and H.5, but u(X), which it takes from H.4', () => {
    expect(['readVI', 'readVPhi', 'readIPhi'].map(shared)).toEqual(['\u22120.36', '0.86', '\u22120.65']);
    expect(['uR', 'uRWithout', 'uX', 'uXWithout'].map(shared)).toEqual(
      ['0.071', '0.195', '0.296', '0.201'].map((ohm) => `${ohm}${nb}Ω`),
    );
    expect(Number(shared('timesR'))).toBeCloseTo(0.1945 / 0.07107, 2);
    expect(Number(shared('timesX'))).toBeCloseTo(0.2009 / 0.2956, 2);
  });

  it('are what the mistakes claim, and what is right', () => {
    const claimed = (wrong: string, truth: string): string => `${wrong} is claimed where ${truth} is right`;
    expect(shared('batch')).toBe(claimed(band(u(0.1, 0.1, 0.5, 0.5)), band(u(0.1, 0.1, 1), 1)));
    expect(shared('twoReceivers')).toBe(claimed(band(u(0.2, 0.2, 1, 1), 1), band(u(0.2, 0.2))));
    expect(shared('averaged')).toBe(claimed(band(u(0.05, 0.05, 0.25, 0.25)), band(u(0.05, 0.05, 0.5))));
  });
});
