import { describe, expect, test } from 'vitest';
import { checkModel } from '../../../src/compute/combine/check-model.ts';
import type { Correlation, Input, SumModel } from '../../../src/compute/model.ts';
import { limited, quantity } from './published-models.ts';

const model = (more: Partial<SumModel> = {}): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs: [limited('a', 1), limited('b', 1), limited('c', 1)],
  sensitivities: [1, 1, 1],
  ...more,
});
const check = (more: Partial<SumModel>) => () => checkModel('here', model(more));
const tied = (...correlations: Correlation[]) => check({ correlations });

describe('a model that cannot be evaluated', () => {
  test('a sound one passes', () => {
    expect(check({})).not.toThrow();
    expect(tied({ a: 'a', b: 'b', r: 1 }, { a: 'b', b: 'c', r: -1 })).not.toThrow();
    expect(check({ inputs: [], sensitivities: [] })).not.toThrow();
    expect(() =>
      checkModel('here', { kind: 'function', inputs: [limited('a', 1)], f: () => 1 }),
    ).not.toThrow();
  });

  test('two inputs of one name are refused', () => {
    const inputs = [limited('a', 1), limited('a', 2), limited('b', 1)];
    expect(check({ inputs })).toThrow('here: ids of inputs must differ, got "a"');
  });

  test('degrees of freedom that are none are refused', () => {
    for (const degreesOfFreedom of [0, -2, Number.NaN]) {
      const inputs: Input[] = [{ ...quantity('a', 0, 1), degreesOfFreedom }];
      expect(check({ inputs, sensitivities: [1] })).toThrow(
        `here: degreesOfFreedom of a must be > 0, got ${degreesOfFreedom}`,
      );
    }
  });

  test('sensitivities must be as many as inputs, and finite', () => {
    expect(check({ sensitivities: [1, 1] })).toThrow(
      'here: there must be one sensitivity per input (3), got 2',
    );
    expect(check({ sensitivities: [1, 1, Number.NaN] })).toThrow('here: sensitivity must be a finite number');
    expect(check({ constant: Number.POSITIVE_INFINITY })).toThrow('here: constant must be a finite number');
  });

  test('a correlation names two known inputs, once, within -1 and 1', () => {
    expect(tied({ a: 'a', b: 'x', r: 0 })).toThrow('here: a correlation must name known inputs, got "x"');
    expect(tied({ a: 'x', b: 'a', r: 0 })).toThrow('got "x"');
    expect(tied({ a: 'a', b: 'a', r: 1 })).toThrow('here: a correlation must name two inputs, got "a"');
    expect(tied({ a: 'a', b: 'b', r: 1.01 })).toThrow('here: r must be from -1 to 1, got 1.01');
    expect(tied({ a: 'a', b: 'b', r: Number.NaN })).toThrow('here: r must be from -1 to 1');
    expect(tied({ a: 'a', b: 'b', r: 0.1 }, { a: 'b', b: 'a', r: 0.1 })).toThrow(
      'here: a pair must be given once, got "b, a"',
    );
  });

  test('a pair under one cause is not given a coefficient too', () => {
    const inputs = [limited('a', 1, { cause: 'x' }), limited('b', 1, { cause: 'x' }), limited('c', 1)];
    expect(check({ inputs, correlations: [{ a: 'a', b: 'b', r: 0.5 }] })).toThrow(
      'here: a pair under one cause must not be given an r, got "a, b"',
    );
    expect(check({ inputs, correlations: [{ a: 'a', b: 'c', r: 0.5 }] })).not.toThrow();
  });
});
