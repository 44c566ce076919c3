import { EXTRA_ALLOWED_DB, EXTRA_DB, foundOf, type Match, matchOf, stepOf } from '../../sheet/pads-line.ts';
import { aloud } from '../../text/aloud.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { dbText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { largestParts, methodLevel } from '../parts/level-words.ts';
import { type PadsState, padsLineOf } from './spec.ts';
import { strings } from './strings.ts';

/** Limits and standard uncertainty of a mismatch as text. */
const matchTexts = (style: Style, { lower, upper, standardUncertainty }: Match) => ({
  limits: deviationsText(style, { upper, lower, decimals: 2, unit: 'dB' }),
  u: dbText(style, { db: standardUncertainty, decimals: 2 }),
});

function matchAnswer(style: Style, state: PadsState): Answer {
  const line = padsLineOf(state);
  const figure = strings.match(matchTexts(style, matchOf(line)));
  if (line.padDb === 0) return { figure, words: strings.noPadWords };
  return { figure, words: strings.matchWords(matchTexts(style, matchOf({ ...line, padDb: 0 }))) };
}

function stepAnswer(style: Style, state: PadsState): Answer {
  const line = padsLineOf(state);
  const { outcome } = stepOf(line);
  const due = strings.due({
    step: dbText(style, { db: EXTRA_DB, decimals: 1 }),
    allowed: plusMinusText(style, { halfWidth: EXTRA_ALLOWED_DB, decimals: 1, unit: 'dB' }),
  });
  return {
    figure: strings.step[outcome](dbText(style, { db: line.movedDb, decimals: 1 })),
    words: strings.stepWords[outcome](due),
  };
}

function resultAnswer(style: Style, state: PadsState): Answer {
  const outcome = foundOf(padsLineOf(state));
  if (!outcome.found)
    return {
      figure: strings.none,
      words: outcome.reason === 'step' ? strings.noneWords : outOfRangeText(style, outcome.reason),
    };
  const { figure, words } = methodLevel(style, outcome.result);
  const { ids, share } = largestParts(outcome.result);
  return {
    figure,
    words: strings.found({
      watts: words,
      ids,
      share: percentText(style, { percent: 100 * share, decimals: 0 }),
    }),
  };
}

/** The result, the check with a further pad, and the match. */
export const answersOf = (state: PadsState, style: Style = 'shown'): readonly [Answer, Answer, Answer] => [
  resultAnswer(style, state),
  stepAnswer(style, state),
  matchAnswer(style, state),
];

/** The settled state in one spoken sentence. */
export function summarise(state: PadsState): string {
  const [result, step, match] = answersOf(state, 'spoken');
  return aloud([result.figure, step.figure, `Mismatch ${match.figure}`]);
}
