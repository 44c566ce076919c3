import { defaultState } from '../address/field-spec.ts';
import { boardSheet } from '../examples/four-readings-one-limit.ts';
import { padMeasuredAtDc } from '../examples/pad-measured-at-dc.ts';
import { VerdictBand } from '../figures/VerdictBand.tsx';
import { bandChainOf } from '../sheet/chain.ts';
import { judgedBy } from '../sheet/conformity.ts';
import { type RowFields, rowSpec } from '../widgets/pads-in-a-row/spec.ts';
import { fieldsState } from '../widgets/parts/fields.ts';
import { strings as verdictStrings } from '../widgets/verdict/strings.ts';
import { onCard } from './drawn.ts';
import { rowOfParts } from './shape-figures.tsx';

/** The boards of an example, of which the first is drawn. */
export function boards() {
  const { readings, specification, rule } = boardSheet(0);
  const [estimate = Number.NaN] = readings;
  const { expanded } = bandChainOf(boardSheet(0)).result.propagation;
  const held = { estimate, standardUncertainty: expanded / 2, specification, rule };
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = specification;
  return (
    <VerdictBand
      {...onCard}
      {...held}
      domain={{ lower: lower - 1, upper: upper + 1 }}
      expanded={expanded}
      specification={{ lower, upper }}
      judgement={judgedBy(held)}
      names={verdictStrings.zones}
      along={verdictStrings.along.transmitter}
    />
  );
}

/** Two voltages of an example as parts of its attenuation, laid end to end as the pads of a lesson are. */
export function voltages() {
  const result = padMeasuredAtDc.outcomes()[0]?.stated?.result;
  if (result === undefined) throw new RangeError('voltages: the example must have a result, got none');
  const count = result.propagation.budget.length;
  const pad = (result.worstCase.interval.upper - result.estimate) / count;
  const values = { ...defaultState(rowSpec('straight').fields), count, pad, meter: 0 };
  return rowOfParts('straight', fieldsState<RowFields>(values));
}
