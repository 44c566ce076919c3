import { describe, expect, it } from 'vitest';
import { inPercentOf } from '../../../src/compute/method/scaled-statement.ts';
import type { Statement } from '../../../src/compute/statement.ts';
import { shapeOf } from '../../../src/compute/statement-shape.ts';
import { expectWithin } from '../near.ts';

const forms: Statement[] = [
  { form: 'limits', shape: 'rectangular', halfWidth: 0.2 },
  { form: 'limits', shape: 'triangular', halfWidth: 0.2 },
  { form: 'limits', shape: 'arcsine', halfWidth: 0.2 },
  { form: 'trapezoid', halfWidth: 0.2, topRatio: 0.5 },
  { form: 'uncertainLimits', halfWidth: 0.2, limitHalfWidth: 0.05 },
  { form: 'asymmetric', lower: -0.1, upper: 0.3 },
  { form: 'expanded', expanded: 0.2, coverageFactor: 2 },
  { form: 'expanded', expanded: 0.2, coverageFactor: 2, degreesOfFreedom: 12 },
  { form: 'coverage', expanded: 0.2, probability: 0.95 },
  { form: 'standard', standardUncertainty: 0.1, degreesOfFreedom: 9 },
  { form: 'readings', standardDeviation: 0.1, count: 5 },
  { form: 'displayStep', step: 0.1 },
  { form: 'halfWithin', halfWidth: 0.2 },
];

describe('a statement in percent of a reading', () => {
  it.each(forms)('$form keeps its shape, and every length is that share of the reading', (statement) => {
    expect(Object.keys(inPercentOf(20, statement))).toEqual(Object.keys(statement));
    const before = shapeOf(statement);
    const after = shapeOf(inPercentOf(20, statement));
    expect(after.distribution.shape).toBe(before.distribution.shape);
    expect(after.degreesOfFreedom).toBe(before.degreesOfFreedom);
    for (const share of [0.1, 0.3, 0.5, 0.9])
      expectWithin(after.distribution.quantile(share), 5 * before.distribution.quantile(share), 1e-12);
  });

  it('of nothing is refused', () => {
    expect(() => inPercentOf(0, { form: 'displayStep', step: 1 })).toThrow(
      new RangeError('inPercentOf: reading must be > 0, got 0'),
    );
  });
});
