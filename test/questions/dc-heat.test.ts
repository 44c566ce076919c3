import { describe, expect, it } from 'vitest';
import { heatHow, heatKeyed, heatWaiting, heatWorth } from '../../src/questions/dc-heat.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess on substitution', () => {
  it('is half a watt times 9.5 over 9.4, the wrong ones turned round and halved', () => {
    expect(right(heatHow())).toBe(`${Math.round((500 * 9.5) / 9.4)}${nb}mW`);
    expect(texts(heatHow()).slice(1, 3)).toEqual([`495${nb}mW`, `253${nb}mW`]);
  });
});

describe('a reading after one time constant', () => {
  it('is low by 63 %, in decibels of power', () => {
    const share = 1 - 1 / Math.E;
    expect(right(heatWaiting())).toBe(`\u2212${(-10 * Math.log10(share)).toFixed(1)}${nb}dB`);
    expect(texts(heatWaiting()).slice(0, 3)).toEqual([
      `\u2212${(-20 * Math.log10(share)).toFixed(1)}${nb}dB`,
      right(heatWaiting()),
      `\u2212${(-10 * Math.log10(1 - share)).toFixed(1)}${nb}dB`,
    ]);
  });
});

describe('what is worth the trouble', () => {
  it('is the thermometer: by hand, the band with it and without', () => {
    const band = (kelvin: number): number => {
      const [rf, dc] = [(100 * kelvin) / 9.5, (100 * kelvin) / 9.4];
      return 2 * 0.04343 * Math.sqrt((0.5 ** 2 + 1 + rf ** 2 + dc ** 2 + 1) / 3);
    };
    expect(heatWorth().stem).toContain(`±${band(0.1).toFixed(2)}${nb}dB`);
    expect(heatWorth().worked).toContain(`±${band(0.03).toFixed(3)}${nb}dB`);
    expect(right(heatWorth())).toMatch(/thermometer/);
  });
});

describe('a string of dits', () => {
  it('is half, the wrong ones the peak, a root, and the word', () => {
    expect(right(heatKeyed())).toBe(`250${nb}mW`);
    expect(texts(heatKeyed())).toEqual([`500${nb}mW`, `250${nb}mW`, `354${nb}mW`, `220${nb}mW`]);
  });
});
