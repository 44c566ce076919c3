import { type Interval, type Validation, validatePropagation } from '#compute';
import type { ShapeLane } from '../../figures/shape.layout.ts';
import type { Tried } from '../../sheet/tried.ts';
import { triedCoverage } from '../../sheet/tries.ts';
import { countText } from '../../text/count-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import type { IntervalKind } from './spec.ts';
import { strings } from './strings.ts';

/** From so many trials on an interval is steady enough to judge another by its first digit. */
const ENOUGH = 100_000;
/** No number here has more decimals than this. */
const MOST_DECIMALS = 5;

/** Decimals that give two significant digits of the uncertainty, or `more`. */
const decimalsOf = ({ standardUncertainty: u }: Tried, more = 0): number =>
  u > 0 ? Math.min(MOST_DECIMALS, Math.max(0, decimalsFor(u) + more)) : 3;

const amount = (style: Style, tried: Tried, value: number): string =>
  quantityText(style, {
    value,
    decimals: decimalsOf(tried, 1),
    unit: strings.units[tried.order.model],
  });

/** An interval with its unit, or bare for a narrow place. */
function between(style: Style, tried: Tried, { lower, upper }: Interval, more = 1): string {
  const decimals = decimalsOf(tried, more);
  const end =
    more > 0
      ? quantityText(style, { value: upper, decimals, unit: strings.units[tried.order.model] })
      : numberText(style, { value: upper, decimals });
  return strings.between(numberText(style, { value: lower, decimals }), end);
}

/** Whether propagation will do, where there are enough trials to judge it by. */
export function validationOf(tried: Tried, kind: IntervalKind): Validation | undefined {
  const { trials, standardUncertainty, propagated, order } = tried;
  const isEnough =
    trials >= ENOUGH || (order.trials === 'settled' && tried.tolerance !== undefined && tried.settled);
  if (!isEnough || !(standardUncertainty > 0)) return undefined;
  return validatePropagation({
    propagated: propagated.interval,
    simulated: tried[kind],
    standardUncertainty,
    digits: 1,
  });
}

/** Both intervals under the curves. */
export const lanesOf = (tried: Tried, kind: IntervalKind): readonly ShapeLane[] => [
  {
    id: 'tried',
    kind: 'strip',
    label: strings.lanes.tried,
    number: between('shown', tried, tried[kind], 0),
    interval: tried[kind],
  },
  {
    id: 'propagated',
    kind: 'outline',
    label: strings.lanes.propagated,
    number: between('shown', tried, tried.propagated.interval, 0),
    interval: tried.propagated.interval,
  },
];

function verdictAnswer(style: Style, tried: Tried, kind: IntervalKind): Answer {
  const { answers } = strings;
  const found = validationOf(tried, kind);
  if (found === undefined) return { figure: answers.few, words: answers.fewWords };
  return {
    figure: found.valid ? answers.holds : answers.fails,
    words: answers.apart({
      apart: amount(style, tried, Math.max(found.lowDifference, found.highDifference)),
      allowed: amount(style, tried, found.tolerance),
    }),
  };
}

/** What the trials came to, what propagation says, and whether that will do. */
export function answersOf(tried: Tried, kind: IntervalKind, style: Style = 'shown'): readonly Answer[] {
  const { order, propagated } = tried;
  const { answers, settings } = strings;
  const share = percentText(style, { percent: 100 * triedCoverage(order), decimals: 0 });
  return [
    {
      figure: amount(style, tried, tried.mean),
      words: answers.mean({
        model: settings.choices.model[order.model],
        u: amount(style, tried, tried.standardUncertainty),
        count: countText(style, tried.trials),
      }),
    },
    { figure: between(style, tried, tried[kind]), words: answers.interval[kind](share) },
    {
      figure: between(style, tried, propagated.interval),
      words: answers.propagated({
        estimate: amount(style, tried, propagated.estimate),
        u: amount(style, tried, propagated.standardUncertainty),
        order: answers.order[order.order],
      }),
    },
    verdictAnswer(style, tried, kind),
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(tried: Tried, kind: IntervalKind): string {
  const [, own, propagated, verdict] = answersOf(tried, kind, 'spoken');
  return strings.summary({
    model: strings.settings.choices.model[tried.order.model],
    tried: own?.figure ?? '',
    propagated: propagated?.figure ?? '',
    verdict: verdict?.figure ?? '',
  });
}
