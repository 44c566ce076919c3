import { mismatchLossDb } from '#compute';
import {
  inLineFound,
  type NoReading,
  scaleErrorW,
  scaleLimitsDb,
  swrFound,
  unreadable,
} from '../../sheet/in-line-meter.ts';
import { aloud } from '../../text/aloud.ts';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { powerIntervalText, powerText } from '../../text/power-text.ts';
import { dbText, numberText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { methodLevel } from '../parts/level-words.ts';
import { type InLineState, inLineOf } from './spec.ts';
import { strings } from './strings.ts';

const reasonText = (style: Style, reason: NoReading): string =>
  typeof reason === 'string' ? strings[reason] : outOfRangeText(style, reason);
const watts = (style: Style, power: number): string => powerText(style, { powerW: power, digits: 2 });
const two = (style: Style, value: number): string => numberText(style, { value, decimals: 2 });

function powerAnswer(style: Style, state: InLineState): Answer {
  const outcome = inLineFound(inLineOf(state));
  if (!outcome.found) return { figure: strings.none, words: reasonText(style, outcome.reason) };
  const { figure, words } = methodLevel(style, outcome.result);
  return { figure, words: strings.found({ what: strings.wanted[state.wanted], watts: words }) };
}

function scaleAnswer(style: Style, state: InLineState): Answer {
  const use = inLineOf(state);
  const reason = unreadable(use);
  if (reason) return { figure: strings.noScale, words: reasonText(style, reason) };
  const error = scaleErrorW(use);
  const of = { forward: watts(style, use.forwardW), limit: `±${watts(style, error)}` };
  if (scaleLimitsDb(use, use.forwardW) === undefined)
    return { figure: strings.noScale, words: strings.noScaleWords(of) };
  return {
    figure: powerIntervalText(style, { lowerW: use.forwardW - error, upperW: use.forwardW + error }),
    words: strings.scaleWords(of),
  };
}

function swrAnswer(style: Style, state: InLineState): Answer {
  const outcome = swrFound(inLineOf(state));
  if (!outcome.found) return { figure: strings.noSwr, words: reasonText(style, outcome.reason) };
  const { swr, lower, upper } = outcome;
  const loss = mismatchLossDb((swr - 1) / (swr + 1));
  return {
    figure: strings.swr(two(style, swr)),
    words: strings.swrWords({
      range: Number.isFinite(upper)
        ? strings.swrRange({ lower: two(style, lower), upper: two(style, upper) })
        : strings.swrAbove(two(style, lower)),
      loss: dbText(style, { db: loss, decimals: 2 }),
    }),
  };
}

/** The power, what the scale alone makes of the forward needle, and the match. */
export const answersOf = (state: InLineState, style: Style = 'shown'): readonly [Answer, Answer, Answer] => [
  powerAnswer(style, state),
  scaleAnswer(style, state),
  swrAnswer(style, state),
];

/** The settled state in one spoken sentence. */
export function summarise(state: InLineState): string {
  const [power, scale, swr] = answersOf(state, 'spoken');
  const forward =
    scale.figure === strings.noScale ? strings.spokenNoScale : strings.spokenScale(scale.figure);
  return aloud([power.figure, power.figure === strings.none ? power.words : '', forward, swr.figure]);
}
