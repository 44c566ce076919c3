import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const blocks = (name: string): string => textOfValue(`blocks.${name}`);
const um = (value: number): string => `${value.toFixed(2)}${nb}µm`;
const twice = (...squares: readonly number[]): number => 2 * Math.sqrt(squares.reduce((a, b) => a + b));
const film = 0.01 ** 2 / 3;
const certificate = 0.05 ** 2;

describe('the numbers of the lesson on gauge blocks, each by hand', () => {
  it('are deviations, films, and what they come to', () => {
    expect(blocks('blockSum')).toBe(`+${um(0.12 - 0.05 + 0.08)}`);
    expect(blocks('film')).toBe(um(0.01));
    expect(blocks('films')).toBe(um(0.02));
    expect(blocks('stackDeviation')).toBe(`+${um(0.17)}`);
    expect(blocks('singleDeviation')).toBe(`+${um(0.1)}`);
    expect(blocks('certificate')).toBe(`±${um(0.1)}`);
  });

  it('are what the comparator shows with two kelvin of warmth, and what was claimed', () => {
    expect(blocks('perKelvin')).toBe(um(1.15));
    expect(blocks('warmth')).toBe(um(2.3));
    expect(blocks('shown')).toBe(`+${um(0.17 + 2.3 - 0.1)}`);
    expect(blocks('expected')).toBe(`+0.07 ±${um(twice(4 * certificate, 2 * film))}`);
  });

  it('are warmth that goes: 1/e of it in ten minutes', () => {
    expect(blocks('afterTen')).toBe(um(2.3 / Math.E));
    expect(blocks('afterHalfHour')).toBe(um(2.3 / Math.E ** 3));
    expect(blocks('afterHour')).toBe(`${(2.3 / Math.E ** 6).toFixed(3)}${nb}µm`);
  });

  it('are a claim with thermometers, which is wider', () => {
    const u = twice(4 * certificate, 2 * film, (2 * 0.115 ** 2 + 0.2 ** 2) / 3);
    expect(blocks('counted')).toBe(`+2.37 ±${um(u)}`);
  });

  it('are a warm room, alike and not alike', () => {
    expect(blocks('bothGrown')).toBe(um(3.45));
    expect(blocks('bothShown')).toBe(`+${um(0.07)}`);
    expect(blocks('onePpm')).toBe(um(0.1 * 3));
    expect(blocks('aluminium')).toBe(`\u2212${um(6.93 - 3.45 - 0.07)}`);
  });

  it('are the grade three ways: the whole distribution within the strip, the strip within the worst case', () => {
    const grade = (2 * 0.4 ** 2 + 0.3 ** 2 + 0.6 ** 2) / 3;
    const roots = twice(grade, 2 * film);
    expect(blocks('gradeRoots')).toBe(`±${um(roots)}`);
    expect(blocks('gradeWorst')).toBe(`±${um(0.4 + 0.4 + 0.3 + 0.6 + 0.02)}`);
    const whole = Number(/^±([\d.]+)/.exec(blocks('gradeWhole'))?.[1]);
    expect(whole).toBeLessThan(roots);
    expect(whole).toBeGreaterThan(0.95 * roots);
  });

  it('are four certificates as squares, and one in full', () => {
    expect(blocks('ownThree')).toBe(`±${um(twice(4 * certificate, 2 * film))}`);
    expect(blocks('ownFour')).toBe(`±${um(twice(5 * certificate, 3 * film))}`);
    expect(blocks('sharedFour')).toBe(`±${um(twice(17 * certificate, 3 * film))}`);
    // 0.25 + 0.03 - 0.10 by the certificates, and four times 0.08.
    expect(blocks('offShown')).toBe(`+${um(0.18 + 0.32)}`);
  });

  it('are what the mistakes cost', () => {
    expect(blocks('hands')).toBe(`${blocks('expected')} claimed, +${um(0.07 + 4.6)} shown`);
    expect(blocks('nominal')).toBe(
      `+0.030 ±${twice(3 * film).toFixed(3)}${nb}µm claimed, +${um(0.18)} shown`,
    );
    expect(blocks('sharedAsOwn')).toBe(`+0.18 ${blocks('ownFour')} claimed, +${um(0.5)} shown`);
  });
});
