import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import {
  writingBrackets,
  writingFew,
  writingPlusMinus,
  writingRounded,
} from '../../src/questions/writing.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('a plus-minus without a word', () => {
  it('may be U, u, or limits: times 1, 2, or 2 over the root of three', () => {
    expect(right(writingPlusMinus())).toBe('That cannot be known.');
    expect(texts(writingPlusMinus()).slice(0, 3)).toEqual([
      `±0.5${nb}dB`,
      `±1.0${nb}dB`,
      `±${(1 / Math.sqrt(3)).toFixed(2)}${nb}dB`,
    ]);
  });

  it('spans the factor that the sentence says', () => {
    const [, largest = '', smallest = ''] = texts(writingPlusMinus());
    const number = (text: string): number => Number.parseFloat(text.slice(1));
    const said = /A factor of (.*?) lies between/.exec(writingPlusMinus().worked)?.[1];
    expect(number(largest) / Math.min(number(smallest), 0.5)).toBeCloseTo(2, 9);
    expect(said).toBe('two');
  });
});

describe('rounding a result', () => {
  const u = Math.sqrt(
    0.01 ** 2 + 0.03 ** 2 + 0.25 ** 2 / 3 + 0.16 ** 2 / 2 + 0.5 ** 2 / 3 + 0.05 ** 2 / 3 + 0.2 ** 2 / 3,
  );

  it('comes once and last; the wrong options keep all, round on the way, or cut the value', () => {
    expect(right(writingRounded())).toBe(`27.10${nb}dBm ±${(2 * u).toFixed(2)}${nb}dB`);
    expect(texts(writingRounded())).toEqual([
      `27.1000${nb}dBm ±${(2 * u).toFixed(4)}${nb}dB`,
      `27.10${nb}dBm ±${(2 * u).toFixed(2)}${nb}dB`,
      `27.10${nb}dBm ±${(2 * Number(u.toFixed(2))).toFixed(2)}${nb}dB`,
      `27${nb}dBm ±${(2 * u).toFixed(2)}${nb}dB`,
    ]);
    expect(writingRounded().stem).toContain(`${u.toFixed(4)}${nb}dB`);
  });
});

describe('few degrees of freedom (GUM 7.2.4)', () => {
  it('give 0.79 mg as printed; the wrong options are those of a bell, of 2 and of 3', () => {
    expect(right(writingFew())).toBe(`0.79${nb}mg`);
    expect(writingFew().worked).toContain('k = 2.26');
    expect(texts(writingFew())).toEqual([
      `${(1.96 * 0.35).toFixed(2)}${nb}mg`,
      `0.70${nb}mg`,
      `0.79${nb}mg`,
      `1.05${nb}mg`,
    ]);
  });
});

describe('digits in brackets', () => {
  it('are u in the last place, so U is twice that', () => {
    expect(texts(writingBrackets())).toEqual([`±0.08${nb}dB`, `±0.04${nb}dB`, `±4${nb}dB`, `±0.02${nb}dB`]);
    expect(right(writingBrackets())).toBe(`±0.08${nb}dB`);
  });
});

describe('every question on writing it down', () => {
  it.each([writingPlusMinus, writingRounded, writingFew, writingBrackets])(
    'has four different options, each with its own reply',
    (make) => {
      const { options } = make();
      expect(new Set(options.map(({ text }) => text)).size).toBe(4);
      expect(new Set(options.map(({ reply }) => reply)).size).toBe(4);
    },
  );
});
