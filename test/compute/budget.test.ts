import { describe, expect, test } from 'vitest';
import { detailedBudget } from '../../src/compute/budget.ts';
import { propagate } from '../../src/compute/combine/propagate.ts';
import { componentOf } from '../../src/compute/component.ts';
import type { SumModel } from '../../src/compute/model.ts';
import { endGauge, limited, quantity } from './combine/published-models.ts';

const model: SumModel = {
  kind: 'sum',
  constant: 27,
  inputs: [
    limited('box', 0.6),
    limited('triangle', 0.6, { shape: 'triangular' }),
    limited('mismatch', 0.6, { shape: 'arcsine' }),
    quantity('certificate', 0.1, 0.05, 12),
    componentOf({ id: 'lopsided', statement: { form: 'asymmetric', lower: 0, upper: 0.2 }, unit: 'dB' }),
    limited('none', 0),
  ],
  sensitivities: [1, 1, -1, 1, 2, 1],
};

describe('the budget in full', () => {
  const rows = detailedBudget({ model, propagation: propagate({ model }) });

  test('each shape shows its divisor, and what has no limits shows none', () => {
    expect(rows.map(({ shape }) => shape)).toEqual([
      'rectangular',
      'triangular',
      'arcsine',
      'normal',
      'rectangular',
      'constant',
    ]);
    expect(rows[0]?.divisor).toBeCloseTo(Math.sqrt(3), 12);
    expect(rows[1]?.divisor).toBeCloseTo(Math.sqrt(6), 12);
    expect(rows[2]?.divisor).toBeCloseTo(Math.SQRT2, 12);
    expect(rows[3]?.divisor).toBe(undefined);
    expect(rows[4]?.divisor).toBeCloseTo(Math.sqrt(3), 12);
    expect(rows[5]?.divisor).toBe(undefined);
  });

  test("estimates and limits are the inputs' own", () => {
    expect(rows[3]).toMatchObject({ estimate: 0.1, degreesOfFreedom: 12, standardUncertainty: 0.05 });
    expect(rows[3]?.limits.lower).toBe(Number.NEGATIVE_INFINITY);
    expect(rows[4]).toMatchObject({ estimate: 0.1, limits: { lower: 0, upper: 0.2 }, sensitivity: 2 });
  });

  test('the rows of propagation are kept as they are', () => {
    const { budget } = propagate({ model });
    rows.forEach((row, i) => {
      expect(row).toMatchObject({ ...budget[i] });
    });
  });

  test('an end gauge shows the estimates of table H.1', () => {
    const gauge = endGauge();
    const details = detailedBudget({ model: gauge, propagation: propagate({ model: gauge }) });
    expect(details.map(({ estimate }) => estimate)).toEqual([50_000_623, 215, 0, 0, 11.5e-6, -0.1, 0]);
    // Table H.1 prints u = 0.58e-6, 0.029 and 1.2e-6 for the three rectangular ones.
    expect(details[2]?.standardUncertainty).toBeCloseTo(0.58e-6, 8);
    expect(details[3]?.standardUncertainty).toBeCloseTo(0.029, 3);
    expect(details[4]?.standardUncertainty).toBeCloseTo(1.2e-6, 7);
  });

  test('a propagation of another model is refused', () => {
    const other = propagate({ model: { ...model, inputs: [...model.inputs].reverse() } });
    expect(() => detailedBudget({ model, propagation: other })).toThrow(
      'detailedBudget: propagation must be of this model, got "box"',
    );
    const shorter = propagate({ model: { ...model, inputs: [], sensitivities: [] } });
    expect(() => detailedBudget({ model, propagation: shorter })).toThrow(RangeError);
  });
});
