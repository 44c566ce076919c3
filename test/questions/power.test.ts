import { describe, expect, it } from 'vitest';
import { powerEfficiency, powerMeter, powerReflected, powerTones } from '../../src/questions/power.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string => options.find(({ id }) => id === answer)?.text ?? '';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess at a slow meter', () => {
  it('is 22/50 of 500 mW, 220 mW; wrong are all of it, half of it, and the root of two', () => {
    expect(right(powerMeter())).toBe(`220${nb}mW`);
    expect(texts(powerMeter())).toEqual([`500${nb}mW`, `220${nb}mW`, `250${nb}mW`, `354${nb}mW`]);
  });
});

describe('two tones on a screen', () => {
  it('of 40 Vpp in 50 ohms have 4 W PEP and 2 W mean: 40²/400, and half of it', () => {
    expect(right(powerTones())).toBe(`PEP 4.00${nb}W, mean 2.00${nb}W`);
    expect(texts(powerTones())).toEqual([
      `PEP 4.00${nb}W, mean 4.00${nb}W`,
      `PEP 8.00${nb}W, mean 4.00${nb}W`,
      `PEP 4.00${nb}W, mean 2.00${nb}W`,
      `PEP 4.00${nb}W, mean 2.83${nb}W`,
    ]);
  });
});

describe('an SWR of 1.5', () => {
  it('leaves 96 % in the load, 0.18 dB less; wrong are the share of volts, a third, and a half', () => {
    expect(texts(powerReflected())).toEqual([
      `96${nb}% of it, \u22120.18${nb}dB`,
      `80${nb}% of it, \u22120.97${nb}dB`,
      `67${nb}% of it, \u22121.76${nb}dB`,
      `50${nb}% of it, \u22123.01${nb}dB`,
    ]);
    expect(right(powerReflected())).toBe(texts(powerReflected())[0]);
  });
});

describe('the efficiency of a keyed transmitter', () => {
  it('of 5 W from 10 W is 50 %; wrong are PEP over mean, mean over key-down, and out over everything', () => {
    expect(right(powerEfficiency())).toBe(`50${nb}%`);
    expect(texts(powerEfficiency())).toEqual([`114${nb}%`, `22${nb}%`, `67${nb}%`, `50${nb}%`]);
  });
});
