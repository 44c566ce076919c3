import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { sharedDifference, sharedMean, sharedResistors, sharedTwoPads } from '../../src/questions/shared.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
/** U with k = 2 of rectangular parts with these weighted half-widths. */
const u = (...parts: readonly number[]): number =>
  2 * Math.sqrt(parts.reduce((sum, a) => sum + a * a, 0) / 3);
const band = (value: number, decimals = 2): string => `±${value.toFixed(decimals)}${nb}dB`;

describe('two pads of one batch', () => {
  it('add what they share before it is squared; each wrong option follows its mistake', () => {
    expect(right(sharedTwoPads())).toBe(band(u(0.2, 0.2, 0.8)));
    expect(texts(sharedTwoPads())).toEqual([
      band(u(0.2, 0.2)),
      band(u(0.2, 0.2, 0.4, 0.4)),
      band(u(0.2, 0.2, 0.8)),
      band(1.2, 1),
    ]);
    expect(sharedTwoPads().worked).toContain(band(u(0.2, 0.2, 0.4, 0.4)));
  });
});

describe('a comparison by one receiver', () => {
  it('keeps the own parts alone', () => {
    expect(right(sharedDifference())).toBe(band(u(0.1, 0.1)));
    expect(texts(sharedDifference()).slice(1)).toEqual([
      band(u(0.1, 0.1, 1, 1), 1),
      band(u(0.1, 0.1, 2), 1),
      band(1.1, 1),
    ]);
  });
});

describe('a mean of two readings', () => {
  it('keeps the calibration in full', () => {
    expect(right(sharedMean())).toBe(band(u(0.05, 0.05, 0.3)));
    expect(texts(sharedMean())).toEqual([
      band(u(0.05, 0.05, 0.15, 0.15)),
      band(u(0.05, 0.05, 0.3)),
      band(u(0.1, 0.1)),
      band(u(0.1, 0.1, 0.6)),
    ]);
  });
});

describe('ten resistors and one standard (GUM 5.2.2)', () => {
  it('are 1 ohm as printed, and 0.32 ohm if they were strangers', () => {
    expect(right(sharedResistors())).toBe(`1.00${nb}Ω`);
    expect(texts(sharedResistors())).toEqual([`0.00${nb}Ω`, `0.10${nb}Ω`, `0.32${nb}Ω`, `1.00${nb}Ω`]);
    expect(sharedResistors().worked).toContain('r = 1');
  });
});

describe('every question on shared causes', () => {
  it.each([sharedTwoPads, sharedDifference, sharedMean, sharedResistors])(
    'has four different options, each with its own reply',
    (make) => {
      const { options } = make();
      expect(new Set(options.map(({ text }) => text)).size).toBe(4);
      expect(new Set(options.map(({ reply }) => reply)).size).toBe(4);
    },
  );
});
