import { describe, expect, it } from 'vitest';
import {
  borrowedBeyond,
  borrowedHowGood,
  borrowedLater,
  borrowedRound,
} from '../../src/questions/borrowed.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('the guess', () => {
  it('has a floor that is the lender’s limits over the root of three, times 2', () => {
    expect(borrowedHowGood().worked).toContain(`±${((2 * 0.2) / Math.sqrt(3)).toFixed(2)}${nb}dB`);
    expect(borrowedHowGood().worked).toContain(`(each within ±0.10${nb}dB) it is ±0.30${nb}dB`);
    expect(right(borrowedHowGood())).toMatch(/^Never better/);
  });
});

describe('one round', () => {
  it('is the mean of before and after less one’s own; the wrong ones turn the sign, forget the after, or mix the two', () => {
    const round = (-10.01 - 10.05) / 2 + 9.27;
    expect(right(borrowedRound())).toBe(`\u2212${Math.abs(round).toFixed(2)}${nb}dB`);
    expect(texts(borrowedRound())).toEqual([
      `+${Math.abs(round).toFixed(2)}${nb}dB`,
      `\u2212${(10.01 - 9.27).toFixed(2)}${nb}dB`,
      `\u2212${Math.abs(round).toFixed(2)}${nb}dB`,
      `\u2212${((10.01 + 9.27 + 10.05) / 3).toFixed(2)}${nb}dB`,
    ]);
  });
});

describe('the later reading', () => {
  it('is corrected with its sign, and has both uncertainties', () => {
    expect(right(borrowedLater())).toBe(`4.49${nb}dBm ±0.36${nb}dB`);
    expect(texts(borrowedLater()).slice(0, 3)).toEqual([
      `4.49${nb}dBm ±0.30${nb}dB`,
      `4.49${nb}dBm ±0.20${nb}dB`,
      `5.91${nb}dBm ±0.36${nb}dB`,
    ]);
  });
});

describe('beyond the levels', () => {
  it('there is nothing, and within them the drift of two years', () => {
    expect(right(borrowedBeyond())).toMatch(/^Nothing/);
    expect(borrowedBeyond().worked).toMatch(/±0\.36.dB has become ±0\.43.dB/);
  });
});

describe('every question', () => {
  it('has four different options', () => {
    for (const question of [borrowedHowGood(), borrowedRound(), borrowedLater(), borrowedBeyond()])
      expect(new Set(texts(question)).size).toBe(4);
  });
});
