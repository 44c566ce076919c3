import { describe, expect, it } from 'vitest';
import type { Question } from '../../src/questions/question.ts';
import { backHidden, backHowMuch, backNet, backReturnLoss } from '../../src/questions/what-comes-back.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string => options.find(({ id }) => id === answer)?.text ?? '';
const lg = (ratio: number): number => 10 * Math.log10(ratio);
const percent = (share: number): string => `${(100 * share).toFixed(1)}${nb}%`;
const swrOf = (rho: number): number => (1 + rho) / (1 - rho);

describe('how much an antenna with a standing wave of three misses behind a tuner', () => {
  it('is hardly more than the line’s own loss; the wrong options each follow their mistake', () => {
    const b = 10 ** 0.01;
    const reaches = (b * 0.75) / (b ** 2 - 0.25);
    expect(right(backHowMuch())).toBe(percent(1 - reaches));
    expect(texts(backHowMuch())).toEqual([percent(0.5), percent(0.25), percent(1 - reaches), percent(2 / 3)]);
  });
});

describe('a return loss of 14 dB', () => {
  const rho = 10 ** (-14 / 20);
  const both = (reflection: number, share: number): string =>
    `SWR ${swrOf(reflection).toFixed(1)}, ${percent(share)} of the power`;

  it('is an SWR of one and a half and four hundredths of the power', () => {
    expect(right(backReturnLoss())).toBe(both(rho, rho ** 2));
    expect(right(backReturnLoss())).toContain('SWR 1.5, 4.0');
  });

  it('has wrong options: a root left out, the volts, and a decibel halved', () => {
    expect(texts(backReturnLoss())).toEqual([
      both(rho ** 2, rho ** 2),
      both(rho, rho ** 2),
      both(rho, rho),
      both(Math.sqrt(rho), rho),
    ]);
  });
});

describe('a standing wave measured before a lossy line', () => {
  it('is reckoned back by twice the loss, not by once and not the other way', () => {
    const there = 0.6;
    const here = there * 10 ** -0.3;
    expect(right(backHidden())).toBe('4.00');
    expect(texts(backHidden())).toEqual([
      swrOf(here).toFixed(2),
      swrOf(there * 10 ** -0.15).toFixed(2),
      swrOf(there * 10 ** -0.6).toFixed(2),
      '4.00',
    ]);
    expect(backHidden().stem).toContain(`${(-2 * lg(here)).toFixed(1)}${nb}dB`);
  });
});

describe('forward and reflected power', () => {
  it('make net power as their difference; the wrong options each follow their mistake', () => {
    const forward = 1000 * 10 ** -0.3;
    const text = (share: number): string => {
      const db = lg(share);
      const sign = db === 0 ? '' : db < 0 ? '\u2212' : '+';
      return `${(forward * share).toFixed(0)}${nb}mW, ${sign}${Math.abs(db).toFixed(2)}${nb}dB`;
    };
    expect(right(backNet())).toBe(text(0.96));
    expect(backNet().stem).toMatch(/compare with the forward power\?$/);
    expect(texts(backNet())).toEqual([text(0.96), text(1.04), text(0.8), text(1)]);
  });
});
