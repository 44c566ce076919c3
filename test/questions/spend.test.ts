import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { spendEnough, spendHalved, spendOnWhat, spendReadings } from '../../src/questions/spend.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
/** U by hand: standards, meter, mismatch, pad, coax, and n readings. */
const U = ({ meter = 0.25, pad = 0.5, coax = 0.05, n = 4 } = {}): number =>
  2 *
  Math.sqrt(
    0.001 + meter ** 2 / 3 + 0.16 ** 2 / 2 + pad ** 2 / 3 + coax ** 2 / 3 + (n === 0 ? 0 : 0.15 ** 2 / n),
  );
const band = (value: number): string => `±${value.toFixed(2)}${nb}dB`;

describe('the guess', () => {
  it('has what each offer leaves in its reply; the pad alone gets below what is needed', () => {
    const left = [U({ meter: 0.125 }), U({ pad: 0.1 }), U({ n: 20 }), U({ coax: 0 })];
    for (const [index, { reply }] of spendOnWhat().options.entries())
      expect(reply).toContain(band(left[index] ?? 0));
    expect(left.map((value) => value < 28.5 - 27.9)).toEqual([false, true, false, false]);
    expect(right(spendOnWhat())).toContain('pad');
    expect(spendOnWhat().stem).toContain(`scatters by 0.15${nb}dB, as is known from many evenings`);
  });
});

describe('half a meter', () => {
  it('is hardly missed; the wrong ones halve all, or take limits off in a line', () => {
    expect(right(spendHalved())).toBe(band(U({ meter: 0.125 })));
    expect(texts(spendHalved())).toEqual([
      band(U() / 2),
      band(U() - 0.125),
      band(U({ meter: 0.125 })),
      band(U()),
    ]);
  });
});

describe('four times as many readings', () => {
  it('shrink the scatter alone', () => {
    expect(right(spendReadings())).toBe(band(U({ n: 16 })));
    expect(texts(spendReadings()).slice(0, 3)).toEqual([band(U() / 2), band(U() / 4), band(U({ n: 0 }) / 2)]);
  });
});

describe('the pad that is good enough', () => {
  it('leaves U at what is needed; in proportion or in a line it would not be the same', () => {
    const pad = Math.sqrt(3 * (0.3 ** 2 - (U({ pad: 0 }) / 2) ** 2));
    expect(U({ pad })).toBeCloseTo(0.6, 9);
    expect(right(spendEnough())).toBe(band(pad));
    expect(texts(spendEnough()).slice(0, 3)).toEqual([
      band((0.5 * 0.6) / U()),
      band(pad),
      band(0.5 - 2 * (U() - 0.6)),
    ]);
  });
});

describe('every question', () => {
  it('has four different options', () => {
    for (const question of [spendOnWhat(), spendHalved(), spendReadings(), spendEnough()])
      expect(new Set(texts(question)).size).toBe(4);
  });
});
