import { describe, expect, it } from 'vitest';
import { worstCertificate, worstEight, worstGuess, worstSum } from '../../src/questions/pads-in-a-row.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('how near the end a row comes', () => {
  it('is by hand: all four far out on one side', () => {
    // Sums of four even parts within 0.18 dB of their ends: 0.18⁴/4! over the box 1 × 1 × 1 × 0.6, at both ends.
    const rare = (2 * 0.18 ** 4) / (24 * 0.6);
    expect(worstGuess().worked).toContain(`${(100 * rare).toFixed(3)}${nb}%`);
    expect(right(worstGuess())).toBe(`About ${(100 * rare).toFixed(3)}${nb}%.`);
    expect(worstGuess().stem).toContain(`1.62${nb}dB`);
    expect(worstGuess().worked).toContain(`about ${Math.round(1 / rare / 100) * 100}.`);
  });
});

describe('four pads and a receiver', () => {
  it('add up; the wrong options are the root of squares, one pad alone, and the largest part', () => {
    expect(right(worstSum())).toBe(`±1.4${nb}dB`);
    expect(texts(worstSum())).toEqual([
      `±${Math.hypot(0.3, 0.3, 0.3, 0.3, 0.2).toFixed(2)}${nb}dB`,
      `±1.4${nb}dB`,
      `±0.50${nb}dB`,
      `±0.30${nb}dB`,
    ]);
  });
});

describe('a certificate in the row', () => {
  it('leaves nothing to guarantee; the wrong options add U, half of it, or leave it out', () => {
    expect(right(worstCertificate())).toBe('Nothing.');
    expect(texts(worstCertificate()).slice(0, 3)).toEqual([`±1.7${nb}dB`, `±1.6${nb}dB`, `±1.5${nb}dB`]);
  });
});

describe('eight pads instead of two', () => {
  it('widen the guarantee four times, and what holds most about twice', () => {
    expect(right(worstEight())).toMatch(/^The guarantee 4\.0 times, what holds 95 % 2\.1 times\.$/);
    expect(new Set(texts(worstEight())).size).toBe(4);
    expect(worstEight().worked).toContain(`from ±0.79${nb}dB to ±1.6${nb}dB`);
  });
});
