import { describe, expect, it } from 'vitest';
import { padsMatch, padsOrder, padsOverload, padsWorth } from '../../src/questions/pads.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess on the match', () => {
  it('has the limits of a real pad as its answer, and those of a perfect one as the first mistake', () => {
    expect(right(padsMatch())).toBe(`+0.34/\u22120.36${nb}dB`);
    expect(texts(padsMatch())[0]).toBe(`±0.08${nb}dB`);
    expect(padsMatch().stem).toContain(`+0.32/\u22120.33${nb}dB`);
    expect(padsMatch().worked).toContain(`from 0.23${nb}dB to 0.16${nb}dB`);
  });

  it('halves the decibels for those who think of half the volts', () => {
    expect(texts(padsMatch())[1]).toBe(`±0.16${nb}dB`);
  });
});

describe('what is worth an evening', () => {
  it('is the pad: by hand, the band without most of its limits', () => {
    const rest = 0.01 ** 2 + 0.03 ** 2 + (0.25 ** 2 + 2 * 0.05 ** 2) / 3 + 0.0943 ** 2;
    const band = (pad: number): string => `±${(2 * Math.sqrt(rest + pad ** 2 / 3)).toFixed(2)}${nb}dB`;
    expect(padsWorth().stem).toContain(band(0.5));
    expect(padsWorth().worked).toContain(`leaves ${band(0.1)}`);
    expect(right(padsWorth())).toContain(`±0.1${nb}dB`);
  });
});

describe('one more pad', () => {
  it('moves the reading by 1.3 dB too little, and nothing is written down', () => {
    expect(padsOverload().stem).toContain(`\u22121.7${nb}dBm`);
    expect(padsOverload().worked).toContain(`1.3${nb}dB too little`);
    expect(right(padsOverload())).toMatch(/^Nothing yet/);
  });
});

describe('the order of two pads', () => {
  it('is decided by the heat: 708 mW less a hundredth, or less a tenth', () => {
    const power = 10 ** 2.85;
    const heat = (gain: number): string => `${Number((power * (1 - gain)).toPrecision(3))}${nb}mW`;
    expect(padsOrder().worked).toContain(`up to ${heat(10 ** -2.05)} in the one, ${heat(0.1)} in the other`);
    const behind = (power * 10 ** -1.95).toFixed(2);
    expect(padsOrder().worked).toContain(`${behind}${nb}mW left at most`);
    expect(power * 0.9).toBeGreaterThan(2 * 250);
    expect(right(padsOrder())).toBe(`The 20${nb}dB pad.`);
  });
});
