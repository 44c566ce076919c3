import { describe, expect, it } from 'vitest';
import { normalShareBelow } from '#compute';
import type { Question } from '../../src/questions/question.ts';
import {
  verdictAtLimit,
  verdictEdge,
  verdictOfEvening,
  verdictWhoPays,
} from '../../src/questions/verdict.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const U = 0.69;

describe('the guess', () => {
  it('has a strip with the limit inside it, and a chance that is the bell below the limit', () => {
    expect(28.2 + U).toBeGreaterThan(28.5);
    expect(28.2 - U).toBeLessThan(28.5);
    const chance = 100 * normalShareBelow((28.5 - 28.2) / (U / 2));
    expect(verdictOfEvening().worked).toContain(`${chance.toFixed(1)}${nb}%`);
    expect(verdictOfEvening().worked).toContain(`27.51 to 28.89${nb}dBm`);
    expect(verdictOfEvening().options[0]?.reply).toContain(`${(100 - chance).toFixed(1)}${nb}%`);
    expect(right(verdictOfEvening())).toBe('This measurement can’t tell.');
  });
});

describe('the acceptance limit', () => {
  it('is the limit less U; the wrong ones are no guard band, half of it, and the wrong side', () => {
    expect(right(verdictEdge())).toBe(`${(28.5 - U).toFixed(2)}${nb}dBm`);
    expect(texts(verdictEdge())).toEqual([
      `28.50${nb}dBm`,
      `27.81${nb}dBm`,
      `${(28.5 - 0.345).toFixed(2)}${nb}dBm`,
      `29.19${nb}dBm`,
    ]);
    expect(verdictEdge().options[2]?.reply).toContain(`${Math.round(100 * normalShareBelow(-1))}${nb}%`);
  });
});

describe('the risk on the limit', () => {
  it('is one half, and with a guard band of U the tail beyond two standard uncertainties', () => {
    expect(right(verdictAtLimit())).toBe(`50.0${nb}%`);
    expect(texts(verdictAtLimit())[1]).toBe(`${(100 * normalShareBelow(-2)).toFixed(1)}${nb}%`);
  });
});

describe('who pays', () => {
  it('is the maker instead of the buyer: one number falls, the other rises', () => {
    const numbers = [...verdictWhoPays().worked.matchAll(/from (\d+\.\d) to (\d+\.\d)/g)];
    const [consumer = [], producer = []] = numbers.map(([, from, to]) => [Number(from), Number(to)]);
    expect(consumer[1]).toBeLessThan(consumer[0] ?? 0);
    expect(producer[1]).toBeGreaterThan(producer[0] ?? 0);
    expect(right(verdictWhoPays())).toMatch(/^Fewer bad ones/);
    expect(verdictWhoPays().options[3]?.reply).toContain(String(consumer[1]));
  });
});
