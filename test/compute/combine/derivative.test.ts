import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { derivative } from '../../../src/compute/combine/derivative.ts';
import { estimateOf } from '../../../src/compute/combine/estimate.ts';
import { sensitivitiesOf } from '../../../src/compute/combine/sensitivities.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import type { FunctionModel, Input } from '../../../src/compute/model.ts';
import { limited, quantity } from './published-models.ts';

describe('a numerical derivative', () => {
  const known: [string, (x: number) => number, (x: number) => number][] = [
    ['square', (x) => x * x, (x) => 2 * x],
    ['exponential', Math.exp, Math.exp],
    ['sine', Math.sin, Math.cos],
    ['decibels', (x) => 10 * Math.log10(x), (x) => 10 / Math.LN10 / x],
    ['reciprocal', (x) => 1 / x, (x) => -1 / x ** 2],
  ];

  test('smooth functions are met to nine digits from any step', () => {
    for (const [, f, slope] of known)
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 10, noNaN: true }),
          fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
          (x, step) => {
            const { value } = derivative({ f, x, step });
            expect(Math.abs(value - slope(x))).toBeLessThan(1e-9 * Math.max(1, Math.abs(slope(x))));
          },
        ),
        { numRuns: 50 },
      );
  });

  test('the error bound holds, rounding aside', () => {
    for (const [, f, slope] of known)
      fc.assert(
        fc.property(fc.double({ min: 1, max: 10, noNaN: true }), (x) => {
          const { value, errorBound } = derivative({ f, x, step: 0.3 });
          expect(Math.abs(value - slope(x))).toBeLessThanOrEqual(
            errorBound + 1e-11 * Math.max(1, Math.abs(f(x))),
          );
        }),
        { numRuns: 50 },
      );
  });

  test('a straight line needs no limit, a kink has a large error bound', () => {
    expect(derivative({ f: (x) => 3 * x - 1, x: 2, step: 1 }).value).toBeCloseTo(3, 12);
    const kink = derivative({ f: (x) => Math.abs(x - 0.1), x: 0, step: 1 });
    expect(kink.errorBound).toBeGreaterThan(1e-6);
  });
});

describe('sensitivities', () => {
  test('of a sum they are exact', () => {
    const model = { kind: 'sum', constant: 1, inputs: [limited('a', 1)], sensitivities: [-0.1] } as const;
    expect(sensitivitiesOf({ model })).toEqual([{ value: -0.1, errorBound: 0 }]);
  });

  test('of volts across a load they are 2P/V and -P/R', () => {
    const inputs = [quantity('V', 5, 0.05), quantity('R', 50, 0.5)];
    const model: FunctionModel = { kind: 'function', inputs, f: ([v = 0, r = 0]) => v ** 2 / r };
    const [v, r] = sensitivitiesOf({ model });
    expect(v?.value).toBeCloseTo(0.2, 10);
    expect(r?.value).toBeCloseTo(-0.01, 10);
    expect(v?.errorBound).toBeLessThan(1e-8);
    expect(estimateOf(model)).toBeCloseTo(0.5, 14);
  });

  test('an input without uncertainty has one all the same', () => {
    const inputs: Input[] = [0, 4000].map((x, i) => ({
      id: `x${i}`,
      distribution: constant(x),
      degreesOfFreedom: 1,
    }));
    const model: FunctionModel = { kind: 'function', inputs, f: ([a = 0, b = 0]) => Math.sin(a) + 3 * b };
    const [a, b] = sensitivitiesOf({ model });
    expect(a?.value).toBeCloseTo(1, 7);
    expect(b?.value).toBeCloseTo(3, 8);
  });

  test('a step that leaves the domain is shortened, whether the function throws there or gives no number', () => {
    const inputs = [quantity('P', 1, 2)];
    const throwing = (x: number) => {
      if (x <= 0) throw new RangeError('below zero');
      return Math.log(x);
    };
    for (const f of [
      ([x = 0]: readonly number[]) => throwing(x),
      ([x = 0]: readonly number[]) => Math.log(x),
    ])
      expect(sensitivitiesOf({ model: { kind: 'function', inputs, f } })[0]?.value).toBeCloseTo(1, 8);
  });

  test('a function that is no number about the estimate is refused, and a real fault comes through', () => {
    const inputs = [quantity('x', 0, 1)];
    expect(() => sensitivitiesOf({ model: { kind: 'function', inputs, f: () => Number.NaN } })).toThrow(
      'sensitivitiesOf: f must be finite about the estimate, got "x"',
    );
    const broken = () => {
      throw new TypeError('broken');
    };
    expect(() => sensitivitiesOf({ model: { kind: 'function', inputs, f: broken } })).toThrow(TypeError);
    expect(() => estimateOf({ kind: 'function', inputs, f: () => Number.POSITIVE_INFINITY })).toThrow(
      'estimateOf: output must be finite, got Infinity',
    );
  });

  test('where no mean exists the median stands for it', () => {
    const distribution = student({ location: 4, scale: 1, degreesOfFreedom: 1 });
    const inputs: Input[] = [{ id: 'a', distribution, degreesOfFreedom: 1, standardUncertainty: 1 }];
    expect(estimateOf({ kind: 'sum', constant: 1, inputs, sensitivities: [2] })).toBe(9);
  });
});
