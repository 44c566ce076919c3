import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { anglesGuess, anglesLimits, anglesShare, anglesSum } from '../../src/questions/right-angles.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const db = (value: number, decimals = 2): string => `${value.toFixed(decimals)}${nb}dB`;

describe('perfect pads', () => {
  it('buy little; the wrong options are their share, their part of the lengths, and their number', () => {
    const variance = 3 * 0.09 + 1;
    expect(right(anglesGuess())).toBe(`By ${(100 * (1 - 1 / Math.sqrt(variance))).toFixed(0)}${nb}%.`);
    expect(texts(anglesGuess()).slice(1)).toEqual([
      `By ${((100 * 0.27) / variance).toFixed(0)}${nb}%.`,
      `By ${((100 * 0.9) / 1.9).toFixed(0)}${nb}%.`,
      `By 75${nb}%: three parts of four.`,
    ]);
    expect(anglesGuess().stem).toContain(db(0.3 / Math.sqrt(3)));
  });
});

describe('three parts', () => {
  it('make 1.3 out of 0.3, 0.4 and 1.2; the wrong options add, take the largest, or a mean', () => {
    expect(texts(anglesSum())).toEqual([db(1.9, 1), db(1.3, 1), db(1.2, 1), db(1.3 / Math.sqrt(3))]);
    expect(right(anglesSum())).toBe(db(1.3, 1));
    expect(anglesSum().worked).toContain(`make ${db(0.5)};`);
  });
});

describe('a share', () => {
  it('is a square of all squares; the wrong options are of lengths, of the result, and of a count', () => {
    expect(texts(anglesShare())).toEqual([
      `67${nb}%`,
      `${(200 / Math.sqrt(5)).toFixed(0)}${nb}%`,
      `80${nb}%`,
      `50${nb}%`,
    ]);
    expect(right(anglesShare())).toBe(`80${nb}%`);
    expect(anglesShare().worked).toContain('0.04 of 0.05');
  });
});

describe('the root of squared limits', () => {
  it('is 1.73 standard uncertainties, which hold what three even parts hold there, by hand', () => {
    // Beyond √3 half-widths of three even parts: t = 3 − √3 from either end, so 2 (t/2)³/3!.
    const beyond = (2 * ((3 - Math.sqrt(3)) / 2) ** 3) / 6;
    expect(right(anglesLimits())).toContain('1.73 standard uncertainties');
    expect(right(anglesLimits())).toContain(`about ${(100 * (1 - beyond)).toFixed(0)}${nb}%`);
    expect(anglesLimits().worked).toContain(`${(100 * (1 - beyond)).toFixed(1)}${nb}%`);
    expect(anglesLimits().options[0]?.reply).toContain(`15${nb}% wider`);
    expect(anglesLimits().options[1]?.reply).toContain(`±${db(1.5, 1)}`);
  });
});
