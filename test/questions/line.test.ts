import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerW } from '#compute';
import { lineAtInput, lineBack, lineErp, lineHeat } from '../../src/questions/line.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string => options.find(({ id }) => id === answer)?.text ?? '';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess at the end of the line', () => {
  it('is 27 - 40.1 = -13.1 dBm, 49 µW; wrong are the losses added, and the sign dropped', () => {
    expect(right(lineAtInput())).toBe(`\u221213.1${nb}dBm, 49.0${nb}µW`);
    expect(texts(lineAtInput()).slice(0, 2)).toEqual([
      `67.1${nb}dBm, 5.13${nb}kW`,
      `13.1${nb}dBm, 20.4${nb}mW`,
    ]);
  });
});

describe('the heat in a pad', () => {
  it('of 5 W into 10 dB is 4.5 W; wrong are what comes out, the factor of volts, and all of it', () => {
    expect(right(lineHeat())).toBe(`4.50${nb}W`);
    expect(texts(lineHeat())).toEqual([
      `500${nb}mW`,
      `4.50${nb}W`,
      `${(5 * (1 - 10 ** -0.5)).toFixed(2)}${nb}W`,
      `5.00${nb}W`,
    ]);
  });

  it('follows power and loss', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 3, max: 30 }), (power, lossDb) => {
        const heat = power * (1 - 10 ** (-lossDb / 10));
        const text = right(lineHeat({ power: powerW(power), lossDb }));
        expect(Number.parseFloat(text) * (text.endsWith('mW') ? 1e-3 : 1)).toBeCloseTo(heat, 0);
      }),
    );
  });
});

describe('the way back', () => {
  it('from -20.3 dBm behind 30 dB is 9.70 dBm, 9.33 mW; forgotten it is 9.33 µW', () => {
    expect(texts(lineBack())).toEqual([`9.33${nb}mW`, `9.33${nb}µW`, `9.33${nb}nW`, `280${nb}µW`]);
    expect(right(lineBack())).toBe(`9.33${nb}mW`);
  });
});

describe('from EIRP to ERP', () => {
  it('10 W are 6.10 W: 2.15 dB less (common practice: 10 W EIRP = 6.1 W ERP)', () => {
    expect(right(lineErp())).toBe(`6.10${nb}W`);
    expect(texts(lineErp())).toEqual([`10.0${nb}W`, `16.4${nb}W`, `7.85${nb}W`, `6.10${nb}W`]);
  });
});
