import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ohms, powerW } from '#compute';
import type { Question } from '../../src/questions/question.ts';
import { traceHeight, traceLoad, tracePercent, traceWatts } from '../../src/questions/trace.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess from a trace to watts', () => {
  it('is 14.1 V halved, over the root of 2, squared, over 50; the others are 2, 4 and 8 times as much', () => {
    const watts = (14.1 / 2 / Math.SQRT2) ** 2 / 50;
    expect(right(traceWatts())).toBe(`${(1000 * watts).toFixed(0)}${nb}mW`);
    expect(texts(traceWatts()).slice(1)).toEqual([
      `${(2000 * watts).toFixed(0)}${nb}mW`,
      `${(4 * watts).toFixed(2)}${nb}W`,
      `${(8 * watts).toFixed(2)}${nb}W`,
    ]);
  });
});

describe('the worked answer to that guess', () => {
  it('shows as many digits as a reader needs to come to the same milliwatts', () => {
    const [, peak = '', rms = '', load = '', watts = ''] =
      /peak, ([\d.]+)\u00a0V.*RMS, ([\d.]+)\u00a0V.*by ([\d.]+)\u00a0Ω: ([\d.]+)\u00a0mW/.exec(
        traceWatts().worked,
      ) ?? [];
    expect(Number(peak)).toBe(14.1 / 2);
    expect((Number(peak) / Math.SQRT2).toFixed(3)).toBe(rms);
    expect(((1000 * Number(rms) ** 2) / Number(load)).toFixed(0)).toBe(watts);
  });
});

describe('the height to be expected', () => {
  it('of 5 W in 50 ohms is 44.7 V, and the wrong ones are RMS, peak and twice the RMS (anchors of the trade, V²/R)', () => {
    expect(right(traceHeight())).toBe(`44.7${nb}V`);
    expect(texts(traceHeight())).toEqual([`15.8${nb}V`, `22.4${nb}V`, `31.6${nb}V`, `44.7${nb}V`]);
  });

  it('follows power and load', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 20, max: 200 }), (power, load) => {
        const volts = 2 * Math.sqrt(2 * power * load);
        const question = traceHeight({ power: powerW(power), resistance: ohms(load) });
        expect(Number.parseFloat(right(question) ?? '')).toBeCloseTo(volts, 0);
      }),
    );
  });
});

describe('a load that is not what is written on it', () => {
  it('of 47.5 ohms for 50 makes the power 5 % too small, once', () => {
    expect(right(traceLoad())).toBe(`5.0${nb}% too little, \u22120.22${nb}dB`);
    expect(texts(traceLoad())).toEqual([
      `5.3${nb}% too much, +0.22${nb}dB`,
      `5.0${nb}% too little, \u22120.22${nb}dB`,
      `9.8${nb}% too little, \u22120.45${nb}dB`,
      `not at all, 0.00${nb}dB`,
    ]);
  });
});

describe('a percentage of volts', () => {
  it('of 5 is +10.25 and -9.75 of power: 1.05 squared is 1.1025, 0.95 squared 0.9025', () => {
    expect(right(tracePercent())).toBe(`+10.25/\u22129.75${nb}%`);
    expect(texts(tracePercent())).toEqual([
      `±5.0${nb}%`,
      `±2.5${nb}%`,
      `+10.25/\u22129.75${nb}%`,
      `±25.0${nb}%`,
    ]);
    expect(tracePercent().worked).toContain('+0.42/\u22120.45');
  });
});
