import { describe, expect, it } from 'vitest';
import { normalQuantile, normalShareBelow } from '#compute';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const value = (name: string): string => textOfValue(`verdict.${name}`);
const [reading, limit, U, u] = [28.2, 28.5, 0.69, 0.345];
const percent = (share: number, decimals = 0): string => `${(100 * share).toFixed(decimals)}${nb}%`;

describe('the numbers of the lesson on verdicts, each by hand', () => {
  it('are reading, strip and limits', () => {
    expect(value('level')).toBe(`28.20${nb}dBm`);
    expect(value('band')).toBe(`±0.69${nb}dB`);
    expect(value('span')).toBe(`${(reading - U).toFixed(2)} to ${(reading + U).toFixed(2)}${nb}dBm`);
    expect([value('lowerLimit'), value('limit')]).toEqual([`25.50${nb}dBm`, `28.50${nb}dBm`]);
  });

  it('are the chance that the limit is kept, and how far away it is', () => {
    const z = (limit - reading) / u;
    expect(value('distance')).toBe(z.toFixed(2));
    expect(value('chance')).toBe(percent(normalShareBelow(z), 1));
  });

  it('are what each rule accepts, and the risk there', () => {
    expect(value('edgeSimple')).toBe(value('limit'));
    expect(value('edgeGuard')).toBe(`${(limit - U).toFixed(2)}${nb}dBm`);
    expect(value('edgeProbability')).toBe(`${(limit - normalQuantile(0.95) * u).toFixed(2)}${nb}dBm`);
    expect(value('riskSimple')).toBe(percent(0.5, 1));
    expect(value('riskGuard')).toBe(percent(normalShareBelow(-2), 1));
    expect(value('riskProbability')).toBe(percent(0.05, 1));
  });

  it('are verdicts that hang on the rule', () => {
    expect(value('verdictSimple')).toBe('inside');
    expect(value('verdictGuard')).toBe('can’t tell');
  });

  it('are a thousand transmitters, sorted: a guard band lowers one risk and raises the other', () => {
    expect(value('good')).toBe((1000 * (2 * normalShareBelow(1.5 / 0.8) - 1)).toFixed(0));
    const at = (name: string): number => Number(value(name));
    expect(at('passedGuard')).toBeLessThan(at('passedProbability'));
    expect(at('passedProbability')).toBeLessThan(at('passedSimple'));
    expect(at('wrongedSimple')).toBeLessThan(at('wrongedProbability'));
    expect(at('wrongedProbability')).toBeLessThan(at('wrongedGuard'));
  });

  it('are half of the tolerance: the U that just leaves room', () => {
    expect(value('needed')).toBe(`${((28.5 - 25.5) / 2).toFixed(2)}${nb}dB`);
    expect(value('blamed')).toContain(value('needed'));
  });

  it('are what the mistakes cost', () => {
    expect(value('justInside')).toBe(
      `inside, with a chance of ${percent(normalShareBelow(-(limit - 28.45) / u))} that it is not`,
    );
    expect(value('pickedAfter')).toContain(`28.20${nb}dBm is inside by one rule and can’t tell by another`);
  });
});
