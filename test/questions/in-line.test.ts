import { describe, expect, it } from 'vitest';
import { inLineNet, inLineRange, inLineScale, inLineSwr } from '../../src/questions/in-line.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);

describe('the guess on the scale', () => {
  it('is one watt to either side, the wrong ones of the reading, of the dial, and half of it', () => {
    expect(right(inLineScale())).toBe(`2.0 to 4.0${nb}W`);
    expect(texts(inLineScale()).slice(0, 3)).toEqual([
      `2.85 to 3.15${nb}W`,
      `2.950 to 3.050${nb}W`,
      `2.50 to 3.50${nb}W`,
    ]);
    expect(inLineScale().worked).toContain(`+1.25/\u22121.76${nb}dB`);
  });
});

describe('forward less reflected', () => {
  it('is 4.8 W, the wrong ones a sum, the volts, and the SWR taken for a share', () => {
    expect(right(inLineNet())).toBe(`4.8${nb}W`);
    expect(texts(inLineNet())).toEqual([`5.2${nb}W`, `4.8${nb}W`, `4.0${nb}W`, `3.3${nb}W`]);
  });
});

describe('how far an SWR can be believed', () => {
  it('follows the leak of the coupler, by hand', () => {
    const leak = 10 ** (-25 / 20);
    const swr = (r: number): string => ((1 + r) / (1 - r)).toFixed(2);
    expect(right(inLineSwr())).toBe(`${swr(0.2 - leak)} to ${swr(0.2 + leak)}`);
    expect(inLineSwr().worked).toContain(`${(100 * leak).toFixed(1)}${nb}%`);
    expect(texts(inLineSwr())[0]).toMatch(/^1\.50:/);
    const asPower = (sign: 1 | -1): string => swr(Math.sqrt(0.04 + sign * leak ** 2));
    expect(texts(inLineSwr())[1]).toBe(`${asPower(-1)} to ${asPower(1)}`);
    expect(texts(inLineSwr())[1]).toBe('1.48 to 1.52');
  });
});

describe('which scale gives a number', () => {
  it('is the smallest alone', () => {
    expect(right(inLineRange())).toBe('Only the one of 1 W.');
    expect(inLineRange().worked).toContain(`twice 50${nb}mW; on 5 W twice 250${nb}mW`);
    expect(inLineRange().worked).toContain(`or 2${nb}%`);
  });
});
