import { describe, expect, it } from 'vitest';
import { erf } from '#compute';
import { beyondHalf, likeliestPlace, oneBox, whichBell } from '../../src/questions/link-sum.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const percent = (share: number): string => `${(100 * share).toFixed(1)}${nb}%`;
const even = (value: number): string => `±${value.toFixed(2)}${nb}dB`;

describe('four links beyond half of their worst case', () => {
  it('are one in twelve, by the sum of four even numbers', () => {
    expect(right(beyondHalf())).toBe(`In ${percent(1 / 12)}.`);
    expect(beyondHalf().worked).toContain('one in 12');
  });

  it('have wrong options: one box alone, a root of limits as a standard uncertainty, all four far out', () => {
    expect(beyondHalf().options.map(({ text }) => text)).toEqual([
      `In ${percent(0.5)}.`,
      `In ${percent(1 - erf(Math.SQRT1_2))}.`,
      `In ${percent(1 / 12)}.`,
      `In ${percent(2 / 4 ** 4)}.`,
    ]);
  });
});

describe('one box', () => {
  it('holds 95 in a hundred within 95 hundredths of its limits', () => {
    expect(right(oneBox())).toBe(even(1.9));
    expect(oneBox().worked).toContain('1.65 standard uncertainties');
  });

  it('has wrong options: one u, the factor of a bell, and the limits', () => {
    const u = 2 / Math.sqrt(3);
    expect(oneBox().options.map(({ text }) => text)).toEqual([
      even(u),
      even(1.9),
      even(1.959964 * u),
      even(2),
    ]);
    expect(oneBox().options[0]?.reply).toContain(percent(1 / Math.sqrt(3)));
  });
});

describe('which sum a bell may stand in for', () => {
  it('is the one whose parts are alike; of the others it holds too much', () => {
    const shares = whichBell().options.map(({ reply }) => Number(/([\d.]+)\u00a0%/.exec(reply)?.[1]));
    expect(shares.slice(0, 3).every((share) => share > 98)).toBe(true);
    const nearest = Number(/holds ([\d.]+)/.exec(whichBell().worked)?.[1]);
    expect(Math.abs(nearest - 95.45)).toBeLessThan(1);
    expect(whichBell().answer).toBe('d');
  });

  it('has no part in it that outweighs all others together, and an answer that is no longer than the others', () => {
    const [receiver, ...others] = [0.3 ** 2 / 3, 0.1 ** 2 / 3, 0.1 ** 2 / 3, 0.1 ** 2 / 3, 0.2 ** 2 / 2];
    expect(receiver).toBeLessThanOrEqual(others.reduce((sum, part) => sum + part, 0) + 1e-12);
    const lengths = whichBell().options.map(({ text }) => text.length);
    expect(lengths.at(-1)).toBeLessThan(Math.max(...lengths.slice(0, -1)));
  });
});

describe('the likeliest place of a mismatch', () => {
  it('is at its limits: shares by the arcsine', () => {
    expect(likeliestPlace().worked).toContain(percent(1 - (2 / Math.PI) * Math.asin(0.9)));
    expect(likeliestPlace().worked).toContain(percent((2 / Math.PI) * Math.asin(0.1)));
    expect(right(likeliestPlace())).toBe('Near one of its limits.');
    expect(likeliestPlace().options[3]?.text).toContain(even(0.9 / Math.SQRT2));
  });
});
