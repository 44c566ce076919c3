import { describe, expect, it } from 'vitest';
import { howLong, oneInstrument, roomWarm, whatHappened } from '../../src/questions/gauge-blocks.ts';
import type { Question } from '../../src/questions/question.ts';

const nb = '\u00a0';
const texts = ({ options }: Question): readonly string[] => options.map(({ text }) => text);
const right = ({ options, answer }: Question): string | undefined =>
  options.find(({ id }) => id === answer)?.text;

describe('what happened to the stack', () => {
  it('is told with what is shown and what was to be expected, by hand', () => {
    // 0.12 - 0.05 + 0.08 + 0.02 - 0.10, and 100 mm x 11.5e-6/K x 2 K.
    expect(whatHappened().stem).toContain(`longer by 0.07${nb}µm`);
    expect(whatHappened().stem).toContain(`+2.37${nb}µm`);
    expect(whatHappened().worked).toContain(`grow by 1.15${nb}µm in each kelvin`);
    expect(whatHappened().worked).toContain(`2${nb}K: 2.30${nb}µm`);
  });

  it('could not be the certificates or the films: four and two of them are smaller by far', () => {
    expect(4 * 0.1).toBeLessThan(2.3 / 5);
    expect(100 * 2 * 0.01).toBeLessThan(2.3);
    expect(right(whatHappened())).toContain('warm from the hands');
  });
});

describe('aluminium against steel, both three kelvin warm', () => {
  it('is the published difference of 3.480 µm, with its sign', () => {
    expect(right(roomWarm())).toBe(`\u22123.48${nb}µm`);
    expect(roomWarm().worked).toContain(`3.45${nb}µm`);
    expect(roomWarm().worked).toContain(`6.93${nb}µm`);
  });

  it('has wrong options: one growth alone, and both added', () => {
    expect(texts(roomWarm()).slice(2)).toEqual([`\u22126.93${nb}µm`, `\u221210.38${nb}µm`]);
  });
});

describe('one instrument behind four blocks', () => {
  it('adds in full; the wrong options divide by roots or forget', () => {
    expect(right(oneInstrument())).toBe(`±0.40${nb}µm`);
    expect(texts(oneInstrument())).toEqual([
      `±0.10${nb}µm`,
      `±0.20${nb}µm`,
      `±${(0.1 * Math.SQRT2).toFixed(2)}${nb}µm`,
      `±0.40${nb}µm`,
    ]);
  });
});

describe('how long warm blocks lie', () => {
  it('is the time by the law of cooling, rounded up, by hand', () => {
    const needed = 10 * Math.log(3.45 / 0.1);
    expect(needed).toBeGreaterThan(35);
    expect(needed).toBeLessThan(36);
    expect(right(howLong())).toBe('36 minutes');
    expect(howLong().worked).toContain(`${(3.45 * Math.exp(-3.6)).toFixed(3)}${nb}µm are left`);
  });

  it('tells what is left after one and two time constants', () => {
    const [one, , two] = howLong().options.map(({ reply }) => reply);
    expect(one).toContain(`${(3.45 / Math.E).toFixed(2)}${nb}µm`);
    expect(two).toContain(`${(3.45 / Math.E ** 2).toFixed(2)}${nb}µm`);
    expect(texts(howLong())).toEqual(['10 minutes', '36 minutes', '20 minutes', '345 minutes']);
  });
});

it('every question has one right answer among four different ones', () => {
  for (const question of [whatHappened(), roomWarm(), oneInstrument(), howLong()]) {
    expect(new Set(texts(question)).size).toBe(4);
    expect(question.options.filter(({ id }) => id === question.answer)).toHaveLength(1);
  }
});
