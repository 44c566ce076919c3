import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weightedMean } from '../../src/compute/compare.ts';
import { compareMethods } from '../../src/compute/compare-methods.ts';
import { meanOfMethods } from '../../src/compute/mean-of-methods.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { limited, quantity } from './combine/published-models.ts';

const method = (constant: number, inputs: Input[]): SumModel => ({
  kind: 'sum',
  constant,
  inputs,
  sensitivities: inputs.map(() => 1),
});
const value = fc.double({ min: -50, max: 50, noNaN: true });
const u = fc.double({ min: 0.05, max: 5, noNaN: true });
const shared = fc.integer({ min: 0, max: 300 }).map((hundredths) => hundredths / 100);
const result = fc.record({ value, u, shared });
/** Methods that share one cause, each to its own extent. */
const tied = (results: readonly { value: number; u: number; shared: number }[]): SumModel[] =>
  results.map((one) =>
    method(one.value, [
      quantity('own', 0, one.u),
      ...(one.shared > 0 ? [limited('load', one.shared, { cause: 'load' })] : []),
    ]),
  );
const several = fc.array(result, { minLength: 2, maxLength: 6 });

describe('the mean of several methods', () => {
  test('of independent ones is their weighted mean', () => {
    fc.assert(
      fc.property(several, (results) => {
        const mean = meanOfMethods({
          methods: results.map((one) => method(one.value, [quantity('own', 0, one.u)])),
        });
        const known = weightedMean(results.map((one) => ({ value: one.value, standardUncertainty: one.u })));
        expect(mean.value).toBeCloseTo(known.value, 6);
        expect(mean.propagation.standardUncertainty).toBeCloseTo(known.standardUncertainty, 8);
      }),
    );
  });

  test('of two is that of their comparison, whatever they share', () => {
    fc.assert(
      fc.property(result, result, (a, b) => {
        const [first, second] = tied([a, b]) as [SumModel, SumModel];
        const mean = meanOfMethods({ methods: [first, second] });
        const compared = compareMethods({ first, second }).mean;
        expect(mean.propagation.standardUncertainty).toBeCloseTo(compared.standardUncertainty, 8);
        expect(mean.weights[0]).toBeCloseTo(compared.weightOfFirst, 6);
        expect(mean.value).toBeCloseTo(compared.value, 5);
      }),
    );
  });

  test('has weights that are none below nothing and sum to 1', () => {
    fc.assert(
      fc.property(several, (results) => {
        const { weights } = meanOfMethods({ methods: tied(results) });
        expect(Math.min(...weights)).toBeGreaterThanOrEqual(0);
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 10);
      }),
    );
  });

  test('is no worse than the best of them, and no better than what all share', () => {
    fc.assert(
      fc.property(several, fc.double({ min: 0.05, max: 3, noNaN: true }), (results, load) => {
        const methods = tied(results.map((one) => ({ ...one, shared: load })));
        const { standardUncertainty } = meanOfMethods({ methods }).propagation;
        expect(standardUncertainty).toBeGreaterThanOrEqual(load / Math.sqrt(3) - 1e-9);
        const best = Math.min(...results.map((one) => Math.hypot(one.u, load / Math.sqrt(3))));
        expect(standardUncertainty).toBeLessThanOrEqual(best + 1e-9);
      }),
    );
  });

  test('no other weights do better', () => {
    fc.assert(
      fc.property(
        fc.array(result, { minLength: 3, maxLength: 3 }),
        fc.array(u, { minLength: 3, maxLength: 3 }),
        (results, other) => {
          const mean = meanOfMethods({ methods: tied(results) });
          const total = other.reduce((sum, weight) => sum + weight, 0);
          const weights = other.map((weight) => weight / total);
          const sum = (of: (index: number) => number) =>
            weights.reduce((all, weight, i) => all + weight * of(i), 0);
          const own = Math.hypot(...weights.map((weight, i) => weight * (results[i]?.u ?? 0)));
          const shared = sum((i) => (results[i]?.shared ?? 0) / Math.sqrt(3));
          expect(mean.propagation.standardUncertainty).toBeLessThanOrEqual(Math.hypot(own, shared) + 1e-9);
        },
      ),
    );
  });

  test('does not hang on the order of the methods', () => {
    fc.assert(
      fc.property(several, (results) => {
        const [there, back] = [results, results.toReversed()].map((these) =>
          meanOfMethods({ methods: tied(these) }),
        );
        expect(there?.propagation.standardUncertainty).toBeCloseTo(
          back?.propagation.standardUncertainty ?? Number.NaN,
          8,
        );
      }),
    );
  });

  test('one that brings more of a shared cause than another, and nothing better, gets no weight', () => {
    // By hand: without the bound the weight of the worse one would be negative.
    const { weights, value: mean } = meanOfMethods({
      methods: [
        method(27, [quantity('own', 0, 0.1), limited('load', 0.1, { cause: 'load' })]),
        method(28, [quantity('own', 0, 0.2), limited('load', 2, { cause: 'load' })]),
      ],
    });
    expect(weights).toEqual([1, 0]);
    expect(mean).toBe(27);
  });

  test('of three, one of them twice as uncertain: weights 4, 4 and 1 of 9', () => {
    const methods = [0.1, 0.1, 0.2].map((own, i) => method(27 + i, [quantity('own', 0, own)]));
    const { weights, value: mean } = meanOfMethods({ methods, coverageFactor: 2 });
    expect(weights).toEqual([4 / 9, 4 / 9, 1 / 9].map((weight) => expect.closeTo(weight, 10)));
    expect(mean).toBeCloseTo((4 * 27 + 4 * 28 + 29) / 9, 10);
  });

  test('methods that are one and the same share their weight', () => {
    const same = method(27, [limited('load', 0.2, { cause: 'load' })]);
    const mean = meanOfMethods({ methods: [same, same, same] });
    expect(mean.weights).toEqual([1 / 3, 1 / 3, 1 / 3].map((weight) => expect.closeTo(weight, 12)));
    expect(mean.propagation.standardUncertainty).toBeCloseTo(0.2 / Math.sqrt(3), 10);
  });

  test('correlations within a method are kept', () => {
    const tiedPair: SumModel = {
      ...method(27, [quantity('a', 0, 1), quantity('b', 0, 1)]),
      correlations: [{ a: 'a', b: 'b', r: -1 }],
    };
    const mean = meanOfMethods({ methods: [tiedPair, method(28, [quantity('a', 0, 1)])] });
    expect(mean.value).toBeCloseTo(27, 9);
    expect(mean.propagation.standardUncertainty).toBeCloseTo(0, 9);
  });

  test('of one method is refused', () => {
    expect(() => meanOfMethods({ methods: [method(27, [quantity('a', 0, 1)])] })).toThrow(
      'meanOfMethods: there must be 2 or more methods, got 1',
    );
  });
});
