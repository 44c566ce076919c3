import type { Interval } from '#compute';
import type { VerdictBandProps } from '../../figures/verdict-band.layout.ts';
import { judgedBy } from '../../sheet/conformity.ts';
import type { FieldsState } from '../parts/fields.ts';
import { domainOf } from './item.ts';
import { heldOf, type VerdictFields, type VerdictState } from './spec.ts';
import { strings } from './strings.ts';

function stripOf(state: VerdictState): Interval {
  const { estimate, standardUncertainty } = heldOf(state);
  return { lower: estimate - 2 * standardUncertainty, upper: estimate + 2 * standardUncertainty };
}

/** The strip before the last change, where that moved or widened it. */
function ghostOf({ values, before }: FieldsState<VerdictFields>): Interval | undefined {
  if (before === undefined || before.item !== values.item) return undefined;
  const [was, is] = [stripOf(before), stripOf(values)];
  return was.lower === is.lower && was.upper === is.upper ? undefined : was;
}

/** The figure's data of a state. */
export function figureOf(state: FieldsState<VerdictFields>): Omit<VerdictBandProps, 'frame'> {
  const held = heldOf(state.values);
  const { estimate, standardUncertainty, specification } = held;
  return {
    domain: domainOf(state.values.item),
    estimate,
    standardUncertainty,
    expanded: 2 * standardUncertainty,
    ghost: ghostOf(state),
    specification: {
      lower: specification.lower ?? Number.NEGATIVE_INFINITY,
      upper: specification.upper ?? Number.POSITIVE_INFINITY,
    },
    judgement: judgedBy(held),
    names: strings.zones,
  };
}
