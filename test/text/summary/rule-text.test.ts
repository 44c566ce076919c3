import { describe, expect, test } from 'vitest';
import { ruleText, specificationText } from '../../../src/text/summary/verdict-line.ts';

describe('a specification', () => {
  test.each([
    [{ lower: 25.5, upper: 28.5 }, '25.5 to 28.5 dBm'],
    [{ lower: 25, upper: 28.25 }, '25.00 to 28.25 dBm'],
    [{ upper: 27 }, 'at most 27 dBm'],
    [{ lower: Number.NEGATIVE_INFINITY, upper: 26.125 }, 'at most 26.125 dBm'],
    [{ lower: -0.12345 }, 'at least -0.1234 dBm'],
    [{ lower: 3, upper: Number.POSITIVE_INFINITY }, 'at least 3 dBm'],
    [{}, 'no limit'],
  ])('%o is %s', (specification, words) => {
    expect(specificationText('ascii', specification, 'dBm')).toBe(words);
  });

  test('that was stated in watts has as many decimals as are asked for, four else', () => {
    // 200 mW, plus and minus 1 dB
    const around = { lower: 22.010_29, upper: 24.010_29 };
    expect(specificationText('ascii', around, 'dBm', 2)).toBe('22.01 to 24.01 dBm');
    expect(specificationText('ascii', around, 'dBm')).toBe('22.0103 to 24.0103 dBm');
  });
});

describe('a rule', () => {
  test('is named with its number', () => {
    expect(ruleText('ascii', { kind: 'guardBand', multiplier: 1 })).toBe('guard band of 1 times U');
    expect(ruleText('ascii', { kind: 'guardBand', multiplier: 0.83 })).toBe('guard band of 0.83 times U');
    expect(ruleText('spoken', { kind: 'probability', required: 0.95 })).toBe(
      'required probability 95 percent',
    );
    expect(ruleText('ascii', { kind: 'simple' })).toMatch(/^simple acceptance, /);
  });
});
