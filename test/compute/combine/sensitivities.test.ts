import { describe, expect, test } from 'vitest';
import { estimateOf } from '../../../src/compute/combine/estimate.ts';
import { sensitivitiesOf } from '../../../src/compute/combine/sensitivities.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import type { FunctionModel, Input } from '../../../src/compute/model.ts';
import { quantity } from './published-models.ts';

const known = (id: string, value: number): Input => ({
  id,
  distribution: constant(value),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});
const slopesOf = (inputs: Input[], f: FunctionModel['f']) =>
  sensitivitiesOf({ model: { kind: 'function', inputs, f } }).map(({ value }) => value);

describe('the slope of a function at the estimate', () => {
  test('is found although a standard uncertainty away the function ends, on either side', () => {
    const [below] = slopesOf([quantity('x', 1, 4)], ([x = 0]) => Math.log(x));
    expect(below).toBeCloseTo(1, 9);
    const [above] = slopesOf([quantity('x', 1, 4)], ([x = 0]) => Math.log(3 - x));
    expect(above).toBeCloseTo(-1 / 2, 9);
  });

  test('is found for an input without uncertainty, be it large, small or zero', () => {
    const [small, zero, large] = slopesOf(
      [known('small', 1e-6), known('zero', 0), known('large', 1e6)],
      ([a = 0, b = 0, c = 0]) => Math.sin(1e6 * a) + Math.sin(b) + Math.sin(1e-6 * c),
    );
    expect((small ?? 0) / 1e6).toBeCloseTo(Math.cos(1), 8);
    expect(zero).toBeCloseTo(1, 9);
    expect((large ?? 0) * 1e6).toBeCloseTo(Math.cos(1), 8);
  });

  test('is refused by the name of the input where the function has no value nearby', () => {
    expect(() =>
      slopesOf([quantity('x', 0, 1), quantity('gap', 0, 1)], ([, x = 0]) => (x === 0 ? 0 : Number.NaN)),
    ).toThrow('sensitivitiesOf: f must be finite about the estimate, got "gap"');
  });
});

test('the estimate of a function is its value at the centres, and must be a number', () => {
  const inputs = [quantity('x', 2, 1), quantity('y', 3, 1)];
  expect(estimateOf({ kind: 'function', inputs, f: ([x = 0, y = 0]) => x * y })).toBe(6);
  expect(() => estimateOf({ kind: 'function', inputs, f: () => Number.NaN })).toThrow(
    'estimateOf: output must be finite, got NaN',
  );
});
