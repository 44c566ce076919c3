import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const writing = (name: string): string => textOfValue(`writing.${name}`);
/** The club's links, by hand, squared and added. */
const links = 0.01 ** 2 + 0.03 ** 2 + 0.25 ** 2 / 3 + 0.16 ** 2 / 2 + 0.5 ** 2 / 3 + 0.05 ** 2 / 3;
const u = (scatter: number, count: number): number => Math.sqrt(links + scatter ** 2 / count);
const freedom = (scatter: number, count: number): number =>
  (u(scatter, count) ** 4 / (scatter ** 2 / count) ** 2) * (count - 1);
const percent = (share: number): string => `${(100 * share).toFixed(0)}${nb}%`;

describe('the numbers of the lesson on writing it down, each by hand', () => {
  it('are the club’s result: 7 dBm and 20.1 dB, with twice its u', () => {
    expect(writing('u')).toBe(`${u(0.2, 3).toFixed(2)}${nb}dB`);
    expect(writing('stated')).toBe(`27.10${nb}dBm ±${(2 * u(0.2, 3)).toFixed(2)}${nb}dB`);
    expect(writing('padShare')).toBe(percent(0.25 / 3 / u(0.2, 3) ** 2));
    expect(writing('freedom')).toBe(freedom(0.2, 3).toFixed(1));
  });

  it('are two readings that scatter by 0.5 dB', () => {
    expect(writing('fewFreedom')).toBe(freedom(0.5, 2).toFixed(1));
    expect(writing('readingsShare')).toBe(percent(0.125 / u(0.5, 2) ** 2));
    // Student's t for 3.80 degrees of freedom: 2.776 for 4 and 3.182 for 3 stand in the tables.
    expect(Number(writing('fewFactor'))).toBeGreaterThan(2.776);
    expect(Number(writing('fewFactor'))).toBeLessThan(3.182);
    expect(writing('fewCovers')).toBe(`88${nb}%`);
    expect(writing('fewStated')).toBe(`27.1${nb}dBm ±${(2.834 * u(0.5, 2)).toFixed(1)}${nb}dB`);
  });

  it('are watts, end by end', () => {
    const watts = (dbm: number): string => (10 ** (dbm / 10)).toFixed(0);
    const expanded = 2 * u(0.2, 3);
    expect(writing('watts')).toBe(`${watts(27.1 - expanded)} to ${watts(27.1 + expanded)}${nb}mW`);
  });

  it('are for cautions the upper limit of the specification, and what stays of it in a pad of 20.5 dB', () => {
    const upper = 10 ** (28.5 / 10);
    expect(writing('upperLevel')).toBe(`28.50${nb}dBm`);
    expect(writing('upper')).toBe(`${upper.toFixed(0)}${nb}mW`);
    expect(writing('heat')).toBe(`${(upper * (1 - 10 ** -2.05)).toFixed(0)}${nb}mW`);
    expect(writing('heat')).toBe(textOfValue('chain.padHeat'));
  });

  it('are for a sum that a box rules: the pad is more than all others together', () => {
    const pad = 0.25 / 3;
    expect(pad).toBeGreaterThan(u(0.2, 3) ** 2 - pad);
    expect(Number.parseFloat(writing('padShare'))).toBeGreaterThan(50);
  });

  it('are what GUM H.1 prints, and what it would be without rounding on the way', () => {
    expect(writing('gaugeU')).toBe(`32${nb}nm`);
    expect(writing('gaugeFreedom')).toBe('16.7');
    expect(writing('gaugeCut')).toBe('16');
    expect(writing('gaugeFactor')).toBe('2.92');
    expect(writing('gaugeStated')).toBe(`50.000838${nb}mm ±93${nb}nm`);
    expect(writing('gaugeExact')).toBe(`50.000838${nb}mm ±92${nb}nm`);
  });

  it('are what the mistakes cost', () => {
    expect(writing('twoReadings')).toBe(
      `±${(2 * u(0.5, 2)).toFixed(2)}${nb}dB is claimed, which covers 88${nb}%; for 95${nb}% it takes ±1.4${nb}dB`,
    );
    expect(writing('oneDigit')).toBe(`±1.4${nb}dB was worked out, ±1${nb}dB is written`);
    const [, taken = '', is = ''] = /to be ([\d.]+).*it is ([\d.]+)/.exec(writing('halved')) ?? [];
    expect(is).toBe(u(0.2, 3).toFixed(2));
    expect(Number(taken) / Number(is)).toBeCloseTo(2.6 / 2, 1);
  });
});
