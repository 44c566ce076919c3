import { describe, expect, it } from 'vitest';
import { fourTimes, oneReading, threeReadings, whatIsCured } from '../../src/questions/few-readings.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const even = (value: number): string => `±${value.toFixed(2)}${nb}dB`;

describe('three readings', () => {
  // Mean 26.8567; deviations -0.0167, 0.1633, -0.1467.
  const s = Math.sqrt((0.016667 ** 2 + 0.163333 ** 2 + 0.146667 ** 2) / 2);
  const u = s / Math.sqrt(3);

  it('need the factor 4.53 of two degrees of freedom (GUM, Table G.2)', () => {
    expect(right(threeReadings())).toBe(even(4.5265 * u));
    expect(threeReadings().worked).toContain('makes 4.53 out of');
    expect(threeReadings().stem).toContain('26.84, 27.02, 26.71 dBm');
  });

  it('have wrong options: one u, two of them, two of a single reading', () => {
    expect(texts(threeReadings()).slice(0, 3)).toEqual([even(u), even(2 * u), even(2 * s)]);
  });
});

describe('four times as many', () => {
  const many = (count: number): number => 2 * Math.sqrt(0.01 / count + 0.25 / 3);

  it('halve the scatter and nothing else', () => {
    expect(right(fourTimes())).toBe(even(many(16)));
    expect(fourTimes().stem).toContain(even(many(4)));
    expect(fourTimes().worked).toContain(`from 0.050${nb}dB to 0.025${nb}dB`);
    expect(texts(fourTimes()).slice(1)).toEqual([even(many(4) / 2), even(many(4) / 4), even(0.05)]);
  });
});

describe('one reading', () => {
  it('has the scatter of the evenings before, with the factor 2.13 of twenty degrees of freedom', () => {
    const s = 0.107434;
    expect(right(oneReading())).toBe(even(2.13303 * s));
    expect(oneReading().stem).toContain('with 20 degrees of freedom');
    expect(texts(oneReading())[1]).toContain(even((2.13303 * s) / 5));
    expect(texts(oneReading())[3]).toBe(even(2.13303 * s * Math.SQRT2));
  });
});

describe('what is cured', () => {
  it('is what differs from reading to reading', () => {
    expect(right(whatIsCured())).toBe('The connectors.');
    expect(whatIsCured().worked).toContain(even(0.5 * 0.9545));
  });
});
