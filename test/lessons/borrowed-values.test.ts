import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const value = (name: string): string => textOfValue(`borrowed.${name}`);

describe('the numbers of the lesson on borrowing, each by hand', () => {
  it('are one round: lent, own, lent', () => {
    expect([value('before'), value('own'), value('after')]).toEqual([
      `\u221210.02${nb}dBm`,
      `\u22129.21${nb}dBm`,
      `\u221210.06${nb}dBm`,
    ]);
    expect(value('round')).toBe(`\u2212${((10.02 + 10.06) / 2 - 9.21).toFixed(2)}${nb}dB`);
    expect(value('oneSided')).toBe(`\u2212${(10.02 - 9.21).toFixed(2)}${nb}dB`);
    expect([value('rounds'), value('places')]).toEqual(['3', '4']);
  });

  it('are the lender’s part alone, and that it is never got below', () => {
    expect(value('lender')).toBe(`±0.20${nb}dB`);
    expect(value('floor')).toBe(`±${(0.4 / Math.sqrt(3)).toFixed(2)}${nb}dB`);
    const size = (name: string): number => Number(/±([\d.]+)/.exec(value(name))?.[1]);
    // What the parts come to by hand: readings alone, lender, warmth, and mismatch of the two inputs.
    const parts = (size('alone') / 2) ** 2 + 0.2 ** 2 / 3 + 0.1 ** 2 / 3 + 0.1 ** 2 / 2;
    expect(size('whole')).toBeCloseTo(2 * Math.sqrt(parts), 2);
    expect([value('readOff'), value('within')]).toEqual([`±0.05${nb}dB`, `±0.10${nb}dB`]);
    expect(size('alone')).toBeLessThan(size('floor'));
    expect(size('whole')).toBeGreaterThan(size('floor'));
    expect(size('laterBand')).toBeGreaterThan(size('whole'));
    expect(size('year')).toBeGreaterThan(size('laterBand'));
    expect(size('twoYears')).toBeGreaterThan(size('year'));
  });

  it('are the correction and the corrected reading', () => {
    expect(value('correction')).toBe(`\u22120.71${nb}dB ${value('whole')}`);
    expect(value('later')).toBe(`4.49${nb}dBm ${value('laterBand')}`);
    expect([value('lowest'), value('highest')]).toEqual([`\u22120.78${nb}dB`, `\u22120.64${nb}dB`]);
    expect([value('lowEnd'), value('highEnd')]).toEqual([`\u22129.3${nb}dBm`, `13.6${nb}dBm`]);
  });

  it('are the thermometer’s as printed', () => {
    expect(value('atThirty')).toBe(`\u22120.1494${nb}°C`);
    expect(value('uAtThirty')).toBe(`0.0041${nb}°C`);
    expect(value('uApart')).toBe(`0.0073${nb}°C`);
  });

  it('are what the mistakes cost', () => {
    expect(value('averaged')).toBe(`±0.22${nb}dB claimed where ${value('whole')} is due`);
    expect(value('stale')).toContain(`${value('laterBand')} claimed where`);
  });
});
