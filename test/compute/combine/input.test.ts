import { describe, expect, test } from 'vitest';
import { centresOf, standardUncertaintyOf } from '../../../src/compute/combine/input.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { quantity } from './published-models.ts';

describe('an input', () => {
  test('counts with the uncertainty that is stated, or else with that of its shape', () => {
    expect(standardUncertaintyOf(quantity('x', 5, 0.2))).toBe(0.2);
    expect(standardUncertaintyOf({ ...quantity('x', 5, 0.2), standardUncertainty: 0.3 })).toBe(0.3);
  });

  test('is refused by its name where it has no such uncertainty, or a negative one', () => {
    const distribution = student({ location: 0, scale: 1, degreesOfFreedom: 2 });
    expect(() => standardUncertaintyOf({ id: 'x', distribution, degreesOfFreedom: 2 })).toThrow(
      'standardUncertaintyOf: input must state a standardUncertainty, its shape having no standard deviation, got "x"',
    );
    expect(() => standardUncertaintyOf({ ...quantity('x', 5, 0.2), standardUncertainty: -1 })).toThrow(
      'standardUncertaintyOf: standardUncertainty of x must be >= 0, got -1',
    );
  });

  test('stands at its mean, or at its median where it has none', () => {
    const distribution = student({ location: 3, scale: 1, degreesOfFreedom: 1 });
    expect(centresOf([quantity('x', 5, 0.2), { id: 'y', distribution, degreesOfFreedom: 1 }])).toEqual([
      5, 3,
    ]);
  });

  test('is refused by its name where it stands nowhere', () => {
    const distribution = { ...normal({ mean: 0, standardDeviation: 1 }), mean: Number.NaN };
    expect(() => centresOf([{ ...quantity('x', 5, 0.2), distribution }])).toThrow(
      'centresOf: centre of x must be a finite number, got NaN',
    );
  });
});
