import { claimOf, isFitting, longestThatFitsMm, misfitMm, PLAY_MM } from '../../sheet/two-rules.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type RulesState, rulesOf } from './spec.ts';
import { strings } from './strings.ts';

const lengthText = (style: Style, lengthMm: number): string =>
  quantityText(style, { value: lengthMm, decimals: 0, unit: 'mm' });

/** The misfit that is there, and whether it fits. */
function misfitAnswer(style: Style, state: RulesState): Answer {
  const rules = rulesOf(state);
  if (rules.known === 'compared') return { figure: strings.corrected, words: strings.correctedWords };
  const misfit = misfitMm(rules);
  const text = changeText(style, { value: misfit, decimals: 2, unit: 'mm' });
  return {
    figure: isFitting(rules) ? strings.fits(text) : strings.fitsNot(text),
    words: strings.misfit({
      length: lengthText(style, rules.lengthMm),
      play: plusMinusText(style, { halfWidth: PLAY_MM, decimals: 0, unit: 'mm' }),
    }),
  };
}

function claimAnswer(style: Style, state: RulesState): Answer {
  const { expanded } = claimOf(rulesOf(state)).propagation;
  return {
    figure: plusMinusText(style, { halfWidth: expanded, decimals: decimalsFor(expanded), unit: 'mm' }),
    words: strings.claim(state.known),
  };
}

function coverAnswer(style: Style, state: RulesState): Answer {
  const rules = rulesOf(state);
  const covered = Math.abs(misfitMm(rules)) <= claimOf(rules).propagation.expanded;
  // cut to whole millimetres, so that what is said does fit; the rest is rounding
  const longest = Math.floor(longestThatFitsMm(rules) + 1e-9);
  const limit = Number.isFinite(longest) ? strings.longest(lengthText(style, longest)) : strings.always;
  return {
    figure: covered ? strings.covered : strings.uncovered,
    words: `${covered ? strings.coveredWords : strings.uncoveredWords}.${rules.known === 'compared' ? '' : ` ${limit}.`}`,
  };
}

/** Misfit, claim, and whether the one lies within the other. */
export const answersOf = (state: RulesState, style: Style = 'shown'): readonly [Answer, Answer, Answer] => [
  misfitAnswer(style, state),
  claimAnswer(style, state),
  coverAnswer(style, state),
];

/** The settled state in one spoken sentence. */
export function summarise(state: RulesState): string {
  const [misfit, claim, cover] = answersOf(state, 'spoken');
  return aloud([misfit.figure, `Claimed: ${claim.figure}`, cover.figure]);
}
