import { describe, expect, it } from 'vitest';
import {
  detectorAddBack,
  detectorHarmonic,
  detectorLow,
  detectorWhichErrs,
} from '../../src/questions/detector.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string => options.find(({ id }) => id === answer)?.text ?? '';
const lg20 = (ratio: number): number => 20 * Math.log10(ratio);

describe('which of two suffers from a forgotten drop', () => {
  it('is the weak one, with both errors worked', () => {
    expect(right(detectorWhichErrs())).toBe('The weak one');
    for (const volts of [1.85, 16.77])
      expect(detectorWhichErrs().worked).toContain(`\u2212${lg20((volts + 0.55) / volts).toFixed(2)}${nb}dB`);
  });

  it('is the strong one in watts, and the reply says so', () => {
    const short = (volts: number): number => ((volts + 0.55) ** 2 - volts ** 2) / (2 * 49.8);
    expect(detectorWhichErrs().options[2]?.reply).toContain(`${(1000 * short(16.77)).toFixed(0)}${nb}mW`);
    expect(short(16.77)).toBeGreaterThan(short(1.85));
  });
});

describe('volts of a detector as watts', () => {
  it('have the drop added and twice the load; the wrong options each follow their mistake', () => {
    const milliwatts = (peak: number, of: number): string => `${((1000 * peak ** 2) / of).toFixed(0)}${nb}mW`;
    expect(right(detectorAddBack())).toBe(milliwatts(4.55, 100));
    expect(texts(detectorAddBack())).toEqual([
      milliwatts(4, 100),
      milliwatts(4.55, 50),
      milliwatts(3.45, 100),
      milliwatts(4.55, 100),
    ]);
  });
});

describe('a harmonic at a detector', () => {
  it('is a tenth of the volts, not a hundredth of the power nor of the volts', () => {
    expect(right(detectorHarmonic())).toBe(
      `+${lg20(1.1).toFixed(2)}/\u2212${(-lg20(0.9)).toFixed(2)}${nb}dB`,
    );
    expect(texts(detectorHarmonic())[1]).toBe(`+${(10 * Math.log10(1.01)).toFixed(2)}${nb}dB`);
    expect(texts(detectorHarmonic())[2]).toBe(`±${lg20(1.01).toFixed(2)}${nb}dB`);
  });
});

describe('a detector below its range', () => {
  it('has no number, whatever the sums say', () => {
    const level = (peak: number): string =>
      `${(10 * Math.log10((1000 * peak ** 2) / (2 * 49.8))).toFixed(1)}${nb}dBm`;
    expect(right(detectorLow())).toBe('No number');
    expect(texts(detectorLow())).toEqual([
      level(1.15),
      level(0.6),
      'No number',
      `${level(1.15)}, with the band twice as wide`,
    ]);
    expect(detectorLow().worked).toContain(`50${nb}mW`);
  });
});
