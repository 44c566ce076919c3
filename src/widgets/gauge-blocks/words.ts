import type { Interval } from '#compute';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import { claimOf, differenceUm, endsOf, isCovered, lengthsOf, NOMINAL_MM } from '../../sheet/gauge-blocks.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type BlocksState, comparisonOf } from './spec.ts';
import { strings } from './strings.ts';

/** A length in micrometres is written to hundredths, an uncertainty of less to thousandths. */
const UM_DECIMALS = 2;

const um = (style: Style, value: number, decimals = UM_DECIMALS): string =>
  changeText(style, { value, decimals, unit: 'um' });

/** Decimals of a claim: hundredths as everything here, thousandths where two digits of its uncertainty ask for them. */
const decimalsOf = (expanded: number): number =>
  expanded > 0 ? Math.max(UM_DECIMALS, Math.min(3, decimalsFor(expanded))) : UM_DECIMALS;

function claimText(style: Style, state: BlocksState): string {
  const { estimate, propagation } = claimOf(comparisonOf(state));
  const decimals = decimalsOf(propagation.expanded);
  const value = changeText(style, { value: estimate, decimals, unit: 'none' });
  return `${value} ${plusMinusText(style, { halfWidth: propagation.expanded, decimals, unit: 'um' })}`;
}

/** From one end to the other. */
const between = (style: Style, { lower, upper }: Interval): string =>
  strings.between(changeText(style, { value: lower, decimals: UM_DECIMALS, unit: 'none' }), um(style, upper));

/** Words of one side in the figure. */
export function laneLabels(state: BlocksState, id: 'stack' | 'single') {
  const of = comparisonOf(state);
  const { end, cold } = endsOf(of)[id];
  const celsius = id === 'stack' ? state.stackC : state.singleC;
  const lengths = id === 'stack' ? lengthsOf(state.count) : [NOMINAL_MM];
  return {
    label: strings.lane[id](
      quantityText('shown', { value: lengths[lengths.length - 1] ?? 0, decimals: 0, unit: 'mm' }),
      lengths.slice(0, -1),
    ),
    number: um('shown', end),
    detail: strings.lane.detail({
      celsius: quantityText('shown', { value: celsius, decimals: 1, unit: 'degC' }),
      warmth: um('shown', end - cold),
    }),
  };
}

/** Words of the difference in the figure. */
export const claimLabels = (state: BlocksState) => ({
  label: strings.difference,
  number: um('shown', differenceUm(comparisonOf(state))),
  detail: strings.claimed(claimText('shown', state)),
});

function worstAnswer(style: Style, state: BlocksState): Answer {
  const { worstCase } = claimOf(comparisonOf(state));
  return worstCase.unlimited.length > 0
    ? { figure: strings.worst.none, words: strings.worst.noneWords }
    : { figure: between(style, worstCase.interval), words: strings.worst.words };
}

/** What is there, the three ways to add up what is claimed, and whether the claim holds. */
export function answersOf(state: BlocksState, whole?: Interval, style: Style = 'shown'): readonly Answer[] {
  const of = comparisonOf(state);
  const covered = isCovered(of);
  return [
    { figure: um(style, differenceUm(of)), words: strings.there },
    {
      figure: covered ? strings.covered : strings.uncovered,
      words: covered ? strings.coveredWords : strings.uncoveredWords,
    },
    { figure: claimText(style, state), words: strings.roots },
    worstAnswer(style, state),
    {
      figure: whole ? between(style, whole) : strings.whole.waiting,
      words: strings.whole.words(percentText(style, { percent: 100 * COVERAGE_PROBABILITY, decimals: 2 })),
    },
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(state: BlocksState): string {
  const [there, cover, claim] = answersOf(state, undefined, 'spoken');
  return strings.summary({
    there: there?.figure ?? '',
    claim: claim?.figure ?? '',
    cover: cover?.figure ?? '',
  });
}
