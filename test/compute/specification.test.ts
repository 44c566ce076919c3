import { describe, expect, test } from 'vitest';
import { checkedRule, type Rule, toleranceOf } from '../../src/compute/specification.ts';

describe('the two ends of a specification', () => {
  test('are infinite where there is no limit', () => {
    expect(toleranceOf('here', { lower: 1, upper: 2 })).toEqual({ lower: 1, upper: 2 });
    expect(toleranceOf('here', { upper: 2 })).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 2 });
    expect(toleranceOf('here', { lower: 1 })).toEqual({ lower: 1, upper: Number.POSITIVE_INFINITY });
    expect(toleranceOf('here', { lower: 0 })).toEqual({ lower: 0, upper: Number.POSITIVE_INFINITY });
  });

  test('are refused if none is stated, one is no number, or they do not leave room', () => {
    expect(() => toleranceOf('here', {})).toThrow('here: specification must have a limit, got {}');
    expect(() => toleranceOf('here', { lower: Number.NEGATIVE_INFINITY })).toThrow(
      'here: specification.lower must be a finite number, got -Infinity',
    );
    expect(() => toleranceOf('here', { lower: 0, upper: Number.NaN })).toThrow(
      'here: specification.upper must be a finite number, got NaN',
    );
    expect(() => toleranceOf('here', { lower: 2, upper: 2 })).toThrow(
      'here: specification.lower must be < upper, got [2,2]',
    );
  });
});

describe('a rule', () => {
  test('passes unchanged within its range', () => {
    const rules: Rule[] = [
      { kind: 'simple' },
      { kind: 'guardBand', multiplier: 0.01 },
      { kind: 'probability', required: 0.51 },
      { kind: 'probability', required: 0.999 },
    ];
    for (const rule of rules) expect(checkedRule('here', rule)).toBe(rule);
  });

  test('is refused outside of it', () => {
    for (const multiplier of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => checkedRule('here', { kind: 'guardBand', multiplier })).toThrow(
        `here: multiplier must be > 0, got ${multiplier}`,
      );
    for (const required of [0.5, 1, 0, Number.NaN])
      expect(() => checkedRule('here', { kind: 'probability', required })).toThrow(
        `here: required must be above 0.5 and below 1, got ${required}`,
      );
  });
});
