import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/compute/evaluate.ts';
import {
  type BlockStack,
  differenceModel,
  type GaugeBlock,
  stackModel,
} from '../../src/compute/gauge-block.ts';
import type { Statement } from '../../src/compute/statement.ts';
import { expectNear, expectWithin } from './near.ts';

const within = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });
const block = (nominalMm: number, deviationUm: number, more: Partial<GaugeBlock> = {}): GaugeBlock => ({
  id: `${nominalMm} mm`,
  nominalMm,
  deviationUm,
  statement: { form: 'expanded', expanded: 0.06, coverageFactor: 2 },
  ...more,
});
/** Invented blocks: 25, 20 and 5 mm wrung together at 21 degrees. */
const stack: BlockStack = {
  blocks: [block(25, 0.1), block(20, -0.05), block(5, 0.02)],
  filmUm: { value: 0.01, statement: within(0.01) },
  temperatureC: { value: 21, statement: within(0.5) },
  expansionPerK: { value: 11.5e-6, statement: within(1e-6) },
};
const single: BlockStack = { ...stack, blocks: [block(50, 0.08)] };
const exact: Statement = within(0);

describe('a stack of gauge blocks', () => {
  it('adds deviations, one film fewer than blocks, and expansion', () => {
    // 0.1 - 0.05 + 0.02, two films of 0.01, and 50 mm x 11.5e-6/K x 1 K = 0.575 um.
    expectNear(stackModel(stack).constant, 0.07 + 0.02 + 0.575);
    expect(stackModel(stack).inputs.map(({ id }) => id)).toEqual([
      '25 mm',
      '20 mm',
      '5 mm',
      'film1',
      'film2',
      'temperature',
      'expansion',
    ]);
  });

  it('has no film in a single block', () => {
    expect(stackModel(single).inputs.map(({ id }) => id)).toEqual(['50 mm', 'temperature', 'expansion']);
    expectNear(stackModel(single).constant, 0.08 + 0.575);
  });

  it('is uncertain as the root of the sum of squares of its parts', () => {
    const { propagation, worstCase } = evaluate({ model: stackModel(stack), coverageFactor: 2 });
    const squares = [
      0.03,
      0.03,
      0.03,
      ...[0.01, 0.01, 0.575 * 0.5, 50_000 * 1e-6].map((a) => a / Math.sqrt(3)),
    ];
    expectNear(propagation.standardUncertainty, Math.hypot(...squares), 1e-12);
    expect(worstCase.unlimited).toEqual(['25 mm', '20 mm', '5 mm']);
  });

  it('matters more than one block of the same length, while independent films and certificates add', () => {
    const u = (s: BlockStack) =>
      evaluate({ model: stackModel(s), coverageFactor: 2 }).propagation.standardUncertainty;
    expect(u(stack)).toBeGreaterThan(u(single));
  });

  it('adds certificates from one standard in full, not as a root of squares', () => {
    const shared = stack.blocks.map((b) => ({ ...b, cause: 'one standard' }));
    const still = { ...stack, blocks: shared, filmUm: { value: 0, statement: exact } };
    const calm = { ...still, temperatureC: { value: 20, statement: exact } };
    const { propagation } = evaluate({ model: stackModel(calm), coverageFactor: 2 });
    expectNear(propagation.standardUncertainty, 0.09, 1e-9);
  });
});

describe('a stack against a single block', () => {
  it('has the difference of both, and what both share cancels', () => {
    const together = (s: BlockStack): BlockStack => ({
      ...s,
      temperatureC: { ...s.temperatureC, cause: 'room' },
      expansionPerK: { ...s.expansionPerK, cause: 'steel' },
    });
    const model = differenceModel({ a: stackModel(together(stack)), b: stackModel(together(single)) });
    expectNear(model.constant, 0.09 - 0.08, 1e-9);
    const { propagation } = evaluate({ model, coverageFactor: 2 });
    const left = Math.hypot(0.03, 0.03, 0.03, 0.03, 0.01 / Math.sqrt(3), 0.01 / Math.sqrt(3));
    expectNear(propagation.standardUncertainty, left, 1e-9);
  });

  it('keeps what each has alone: without a shared cause, both temperatures count', () => {
    const model = differenceModel({ a: stackModel(stack), b: stackModel(single) });
    const { propagation } = evaluate({ model, coverageFactor: 2 });
    expect(propagation.standardUncertainty).toBeGreaterThan((0.575 * 0.5 * Math.SQRT2) / Math.sqrt(3));
    expect(model.inputs[0]?.id).toBe('a.25 mm');
    expect(model.inputs.at(-1)?.id).toBe('b.expansion');
    expect(model.sensitivities.slice(-3)).toEqual([-1, -0.575, -50_000]);
  });

  it('turns its sign with the order', () => {
    const a = stackModel(stack);
    const b = stackModel(single);
    expectWithin(differenceModel({ a, b }).constant, -differenceModel({ a: b, b: a }).constant, 1e-12);
  });

  it('carries stated correlations along under their new names', () => {
    const a = { ...stackModel(single), correlations: [{ a: 'temperature', b: 'expansion', r: 0.5 }] };
    expect(differenceModel({ a, b: a }).correlations).toEqual([
      { a: 'a.temperature', b: 'a.expansion', r: 0.5 },
      { a: 'b.temperature', b: 'b.expansion', r: 0.5 },
    ]);
  });
});

it('no block, and a block of no length, are refused', () => {
  expect(() => stackModel({ ...stack, blocks: [] })).toThrow(
    new RangeError('stackModel: blocks must hold at least one, got []'),
  );
  expect(() => stackModel({ ...stack, blocks: [block(0, 0)] })).toThrow(
    new RangeError('stackModel: nominalMm must be > 0, got 0'),
  );
  expect(() => stackModel({ ...stack, blocks: [block(5, Number.NaN)] })).toThrow(
    new RangeError('stackModel: deviationUm must be a finite number, got NaN'),
  );
  expect(() => stackModel({ ...stack, filmUm: { value: Number.NaN, statement: exact } })).toThrow(
    new RangeError('stackModel: filmUm.value must be a finite number, got NaN'),
  );
});
