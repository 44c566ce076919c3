import { describe, expect, it } from 'vitest';
import { applyCorrection, meterChanged, meterVerified } from '../../src/questions/own-meter.ts';
import type { Question } from '../../src/questions/question.ts';
import { finerMarks, frameMisfit, whyNoFit } from '../../src/questions/two-rules.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('the misfit that grows', () => {
  it('is three times as large at three times the length; the wrong options each follow their mistake', () => {
    expect(right(frameMisfit())).toBe(`1.20${nb}mm`);
    expect(texts(frameMisfit())).toEqual([
      `0.40${nb}mm`,
      `${(0.4 * Math.sqrt(3)).toFixed(2)}${nb}mm`,
      `0.80${nb}mm`,
      `1.20${nb}mm`,
    ]);
  });

  it('is named in the guess with its share, and heat with its own small number', () => {
    expect(whyNoFit().worked).toContain(`0.10${nb}%`);
    expect(whyNoFit().options[3]?.reply).toContain(`${(1500 * 11.5e-6 * 10).toFixed(2)}${nb}mm longer`);
  });
});

describe('finer marks', () => {
  it('hardly count beside the promise of the makers, by hand', () => {
    const u = (scale: number): number => 2 * Math.sqrt(2 * (0.1 ** 2 / 12) + (2 * scale ** 2) / 3);
    expect(right(finerMarks())).toBe(`±${u(1.2).toFixed(1)}${nb}mm`);
    expect(texts(finerMarks())[1]).toBe(`±${u(0).toFixed(3)}${nb}mm`);
    expect(texts(finerMarks())[3]).toBe(`±2.4${nb}mm`);
  });
});

describe('a correction that is used', () => {
  // Four tenths of the way from 0.20 dB to 0.05 dB; U 0.08 dB with k = 2 and a step of 0.1 dB.
  const correction = 0.2 - 0.4 * 0.15;
  const u = 2 * Math.sqrt(0.04 ** 2 + 0.1 ** 2 / 12);

  it('is added, with its own uncertainty alone', () => {
    expect(right(applyCorrection())).toBe(
      `\u2212${(6 - correction).toFixed(3)}${nb}dBm ±${u.toFixed(3)}${nb}dB`,
    );
  });

  it('has wrong options: the sign turned, nothing added, and the correction kept in the band', () => {
    const [, turned, left, twice] = texts(applyCorrection());
    expect(turned).toBe(`\u2212${(6 + correction).toFixed(3)}${nb}dBm ±${u.toFixed(3)}${nb}dB`);
    expect(left).toBe(`\u22126.00${nb}dBm ±${(correction + u).toFixed(2)}${nb}dB`);
    expect(twice).toContain(`±${(correction + u).toFixed(2)}${nb}dB`);
  });

  it('changes nothing on the meter', () => {
    expect(right(meterChanged())).toMatch(/^Nothing\./);
    expect(meterChanged().stem).toContain(`+0.25${nb}dB`);
  });
});

describe('the verification that can’t tell', () => {
  it('has a band with the limit inside it, by hand', () => {
    const u = 2 * Math.sqrt(0.05 ** 2 + 0.05 ** 2 / 3 + 0.1 ** 2 / 12);
    expect(0.248 - u).toBeLessThan(0.3);
    expect(0.248 + u).toBeGreaterThan(0.3);
    expect(right(meterVerified())).toBe('This comparison can’t tell.');
    expect(meterVerified().worked).toContain(
      `from \u2212${(0.248 + u).toFixed(2)}${nb}dB to \u2212${(0.248 - u).toFixed(2)}${nb}dB`,
    );
  });
});
