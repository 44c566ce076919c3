import { describe, expect, it } from 'vitest';
import { joinsNeedle, joinsProbe, joinsSquare, joinsWhich } from '../../src/questions/joined.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('a needle meter at the middle of a divider', () => {
  it('has two resistors of 100 kΩ side by side as its source; each wrong option follows its mistake', () => {
    const shown = (source: number, meter: number): number => (5 * meter) / (source + meter);
    expect(right(joinsNeedle())).toBe(`${shown(50, 200).toFixed(1)}${nb}V`);
    expect(texts(joinsNeedle())).toEqual([
      `5.0${nb}V`,
      `4.0${nb}V`,
      `${shown(100, 200).toFixed(1)}${nb}V`,
      `${shown(50, 10_000).toFixed(3)}${nb}V`,
    ]);
  });
});

describe('a mean-responding meter on a square wave of 5 V', () => {
  it('multiplies its mean by the form factor of a sine', () => {
    const sine = Math.PI / Math.sqrt(8);
    expect(right(joinsSquare())).toBe(`${(5 * sine).toFixed(2)}${nb}V`);
    expect(texts(joinsSquare())).toEqual([
      `5.00${nb}V`,
      `${(5 / Math.SQRT2).toFixed(2)}${nb}V`,
      `${(5 * sine).toFixed(2)}${nb}V`,
      `${(2.5 * sine).toFixed(2)}${nb}V`,
    ]);
    expect(joinsSquare().worked).toContain(`11.1${nb}%`);
  });
});

describe('a probe whose switch and setting disagree', () => {
  it('makes a hundredth of the power', () => {
    expect(right(joinsProbe())).toBe(`5.01${nb}mW`);
    expect(texts(joinsProbe())).toEqual([`501${nb}mW`, `50.1${nb}mW`, `50.1${nb}W`, `5.01${nb}mW`]);
    expect(joinsProbe().worked).toContain(`${Math.sqrt(0.501187 * 50).toFixed(1)}${nb}V RMS`);
  });
});

describe('the instrument for a harmonic', () => {
  it('is the one that shows level over frequency; 40 dB below are a ten thousandth', () => {
    expect(right(joinsWhich())).toBe('A spectrum analyser');
    expect(joinsWhich().worked).toContain(`50${nb}µW`);
  });
});

describe('every question on joining', () => {
  it.each([joinsNeedle, joinsSquare, joinsProbe, joinsWhich])(
    'has four different options, each with its own reply',
    (make) => {
      const { options } = make();
      expect(new Set(options.map(({ text }) => text)).size).toBe(4);
      expect(new Set(options.map(({ reply }) => reply)).size).toBe(4);
    },
  );
});
