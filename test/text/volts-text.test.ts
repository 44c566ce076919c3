import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { voltsText } from '../../src/text/volts-text.ts';

const nb = '\u00a0';
const shown = (voltsV: number, digits = 3): string => voltsText('shown', { voltsV, digits });
const FACTORS: Readonly<Record<string, number>> = { V: 1, mV: 1e-3, µV: 1e-6, nV: 1e-9 };

describe('a voltage as text', () => {
  it('has the prefix that gives it a number from 1 to 999', () => {
    expect([7.0711, 0.22361, 2.2361e-6, 7.07e-8].map((volts) => shown(volts))).toEqual([
      `7.07${nb}V`,
      `224${nb}mV`,
      `2.24${nb}µV`,
      `70.7${nb}nV`,
    ]);
  });

  it('is rounded before the prefix is chosen, and keeps to the largest and the smallest', () => {
    expect(shown(0.9996)).toBe(`1.00${nb}V`);
    expect(shown(2236)).toBe(`2240${nb}V`);
    expect(shown(2.236e-11)).toBe(`0.0224${nb}nV`);
  });

  it('reads back as the voltage, to the digits that it shows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e3, noNaN: true }),
        fc.integer({ min: 2, max: 6 }),
        (volts, digits) => {
          const [text = '', unit = ''] = shown(volts, digits).split(nb);
          const back = Number(text) * (FACTORS[unit] ?? Number.NaN);
          expect(Math.abs(back / volts - 1)).toBeLessThanOrEqual(0.51 * 10 ** (1 - digits));
        },
      ),
    );
  });

  it('is written plainly in copies and in words', () => {
    expect(voltsText('ascii', { voltsV: 2.236e-6, digits: 3 })).toBe('2.24 uV');
    expect(voltsText('spoken', { voltsV: 0.2236, digits: 3 })).toBe('224 millivolts');
  });

  it('refuses what is no voltage above nothing, and digits that there are not', () => {
    for (const voltsV of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => shown(voltsV)).toThrow(/voltsText/);
    for (const digits of [0, 1.5, 16]) expect(() => shown(1, digits)).toThrow(/digits/);
  });
});
