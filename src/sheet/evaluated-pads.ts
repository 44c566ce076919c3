import { evaluate } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';
import { type PadsInARow, rootOfStated, rowModel, rowResult, sumOfStated } from './pads-in-a-row.ts';

/** What the whole distribution of a row says, as plain numbers, so that it can be handed over. */
export interface WholeRow {
  /** Half-width about nothing that holds as much as k = 2 does of a bell. */
  readonly halfWidth: number;
  /** Share within the stated numbers end to end, within nine tenths of them, within the root of their squares, and within U (k = 2). */
  readonly withinSum: number;
  readonly withinNineTenths: number;
  readonly withinRoot: number;
  readonly withinExpanded: number;
  /** The half of the curve above nothing. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** Nine tenths of the way to the ends. */
const NINE_TENTHS = 0.9;
/** Every second point of the curve is enough for a drawing this small. */
const KEPT = 2;

/** The whole distribution of a row. @throws RangeError where a sum has none, which no row here is. */
export function wholeRowOf(of: PadsInARow): WholeRow {
  const { whole } = evaluate({ model: rowModel(of), coverageProbability: COVERAGE_PROBABILITY });
  if ('unavailable' in whole)
    throw new RangeError(`wholeRowOf: the sum must have a whole distribution, got ${whole.unavailable}`);
  const within = (halfWidth: number): number =>
    Math.max(0, Math.min(1, whole.shareBelow(halfWidth) - whole.shareBelow(-halfWidth)));
  const sum = sumOfStated(of);
  return {
    halfWidth: (whole.symmetric.upper - whole.symmetric.lower) / 2,
    withinSum: within(sum),
    withinNineTenths: within(NINE_TENTHS * sum),
    withinRoot: within(rootOfStated(of)),
    withinExpanded: within(rowResult(of).propagation.expanded),
    curve: whole.curve.filter(({ x }, index) => x >= 0 && index % KEPT === 0),
  };
}
