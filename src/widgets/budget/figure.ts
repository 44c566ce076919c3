import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { type BudgetUse, written } from '../../sheet/stated-budget.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type BudgetFields, budgetSpec, useOf } from './spec.ts';

const { min, max } = budgetSpec.fields.count;

/** U for every number of readings, to both sides of the result. */
const bandOf = (use: BudgetUse): readonly BandPoint[] =>
  Array.from({ length: max - min + 1 }, (_, index) => {
    const count = min + index;
    const { expanded } = written({ ...use, count });
    return { x: count, lower: -expanded, upper: expanded };
  });

const reachOf = (bands: readonly (readonly BandPoint[])[]): number =>
  Math.max(...bands.flat().map(({ upper }) => upper));

/** The figure's data of a state: U as it is stated, over the number of readings, beside k = 2. The axis stays while a handle is held. */
export function figureOf({ values, held }: FieldsState<BudgetFields>): Omit<LineBandProps, 'frame'> {
  const use = useOf(values);
  const band = bandOf(use);
  const ghost = bandOf({ ...use, coverage: 'two' });
  const still = held ? [bandOf(useOf(held))] : [band, ghost];
  return {
    domain: { lower: min, upper: max },
    span: spanFor(reachOf(still)),
    line: [],
    band,
    ghost: use.coverage === 'two' ? undefined : ghost,
    at: { x: use.count, y: written(use).expanded },
  };
}
