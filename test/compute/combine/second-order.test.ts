import { describe, expect, test } from 'vitest';
import { propagate } from '../../../src/compute/combine/propagate.ts';
import { secondOrder } from '../../../src/compute/combine/second-order.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import type { FunctionModel, Input } from '../../../src/compute/model.ts';
import { endGauge, quantity } from './published-models.ts';

/** JCGM 101, 9.4: loss in a comparison of power meters, the sum of two squares. */
const comparisonLoss = (x1: number, r: number): FunctionModel => ({
  kind: 'function',
  inputs: [quantity('real part', x1, 0.005), quantity('imaginary part', 0, 0.005)],
  f: ([a = 0, b = 0]) => a * a + b * b,
  correlations: [{ a: 'real part', b: 'imaginary part', r }],
});

describe('second-order terms of published examples', () => {
  test('an end gauge gains 11.7 nm and 1.7 nm, and 34 nm in all (GUM H.1.7)', () => {
    const model = endGauge();
    const { variance, pairs } = secondOrder({ model });
    const between = (a: string, b: string) =>
      pairs.filter((p) => [p.a, p.b].sort().join() === [a, b].sort().join()).map((p) => p.uncertainty);
    // The print has one temperature of u = 0.41 K where the model has a mean and a cycle.
    const withTemperature = Math.hypot(
      ...between('expansion difference', 'mean temperature'),
      ...between('expansion difference', 'cycle of temperature'),
    );
    expect(withTemperature).toBeCloseTo(11.7, 0);
    expect(between('temperature difference', 'expansion')[0]).toBeCloseTo(1.7, 1);
    const uc = propagate({ model }).standardUncertainty;
    expect(Math.sqrt(uc ** 2 + variance)).toBeCloseTo(33.8, 1);
    expect(pairs[0]?.uncertainty).toBeGreaterThanOrEqual(pairs[1]?.uncertainty ?? 0);
  });

  test('a comparison loss has the closed form 2u sqrt(x1^2 + (1 + r^2) u^2) (JCGM 101, 9.4)', () => {
    for (const x1 of [0, 0.01, 0.05])
      for (const r of [0, 0.9, -0.9, 1]) {
        const model = comparisonLoss(x1, r);
        const { variance, estimateShift } = secondOrder({ model });
        const first = propagate({ model }).standardUncertainty;
        const closed = 0.01 * Math.sqrt(x1 ** 2 + (1 + r ** 2) * 0.005 ** 2);
        expect(Math.sqrt(first ** 2 + variance)).toBeCloseTo(closed, 10);
        // Published means: 50, 150, 2550 (x 1e-6), where f at the means gives 0, 100, 2500.
        expect(estimateShift).toBeCloseTo(50e-6, 12);
      }
  });

  test('a mass comparison misses 29 % of its spread without them (JCGM 101, 9.3)', () => {
    const box = (id: string, lower: number, upper: number): Input => ({
      id,
      distribution: rectangular({ lower, upper }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    });
    const model: FunctionModel = {
      kind: 'function',
      inputs: [
        quantity('reference', 100_000, 0.05),
        quantity('added', 1.234, 0.02),
        box('air', 1.1, 1.3),
        box('weight', 7000, 9000),
        box('standard', 7950, 8050),
      ],
      f: ([m = 0, dm = 0, air = 0, weight = 0, standard = 0]) =>
        (m + dm) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100_000,
    };
    const first = propagate({ model });
    expect(first.standardUncertainty).toBeCloseTo(0.0538516, 5);
    expect(first.expanded).toBeCloseTo(0.1055, 3);
    const { variance } = secondOrder({ model });
    expect(Math.sqrt(first.standardUncertainty ** 2 + variance)).toBeCloseTo(0.075, 4);
  });
});

describe('second-order terms', () => {
  test('a straight model has none', () => {
    const model: FunctionModel = {
      kind: 'function',
      inputs: [quantity('a', 3, 0.5), quantity('b', 2, 0.1)],
      f: ([a = 0, b = 0]) => 2 * a - 5 * b + 1,
    };
    const { variance, estimateShift, pairs } = secondOrder({ model });
    expect(variance).toBeCloseTo(0, 12);
    expect(estimateShift).toBeCloseTo(0, 12);
    expect(pairs.every(({ uncertainty }) => uncertainty < 1e-12)).toBe(true);
  });

  test('a cube about zero gains from its third derivative only what a normal has', () => {
    // x^3 at x = 2, u = 0.1: variance 9x^4 u^2 + 36 x^2 u^4 + 15 u^6; to second order the first two.
    const model: FunctionModel = {
      kind: 'function',
      inputs: [quantity('x', 2, 0.1)],
      f: ([x = 0]) => x ** 3,
    };
    const { variance, estimateShift } = secondOrder({ model });
    expect(variance).toBeCloseTo(36 * 4 * 1e-4, 9);
    expect(estimateShift).toBeCloseTo(3 * 2 * 0.01, 9);
  });

  test('an exponential has those of its derivatives, which are all alike', () => {
    const u = 0.3;
    const model: FunctionModel = {
      kind: 'function',
      inputs: [quantity('x', 0, u)],
      f: ([x = 0]) => Math.exp(x),
    };
    const { variance, estimateShift } = secondOrder({ model });
    expect(estimateShift / (u ** 2 / 2)).toBeCloseTo(1, 4);
    expect(variance / (1.5 * u ** 4)).toBeCloseTo(1, 4);
  });

  test('a product of two has one pair, whatever is added to it', () => {
    const model: FunctionModel = {
      kind: 'function',
      inputs: [quantity('a', 0, 0.2), quantity('b', 0, 0.3), quantity('c', 0, 0.1)],
      f: ([a = 0, b = 0, c = 0]) => a * b + c,
    };
    const { variance, pairs } = secondOrder({ model });
    expect(Math.sqrt(variance)).toBeCloseTo(0.06, 12);
    expect(pairs).toHaveLength(1);
    expect(pairs[0]).toMatchObject({ a: 'a', b: 'b', uncertainty: expect.closeTo(0.06, 12) });
  });

  test('mixed third derivatives count: a b^2', () => {
    // a = 1, b = 0: first derivatives 0 and 0 but for a; d3f/da db^2 = 2.
    const model: FunctionModel = {
      kind: 'function',
      inputs: [quantity('a', 1, 0.2), quantity('b', 0.5, 0.1)],
      f: ([a = 0, b = 0]) => a * b * b,
    };
    // Exact variance of a b^2 for independent normals, to second order in variances (products of two of them).
    const [ua2, ub2] = [0.04, 0.01];
    const half = 0.5 * ((2 * 1) ** 2 * ub2 ** 2 + 2 * (2 * 0.5) ** 2 * ua2 * ub2);
    const firstTimesThird = 0.25 * 2 * ua2 * ub2;
    expect(secondOrder({ model }).variance).toBeCloseTo(half + firstTimesThird, 10);
  });

  test('a correlated model names no pairs, and a broken one is refused', () => {
    expect(secondOrder({ model: comparisonLoss(0.01, 0.5) }).pairs).toEqual([]);
    expect(secondOrder({ model: comparisonLoss(0.01, 0) }).pairs.every((p) => p.uncertainty < 1e-12)).toBe(
      true,
    );
    const free = {
      ...comparisonLoss(0.01, 0.5),
      inputs: [...comparisonLoss(0.01, 0).inputs, quantity('c', 1, 1)],
    };
    expect(secondOrder({ model: free }).pairs).toEqual([]);
    const twins = { ...comparisonLoss(0, 0), inputs: [quantity('a', 0, 1), quantity('a', 0, 1)] };
    expect(() => secondOrder({ model: twins })).toThrow('secondOrder: ids of inputs must differ, got "a"');
  });
});
