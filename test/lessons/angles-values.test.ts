import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const angles = (name: string): string => textOfValue(`angles.${name}`);
const db = (value: number, decimals = 2): string => `${value.toFixed(decimals)}${nb}dB`;
/** Standard uncertainty of even parts with these limits. */
const even = (...limits: readonly number[]): number => Math.hypot(...limits) / Math.sqrt(3);
const percent = (value: number): string => `${value.toFixed(0)}${nb}%`;

describe('the numbers of the lesson on right angles, each by hand', () => {
  const u = even(0.3, 0.3, 0.3, 1);

  it('are lengths and their result', () => {
    expect(angles('pad')).toBe(`±${db(0.3)}`);
    expect(angles('meter')).toBe(`±${db(1, 1)}`);
    expect(angles('padU')).toBe(db(even(0.3)));
    expect(angles('meterU')).toBe(db(even(1)));
    expect(angles('u')).toBe(db(u));
    expect(angles('endToEnd')).toBe(db(even(1) + 3 * even(0.3), 1));
  });

  it('are shares that make a whole', () => {
    expect(angles('meterShare')).toBe(percent(100 / (1 + 3 * 0.09)));
    expect(angles('padsShare')).toBe(percent(27 / (1 + 3 * 0.09)));
  });

  it('are what an improvement leaves', () => {
    expect(angles('halfPads')).toBe(db(even(0.15, 0.15, 0.15, 1)));
    expect(angles('halfMeter')).toBe(db(even(0.3, 0.3, 0.3, 0.5)));
    expect(angles('halfMeterGain')).toBe(percent(100 * (1 - even(0.3, 0.3, 0.3, 0.5) / u)));
    expect(angles('perfectPads')).toBe(db(even(1)));
    expect(angles('perfectPadsGain')).toBe(percent(100 * (1 - even(1) / u)));
  });

  it('are the root of squared limits: the root of 3 times the standard uncertainty', () => {
    expect(angles('root')).toBe(`±${db(Math.hypot(0.3, 0.3, 0.3, 1), 1)}`);
    expect(angles('rootFactor')).toBe(Math.sqrt(3).toFixed(2));
  });

  it('are other factors for other shapes: the root of 2 for mismatches, of 6 for triangles', () => {
    expect(angles('rootFactorWave')).toBe(Math.SQRT2.toFixed(2));
    expect(angles('rootFactorMiddle')).toBe(Math.sqrt(6).toFixed(2));
  });

  it('are what that holds, by simple figures where there are any', () => {
    // One wide part, 2 dB, and two of 0.05 dB: what lies beyond root of squares is nearly nothing but the wide part's tails.
    expect(angles('holdsLarge')).toBe(`99.2${nb}%`);
    // Three triangles are six even halves, and those are nearly a bell: 2.45 standard uncertainties.
    expect(angles('holdsMiddle')).toBe(percent(98.8));
    // Two cosines of phases that nobody knows, counted on a grid.
    const phases = Array.from({ length: 500 }, (_, index) => Math.cos((Math.PI * (index + 0.5)) / 500));
    const inside = phases.flatMap((a) => phases.filter((b) => Math.abs(a + b) <= Math.SQRT2)).length;
    expect(angles('holdsWave')).toBe(percent((100 * inside) / phases.length ** 2));
    // Four even parts: Irwin and Hall's piecewise formula at two half-widths from the middle.
    const beyond = (2 * (1 ** 4 - 0)) / 24;
    expect(angles('holdsAlike')).toBe(percent(100 * (1 - beyond)));
    expect(angles('holds')).toBe(percent(93.16));
    expect(angles('holdsExpanded')).toBe(percent(95.7));
  });

  it('are what the mistakes cost', () => {
    expect(angles('calledU')).toBe(`±${db(0.6)} where 2u is ±${db(0.69)}; it holds 92${nb}% of the rows`);
    expect(angles('calledLimit')).toBe(
      `±${db(0.42)} is passed by 20${nb}% of the rows, and the limits reach ±${db(0.6)}`,
    );
    expect(angles('padsFirst')).toBe(
      `u goes from ${db(u)} to ${db(0.6)}; the receiver halved would give ${db(0.42)}`,
    );
  });
});
