import { centreOf, isLimited } from './combine/input.ts';
import type { Interval, Shape } from './distribution/distribution.ts';
import type { Model } from './model.ts';
import { rangeError } from './quantity.ts';
import type { BudgetRow, Propagation } from './result.ts';

/** A row of the budget with what stands behind it, in the input's own unit. */
export interface DetailedRow extends BudgetRow {
  /** Where the input is centred. */
  readonly estimate: number;
  readonly shape: Shape;
  readonly limits: Interval;
  /** Half-width over standard uncertainty, the square root of 3 for a rectangle; undefined without limits or uncertainty. */
  readonly divisor: number | undefined;
}

/**
 * The uncertainty budget in full, in the order of the inputs: estimate, limits, shape and divisor beside what propagation found.
 * @throws RangeError if the propagation is not of this model.
 * Source: GUM 4.1 to 5.1, table H.1.
 */
export function detailedBudget({
  model,
  propagation,
}: {
  model: Model;
  propagation: Propagation;
}): DetailedRow[] {
  return model.inputs.map((input, i) => {
    const row = propagation.budget[i];
    if (row === undefined || row.id !== input.id)
      throw rangeError({ where: 'detailedBudget', wish: 'propagation must be of this model', got: input.id });
    const { shape, limits } = input.distribution;
    const halfWidth = (limits.upper - limits.lower) / 2;
    return {
      ...row,
      estimate: centreOf(input),
      shape,
      limits,
      divisor:
        isLimited(input) && row.standardUncertainty > 0 ? halfWidth / row.standardUncertainty : undefined,
    };
  });
}
