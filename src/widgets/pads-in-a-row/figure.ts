import type { LaidProps } from '../../figures/laid-lengths.layout.ts';
import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import { rootOfStated, rowResult, statedLengths, sumOfStated } from '../../sheet/pads-in-a-row.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type Claim, type Lay, type RowFields, type RowState, rowOf } from './spec.ts';

/** What somebody says, in dB; nothing where nobody does. */
export function saidOf(claim: Claim, values: RowState): number | undefined {
  if (claim === 'none') return undefined;
  return claim === 'sum' ? sumOfStated(rowOf(values)) : rootOfStated(rowOf(values));
}

/** The standard uncertainties one by one, the longest first, so that one sees which of them counts. */
const standardLengths = (values: RowState): readonly number[] =>
  rowResult(rowOf(values))
    .propagation.budget.map(({ standardUncertainty }) => standardUncertainty)
    .toSorted((a, b) => b - a);

const lengthsOf = (lay: Lay, values: RowState): readonly number[] =>
  lay === 'straight' ? statedLengths(rowOf(values)) : standardLengths(values);

/** What the knob pulls: one of the two sizes. */
export type Pulled = 'pad' | 'meter';

/** Standard uncertainty of a part over what is stated of it: what the knob is pulled by where standard uncertainties are laid. */
export function perStated(lay: Lay, values: RowState, pulled: Pulled): number {
  if (lay === 'straight') return 1;
  // of a decibel: a meter of none has no row
  const { budget } = rowResult({ ...rowOf(values), padDb: 1, meterDb: 1 }).propagation;
  return (pulled === 'meter' ? budget.at(-1) : budget[0])?.standardUncertainty ?? 1;
}

/** The figure's data of a state. While the knob is held the axis keeps still. */
export function figureOf(
  lay: Lay,
  { values, held }: FieldsState<RowFields>,
  whole: WholeRow | undefined,
  pulled: Pulled = 'pad',
): Omit<LaidProps, 'frame'> {
  const seen = held ?? values;
  const result =
    lay === 'straight' ? whole?.halfWidth : rowResult(rowOf(values)).propagation.standardUncertainty;
  const said = saidOf(values.claim, values);
  return {
    angles: lay === 'angles',
    lengths: lengthsOf(lay, values),
    endless: lay === 'straight' && values.says === 'certificate' && values.meter > 0 ? 1 : 0,
    curve: lay === 'straight' ? (whole?.curve ?? []) : [],
    result,
    said,
    knob: values[pulled] * perStated(lay, values, pulled),
    reach: {
      lengths: lengthsOf(lay, seen),
      farthest: Math.max(saidOf(seen.claim, seen) ?? 0, lay === 'straight' ? sumOfStated(rowOf(seen)) : 0),
    },
  };
}
