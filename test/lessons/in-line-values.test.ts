import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const inline = (name: string): string => textOfValue(`inline.${name}`);
const ends = (part: number): string =>
  `+${(10 * Math.log10(1 + part)).toFixed(2)}/\u2212${(-10 * Math.log10(1 - part)).toFixed(2)}${nb}dB`;
const swr = (r: number): string => ((1 + r) / (1 - r)).toFixed(2);

describe('the numbers of the lesson on the meter in the line, each by hand', () => {
  it('are three watts on a scale of twenty: a third of the reading', () => {
    expect(inline('low')).toBe(`3.0${nb}W`);
    expect(inline('lowError')).toBe(`±1.0${nb}W`);
    expect(inline('lowRange')).toBe(`2.0 to 4.0${nb}W`);
    expect(inline('lowDb')).toBe(ends(1 / 3));
    expect(inline('asReading')).toBe(ends(0.05));
    expect(inline('costsOfReading')).toBe(`${ends(0.05)} claimed where the scale allows ${ends(1 / 3)}`);
  });

  it('are where a scale begins to say something: three times its limits', () => {
    expect(inline('least')).toBe(`3.0${nb}W`);
    expect(inline('leastClub')).toBe(`150${nb}mW`);
    expect(inline('clubError')).toBe(`±50${nb}mW`);
    expect(inline('costsLargeScale')).toBe(`±1.0${nb}W on 510${nb}mW: no number`);
  });

  it('are forward, reflected and what stays', () => {
    expect([inline('forward'), inline('back'), inline('net')]).toEqual([
      `510${nb}mW`,
      `10${nb}mW`,
      `500${nb}mW`,
    ]);
    // The sum of two scales is a triangle of ±0.1 W on 0.5 W: a fifth over root six; then ±0.2 dB, 0.1 dB U-shaped, 2 %.
    const db = (share: number): number => (10 / Math.LN10) * share;
    const u = Math.hypot(
      db(0.2) / Math.sqrt(6),
      0.2 / Math.sqrt(3),
      0.1 / Math.SQRT2,
      db(0.02) / Math.sqrt(3),
    );
    expect(inline('result')).toMatch(/^26\.97\u00a0dBm ±0\.77\u00a0dB$/);
    expect(2 * u).toBeCloseTo(0.77, 1);
    expect(inline('plain')).toBe(`${(10 * Math.log10(500)).toFixed(2)}${nb}dBm`);
    // ln(1 + x) is x - x²/2 + x³/3 - x⁴/4; a triangle of ±a has mean squares a²/6 and a⁴/15, the needle's rectangle a²/3.
    const lower = db(0.2 ** 2 / 6 / 2 + 0.2 ** 4 / 15 / 4 + 0.02 ** 2 / 3 / 2);
    expect(inline('middle')).toBe(`${(10 * Math.log10(500) - lower).toFixed(2)}${nb}dBm`);
  });

  it('are the whip: 5 W out, 0.2 W back, one fifth of the volts', () => {
    const [fair, good] = [10 ** (-25 / 20), 10 ** (-35 / 20)];
    expect(inline('swr')).toBe(swr(0.2));
    expect(inline('swrRange')).toBe(`${swr(0.2 - fair)} to ${swr(0.2 + fair)}`);
    expect(inline('swrBetter')).toBe(`${swr(0.2 - good)} to ${swr(0.2 + good)}`);
    expect(inline('leak')).toBe(`${(100 * fair).toFixed(1)}${nb}%`);
    expect(inline('loss')).toBe(`${(-10 * Math.log10(0.96)).toFixed(2)}${nb}dB`);
    expect(inline('costsHalf')).toContain(`4${nb}% of the power comes back`);
    expect(inline('costsPerfect')).toBe(
      `SWR ${swr(0.1)} is read, and the load has anything from ${swr(0.1 - fair)} to ${swr(0.1 + fair)}`,
    );
    expect([inline('whipForward'), inline('whipBack'), inline('whipNet')]).toEqual([
      `5.0${nb}W`,
      `200${nb}mW`,
      `4.8${nb}W`,
    ]);
  });

  it('are the cautions: the upper power into the load', () => {
    const power = 10 ** 2.85;
    expect(inline('loadHeat')).toBe(`${Number(power.toPrecision(3))}${nb}mW`);
    expect(inline('volts')).toBe(`${Math.sqrt(power / 20).toFixed(2)}${nb}V RMS`);
  });
});
