import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelsApart, throughTheChain, twoTransmitters, whatIsNegative } from '../../src/questions/levels.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): Readonly<Record<string, string>> =>
  Object.fromEntries(options.map(({ id, text }) => [id, text]));
const right = (question: Question): string | undefined => texts(question)[question.answer];

describe('two transmitters in one load', () => {
  it('are three decibels above one, whatever it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 40 }), (each) => {
        const question = twoTransmitters({ each });
        const level = (dbm: number): string => `${dbm < -0.05 ? '−' : ''}${Math.abs(dbm).toFixed(1)}${nb}dBm`;
        expect(right(question)).toBe(level(each + 10 * Math.log10(2)));
        expect(texts(question).d).toBe(level(each + 20 * Math.log10(2)));
        expect(texts(question).b).toBe(level(each));
      }),
    );
  });

  it('are claimed to be watts by somebody who adds the dBm', () => {
    expect(texts(twoTransmitters()).a).toBe(`34.0${nb}dBm`);
    expect(twoTransmitters().options[0]?.reply).toContain(`2.51${nb}W, out of two times 50.1${nb}mW`);
  });
});

describe('from the meter back to the socket', () => {
  it('puts the losses on again, once', () => {
    expect(texts(throughTheChain())).toEqual({
      a: `−13.1${nb}dBm`,
      b: `27.1${nb}dBm`,
      c: `7.1${nb}dBm`,
      d: `47.1${nb}dBm`,
    });
    expect(throughTheChain().worked).toContain(`513${nb}mW`);
  });
});

describe('a negative level', () => {
  it('is a small power, not a negative one', () => {
    expect(texts(whatIsNegative())).toEqual({
      a: `100${nb}µW`,
      b: `−10${nb}mW`,
      c: `10.0${nb}mW`,
      d: `${(1000 / Math.sqrt(10)).toFixed(0)}${nb}µW`,
    });
    expect(right(whatIsNegative({ reading: -20 }))).toBe(`10.0${nb}µW`);
  });
});

describe('how far two levels are apart', () => {
  it('is a ratio, in dB', () => {
    expect(texts(levelsApart())).toEqual({
      a: `10${nb}dBm`,
      b: `44${nb}dBm`,
      c: `${(10 ** 2.7 - 10 ** 1.7).toFixed(0)}${nb}mW`,
      d: `10${nb}dB`,
    });
    expect(right(levelsApart({ from: 0, to: 30 }))).toBe(`30${nb}dB`);
  });
});
