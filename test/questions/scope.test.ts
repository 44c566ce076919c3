import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { scopeFullScale, scopeHowSure, scopeRange, scopeWhatHelps } from '../../src/questions/scope.ts';
import { clubScope, scopeFound } from '../../src/sheet/scope.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string => options.find(({ id }) => id === answer)?.text ?? '';
const volts = (percent: number): number => 20 * Math.log10(1 + percent / 100);
const power = (percent: number): number => 10 * Math.log10(1 + percent / 100);
const ends = (of: (percent: number) => number, percent: number): string => {
  const [up, down] = [of(percent).toFixed(2), (-of(-percent)).toFixed(2)];
  return up === down ? `±${up}${nb}dB` : `+${up}/−${down}${nb}dB`;
};

describe('how sure a trace is', () => {
  it('is the whole band, with the same as percent of power', () => {
    const found = scopeFound(clubScope());
    if (!found.inRange) throw new Error('wish a number');
    const { expanded } = found.result.propagation;
    const [up, down] = [10 ** (expanded / 10) - 1, 1 - 10 ** (-expanded / 10)].map((part) =>
      (100 * part).toFixed(1),
    );
    expect(right(scopeHowSure())).toBe(`±0.37${nb}dB: +${up}/−${down}${nb}% of power`);
  });

  it('has wrong options: percent of volts as power, the last digit, and the square counted twice', () => {
    const [asPower, digit, , twice] = texts(scopeHowSure());
    expect(asPower).toContain(ends(power, 3));
    expect(digit).toContain(ends(volts, (100 * 0.05) / 14.2));
    expect(twice).toContain(ends(volts, 6));
    expect(scopeHowSure().worked).toContain(ends(volts, 3));
  });
});

describe('a percentage of full scale', () => {
  const share = (3 * 40) / 15.2;

  it('is volts of the whole screen, as percent of the trace', () => {
    expect(right(scopeFullScale())).toBe(ends(volts, share));
    expect(right(scopeFullScale())).toBe(`+0.66/−0.71${nb}dB`);
    expect(scopeFullScale().worked).toContain(`${share.toFixed(1)}${nb}%`);
  });

  it('is less than half on the next finer screen, on which the trace still fits', () => {
    const finer = (3 * 16) / 15.2;
    expect(scopeFullScale().worked).toContain(`On a screen of 16${nb}V`);
    expect(scopeFullScale().worked).toContain(ends(volts, finer));
    expect(15.2).toBeLessThan(16);
    expect(volts(finer)).toBeLessThan(volts(share) / 2);
    expect(volts(-finer)).toBeGreaterThan(volts(-share) / 2);
  });

  it('has wrong options: of the reading, of power, and the wrong way round', () => {
    expect(texts(scopeFullScale())).toEqual([
      ends(volts, 3),
      ends(volts, share),
      ends(power, share),
      ends(volts, (3 * 15.2) / 40),
    ]);
  });
});

describe('what narrows the band', () => {
  it('is the gain: by more than any of the other ways', () => {
    const expanded = (of: object): number => {
      const found = scopeFound({ ...clubScope(), ...of });
      if (!found.inRange) throw new Error('wish a number');
      return found.result.propagation.expanded;
    };
    const best = expanded({ gainPercent: 1 });
    expect(best).toBeLessThan(expanded({ scopeHz: 500e6, probeHz: 500e6 }));
    expect(scopeWhatHelps().worked).toContain(`±${best.toFixed(2)}${nb}dB`);
    expect(scopeWhatHelps().answer).toBe('a');
    expect(right(scopeWhatHelps())).toContain('gain');
  });
});

describe('a trace above three tenths of the bandwidth', () => {
  it('has no number, and says how far above', () => {
    const together = 1 / Math.sqrt(1 / 100 ** 2 + 1 / 150 ** 2);
    expect(right(scopeRange())).toBe('No number');
    expect(scopeRange().worked).toContain(`${(29 / together).toFixed(2)} of that`);
    expect(texts(scopeRange())[1]).toContain(
      `+${(10 * Math.log10(1 + (29 / together) ** 2)).toFixed(2)}${nb}dB`,
    );
  });
});
