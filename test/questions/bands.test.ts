import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oneDecibel, otherEnd, threePercentOfVolts, whichMean } from '../../src/questions/bands.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): Readonly<Record<string, string>> =>
  Object.fromEntries(options.map(({ id, text }) => [id, text]));
const right = (question: Question): string | undefined => texts(question)[question.answer];

describe('one decibel in watts', () => {
  it('is each end by hand, and each mistake too', () => {
    const middle = 10 ** 2.7;
    const between = (low: number, high: number): string => `${low.toFixed(0)} to ${high.toFixed(0)}${nb}mW`;
    expect(texts(oneDecibel())).toEqual({
      a: between(middle * 0.99, middle * 1.01),
      b: between(middle * 0.9, middle * 1.1),
      c: between(2 * middle - 10 ** 2.8, 10 ** 2.8),
      d: between(10 ** 2.6, 10 ** 2.8),
    });
    expect(right(oneDecibel())).toBe(`398 to 631${nb}mW`);
  });
});

describe('a percentage of volts', () => {
  it('doubles in power while it is small, and is a little more upwards', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 9 }), (percent) => {
        const [, up = '0', down = '0'] =
          /^\+([\d.]+)\/−([\d.]+)/.exec(right(threePercentOfVolts({ percent })) ?? '') ?? [];
        expect(Math.abs(Number(up) - (2 * percent + percent ** 2 / 100))).toBeLessThan(0.051);
        expect(Math.abs(Number(down) - (2 * percent - percent ** 2 / 100))).toBeLessThan(0.051);
      }),
    );
  });

  it('is not squared, halved or left as it is', () => {
    expect(texts(threePercentOfVolts())).toEqual({
      a: `±3${nb}%`,
      b: `+6.1/−5.9${nb}%`,
      c: `±9${nb}%`,
      d: `±1.5${nb}%`,
    });
  });
});

describe('a third of the reading to either side', () => {
  it('is farther down than up in decibels', () => {
    expect(texts(otherEnd())).toEqual({
      a: `±1.25${nb}dB`,
      b: `±1.76${nb}dB`,
      c: `+1.25/−1.76${nb}dB`,
      d: `±3.33${nb}dB`,
    });
    expect(otherEnd().worked).toContain(`+1.25${nb}dB, and 2 W over 3 W is −1.76${nb}dB`);
  });
});

describe('the mean power of three minutes', () => {
  it('is the level of the mean of the milliwatts', () => {
    const milliwatts = (10 ** 0.7 + 10 + 10 ** 1.3) / 3;
    expect(texts(whichMean())).toEqual({
      a: `${(10 * Math.log10(milliwatts)).toFixed(1)}${nb}dBm`,
      b: `10.0${nb}dBm`,
      c: `${(10 * Math.log10(3 * milliwatts)).toFixed(1)}${nb}dBm`,
      d: `30.0${nb}dBm`,
    });
  });

  it('does not depend on the order of the minutes', () => {
    expect(right(whichMean({ levels: [13, 7, 10] }))).toBe(right(whichMean()));
  });
});
