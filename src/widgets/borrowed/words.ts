import {
  borrowedLine,
  correctionFor,
  isCompared,
  laterResult,
  lenderExpanded,
  placesOf,
} from '../../sheet/borrowed.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type BorrowedState, borrowedOf } from './spec.ts';
import { strings } from './strings.ts';
import { thermometerAnswers } from './thermometer-words.ts';

type Three = readonly [Answer, Answer, Answer];

const change = (style: Style, value: number): string => changeText(style, { value, decimals: 2, unit: 'dB' });
const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: halfWidth === 0 ? 2 : decimalsFor(halfWidth), unit: 'dB' });
const level = (style: Style, levelDbm: number, decimals: number): string =>
  levelText(style, { levelDbm, decimals });

/** The lowest U there is; or, where the lender's part was divided and something is claimed by it, what is due instead. */
function floorAnswer(style: Style, state: BorrowedState): Answer {
  const of = borrowedOf(state);
  if (of.shared === 'whole' || of.lender === 0 || !isCompared(of.readingDbm))
    return { figure: strings.floor(band(style, lenderExpanded(of))), words: strings.floorWords };
  const expanded = (shared: 'whole' | 'averaged'): string =>
    band(style, correctionFor({ ...of, shared }).expanded);
  const words = strings.averagedWords({ claimed: expanded('averaged'), due: expanded('whole') });
  return { figure: strings.averaged, words };
}

function meterAnswers(style: Style, state: BorrowedState): Three {
  const of = borrowedOf(state);
  const shown = level(style, of.readingDbm, 1);
  if (!isCompared(of.readingDbm)) {
    const { lower, upper } = borrowedLine().range;
    return [
      {
        figure: strings.none,
        words: strings.noneWords({ lower: level(style, lower, 1), upper: level(style, upper, 1) }),
      },
      { figure: strings.asShown(shown), words: strings.asShownWords },
      floorAnswer(style, state),
    ];
  }
  const correction = correctionFor(of);
  const later = laterResult(of);
  const { expanded } = later;
  return [
    {
      figure: strings.correction(`${change(style, correction.estimate)} ${band(style, correction.expanded)}`),
      words: strings.correctionWords,
    },
    {
      figure: `${level(style, later.estimate, decimalsFor(expanded))} ${band(style, expanded)}`,
      words: strings.laterWords({ shown, months: strings.months(of.months) }),
    },
    floorAnswer(style, state),
  ];
}

/** Correction, corrected reading and what no care gets below; for the thermometer correction, line and the covariance. */
export const answersOf = (state: BorrowedState, style: Style = 'shown'): Three =>
  state.item === 'meter' ? meterAnswers(style, state) : thermometerAnswers(style, state);

/** The settled state in one spoken sentence. */
export function summarise(state: BorrowedState): string {
  const [first, second, third] = answersOf(state, 'spoken');
  if (state.item === 'thermometer') return aloud([first.figure, second.figure, third.figure]);
  const reading = isCompared(state.reading) ? strings.spokenReading(second.figure) : second.figure;
  const last = third.figure === strings.averaged ? `${third.figure}: ${third.words}` : third.figure;
  return aloud([first.figure, reading, last]);
}

/** What the readings gave, level by level. */
export const placeRows = (): readonly (readonly [string, string, string])[] =>
  placesOf().map(({ at, correction, ownUncertainty }) => [
    level('shown', at, 2),
    change('shown', correction),
    band('shown', 2 * ownUncertainty),
  ]);
