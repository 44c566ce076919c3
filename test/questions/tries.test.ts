import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { lossNearNothing, meanOfWatts, moreTrials, slopeOfNothing } from '../../src/questions/tries.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const nominal = (1000 * 4.9 ** 2) / 50;

describe('the mean of watts', () => {
  it('is the square of the mean and a third of the square of the limits, by hand', () => {
    expect(right(meanOfWatts())).toBe(`${Math.round(nominal * (1 + 0.04 / 3))}${nb}mW`);
  });

  it('has wrong options: the watts of the mean, the middle of both ends, a fifth more', () => {
    const ends = (nominal * (1.44 + 0.64)) / 2;
    expect(meanOfWatts().options.map(({ text }) => text)).toEqual([
      `${Math.round(nominal)}${nb}mW`,
      right(meanOfWatts()),
      `${Math.round(ends)}${nb}mW`,
      `${Math.round(1.2 * nominal)}${nb}mW`,
    ]);
  });
});

describe('a loss near nothing', () => {
  it('is about 50 and hardly more than 150 millionths, as print has it (JCGM 101, Table 8)', () => {
    const [, mean, end] =
      /about (\d+)\u00a0ppm, and hardly more than (\d+)/.exec(right(lossNearNothing()) ?? '') ?? [];
    expect(Math.abs(Number(mean) - 50)).toBeLessThanOrEqual(1);
    expect(Math.abs(Number(end) - 150)).toBeLessThanOrEqual(2);
  });

  it('is not what second order says', () => {
    expect(lossNearNothing().options[1]?.text).toBe(`It is nothing, ±98${nb}ppm.`);
  });
});

describe('more trials', () => {
  it('leave the uncertainty where it is, by hand: twice the volts, once the ohms', () => {
    const u = nominal * Math.sqrt((0.06 ** 2 + 0.05 ** 2) / 3);
    expect(right(moreTrials())).toContain(`${Math.round(u)}${nb}mW`);
    expect(moreTrials().options[0]?.text).toContain(`${(u / 10).toFixed(1)}${nb}mW`);
  });
});

describe('a slope of nothing', () => {
  it('leaves a bend: the printed uncertainties of both orders (JCGM 101, Table 6)', () => {
    expect(
      slopeOfNothing()
        .options.map(({ text }) => text)
        .slice(0, 2),
    ).toEqual([`0.0539${nb}mg`, `0.0750${nb}mg`]);
    expect(right(slopeOfNothing())).toBe(`0.0750${nb}mg`);
    const [first, , sum, more] = slopeOfNothing().options.map(({ text }) => Number.parseFloat(text));
    expect((first ?? 0) + (more ?? 0)).toBeCloseTo(sum ?? 0, 3);
  });
});
