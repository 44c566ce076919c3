import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { statedCertificate, statedDisplay, statedLumps, statedMismatch } from '../../src/questions/stated.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const db = (value: number, decimals = 2): string => `${value.toFixed(decimals)}${nb}dB`;

describe('the lumps that are as hard to twirl', () => {
  it('sit at the root of a third of the arm; the wrong options at its half, its two thirds and its end', () => {
    expect(right(statedLumps())).toContain(db(0.5 / Math.sqrt(3)));
    const [half, , balance, end] = texts(statedLumps());
    expect(half).toContain(db(0.25));
    expect(balance).toContain(db(1 / 3));
    expect(end).toContain(db(0.5));
    expect(statedLumps().stem).toContain(`from \u22120.50${nb}dB to +0.50${nb}dB`);
    expect(statedLumps().options[3]?.reply).toContain('1.73 times');
  });
});

describe('the last digit', () => {
  it('is half a step by the root of 3, by hand; the wrong options forget the half, the root, or both', () => {
    expect(right(statedDisplay())).toBe(db(0.1 / Math.sqrt(12), 3));
    expect(texts(statedDisplay()).slice(1)).toEqual([db(0.1 / Math.sqrt(3), 3), db(0.05, 3), db(0.1)]);
  });
});

describe('a mismatch', () => {
  it('is divided by the root of 2; the wrong options by 2, by the root of 3, and by nothing', () => {
    expect(right(statedMismatch())).toBe(db(0.2 / Math.SQRT2));
    expect(texts(statedMismatch())).toEqual([db(0.1), db(0.2 / Math.sqrt(3)), db(0.2 / Math.SQRT2), db(0.2)]);
    const short = 1 - Math.SQRT2 / Math.sqrt(3);
    expect(statedMismatch().options[1]?.reply).toContain(`${(100 * short).toFixed(0)}${nb}% too small`);
  });
});

describe('a certificate', () => {
  it('is divided by its k and promises nothing beyond that', () => {
    expect(right(statedCertificate())).toMatch(/^u = 0\.10.dB; now and then .* more than 0\.20.dB\.$/);
    expect(statedCertificate().worked).toContain(`4.6${nb}%`);
    expect(texts(statedCertificate())[0]).toContain(`u = ${db(0.2 / Math.sqrt(3))}`);
    expect(texts(statedCertificate())[1]).toContain(`u = ${db(0.2)}`);
  });
});
