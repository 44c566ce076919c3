import { describe, expect, test } from 'vitest';
import { standardUncertaintyOf } from '../../src/compute/combine/input.ts';
import { componentOf } from '../../src/compute/component.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { reshaped, robustnessOf } from '../../src/compute/robustness.ts';
import type { Rule } from '../../src/compute/specification.ts';
import { judge } from '../../src/compute/verdict.ts';
import { limited, quantity } from './combine/published-models.ts';

const sum = (constant: number, inputs: Input[]): SumModel => ({
  kind: 'sum',
  constant,
  inputs,
  sensitivities: inputs.map(() => 1),
});
const guard: Rule = { kind: 'guardBand', multiplier: 1 };
const chain = (constant: number) =>
  sum(constant, [
    limited('meter', 0.3),
    limited('pad', 0.5),
    limited('mismatch', 0.2, { shape: 'arcsine' }),
    quantity('lender', 0, 0.1),
  ]);

describe('another shape for the same limits', () => {
  test('only shapes taken for want of knowledge are exchanged', () => {
    const { inputs } = reshaped(chain(27), 'triangular');
    expect(inputs.map(({ distribution }) => distribution.shape)).toEqual([
      'triangular',
      'triangular',
      'arcsine',
      'normal',
    ]);
    expect(inputs.map(({ distribution }) => distribution.limits)).toEqual(
      chain(27).inputs.map(({ distribution }) => distribution.limits),
    );
  });

  test('each shape brings its own divisor', () => {
    const uOf = (shape: 'rectangular' | 'triangular' | 'arcsine') => {
      const [input] = reshaped(sum(0, [{ ...limited('a', 0.6), standardUncertainty: 9 }]), shape).inputs;
      return input ? standardUncertaintyOf(input) : Number.NaN;
    };
    expect(uOf('rectangular')).toBeCloseTo(0.6 / Math.sqrt(3), 12);
    expect(uOf('triangular')).toBeCloseTo(0.6 / Math.sqrt(6), 12);
    expect(uOf('arcsine')).toBeCloseTo(0.6 / Math.SQRT2, 12);
  });

  test('lopsided limits keep their ends', () => {
    const percent = componentOf({
      id: 'a',
      statement: { form: 'limits', shape: 'rectangular', halfWidth: 20 },
      unit: 'percentOfPower',
    });
    for (const shape of ['rectangular', 'triangular', 'arcsine'] as const) {
      const [input] = reshaped(sum(0, [percent]), shape).inputs;
      expect(input?.distribution.limits.lower).toBeCloseTo(percent.distribution.limits.lower, 12);
      expect(input?.distribution.limits.upper).toBeCloseTo(percent.distribution.limits.upper, 12);
      expect(input?.distribution.shape).toBe(shape);
    }
  });
});

describe('the table', () => {
  const table = (y: number, coverageFactor?: number) =>
    robustnessOf({
      model: chain(y),
      specification: { lower: 25.5, upper: 28.5 },
      rule: guard,
      coverageFactor,
    });

  test('its first row is the verdict itself, then three shapes and two factors', () => {
    const { rows } = table(27);
    const own = judge({
      result: evaluate({ model: chain(27) }),
      specification: { lower: 25.5, upper: 28.5 },
      rule: guard,
    });
    expect(rows[0]).toEqual({
      taken: { as: 'stated' },
      interval: own.interval,
      verdict: own.verdict,
      probabilityOfConformity: own.probabilityOfConformity,
    });
    expect(rows.map(({ taken }) => taken)).toEqual([
      { as: 'stated' },
      { as: 'shape', shape: 'rectangular' },
      { as: 'shape', shape: 'triangular' },
      { as: 'shape', shape: 'arcsine' },
      { as: 'coverageFactor', coverageFactor: 2 },
      { as: 'coverageFactor', coverageFactor: 3 },
    ]);
  });

  test('U shapes widen, triangles narrow, a larger factor widens', () => {
    const widths = table(27).rows.map(({ interval }) => interval.upper - interval.lower);
    const [stated = 0, rectangles = 0, triangles = 0, us = 0, two = 0, three = 0] = widths;
    expect(rectangles).toBeCloseTo(stated, 9);
    expect(triangles).toBeLessThan(stated);
    expect(us).toBeGreaterThan(stated);
    expect(two).toBeGreaterThan(stated);
    expect(three).toBeGreaterThan(two);
  });

  test('far inside every row agrees, near a guard band they do not', () => {
    expect(table(27).steady).toBe(true);
    const { rows } = table(27);
    expect(rows.every(({ verdict }) => verdict === 'inside')).toBe(true);
    const near = 25.5 + (27 - (table(27).rows[0]?.interval.lower ?? 0)) + 0.01;
    expect(table(near).rows[0]?.verdict).toBe('inside');
    expect(table(near).rows[3]?.verdict).toBe('cant-tell');
    expect(table(near).steady).toBe(false);
  });

  test('a stated factor holds for the rows of shapes', () => {
    const { rows } = table(27, 2);
    expect(rows[0]?.interval).toEqual(rows[4]?.interval);
    expect(rows[1]?.interval.upper).toBeCloseTo(rows[4]?.interval.upper ?? Number.NaN, 9);
  });

  test('the interval that was chosen decides in every row', () => {
    const { rows } = robustnessOf({
      model: chain(27),
      specification: { upper: 28.5 },
      rule: guard,
      decidingInterval: 'propagation',
      coverageProbability: 0.99,
    });
    expect(rows[0]?.interval).toEqual(
      evaluate({ model: chain(27), coverageProbability: 0.99 }).propagation.interval,
    );
  });
});
