import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { behindTwoPads, doublings, seventeen, twiceTheVolts } from '../../src/questions/ratios.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): Readonly<Record<string, string>> =>
  Object.fromEntries(options.map(({ id, text }) => [id, text]));
const right = (question: Question): string | undefined => texts(question)[question.answer];

describe('what is left behind two pads', () => {
  it('is the power by hand, and so is each wrong way', () => {
    expect(texts(behindTwoPads())).toEqual({
      a: `${(500 / 26).toFixed(1)}${nb}mW`,
      b: `${(500 / 10 ** 1.3).toFixed(1)}${nb}mW`,
      c: `${(500 / 10 ** 2.6).toFixed(2)}${nb}mW`,
      d: `${500 - 26}${nb}mW`,
    });
    expect(right(behindTwoPads())).toBe(`1.26${nb}mW`);
  });

  it('does not ask in which order the pads stand', () => {
    expect(right(behindTwoPads({ losses: [6, 20] }))).toBe(right(behindTwoPads()));
  });
});

describe('from one power to another', () => {
  it('is three decibels and a hundredth for each doubling', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4 }), fc.constantFrom(1, 5, 10), (twos, from) => {
        const question = doublings({ from, to: from * 2 ** twos });
        expect(right(question)).toBe(`${(twos * 10 * Math.log10(2)).toFixed(1)}${nb}dB`);
        expect(question.worked).toContain(`${twos} doublings`);
      }),
    );
  });

  it('is neither the difference nor the ratio nor twenty times the logarithm', () => {
    expect(texts(doublings())).toEqual({
      a: `35${nb}dB`,
      b: `9.0${nb}dB`,
      c: `18.1${nb}dB`,
      d: `8.0${nb}dB`,
    });
  });
});

describe('twice the volts', () => {
  it('is four times the power, whichever formula says so', () => {
    expect(texts(twiceTheVolts())).toEqual({
      a: `3.0${nb}dB`,
      b: `2.0${nb}dB`,
      c: `6.0${nb}dB`,
      d: `12.0${nb}dB`,
    });
    expect(right(twiceTheVolts())).toBe(`${(10 * Math.log10(4)).toFixed(1)}${nb}dB`);
  });
});

describe('seventeen decibels', () => {
  it('are fifty times by the head and a little more by the formula', () => {
    expect(texts(seventeen())).toEqual({ a: '×17', b: '×50.1', c: '×7.08', d: '×70' });
    expect(seventeen().worked).toBe(
      '17 is 10 + 10 − 3: ten times ten, halved. The head says ×50, the formula ×50.1.',
    );
  });
});
