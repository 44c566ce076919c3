import { correctionAt, errorDb, knownTo, verified } from '../../sheet/own-meter.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type MeterState, useOf } from './spec.ts';
import { strings } from './strings.ts';

const change = (style: Style, db: number): string =>
  changeText(style, { value: db, decimals: 2, unit: 'dB' });
const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

/** What is written down, and what is wrong or right with it. */
function resultAnswer(style: Style, state: MeterState): Answer {
  const use = useOf(state);
  const off = change(style, errorDb(use));
  const shown = levelText(style, { levelDbm: use.readingDbm, decimals: 1 });
  if (use.treatment === 'asRead') return { figure: shown, words: strings.asRead(off) };
  const found = knownTo(use);
  if (found === undefined) return { figure: shown, words: strings.adjusted(off) };
  const { expanded } = found.propagation;
  const level = levelText(style, {
    levelDbm: use.readingDbm + correctionAt(use.readingDbm),
    decimals: decimalsFor(expanded),
  });
  return {
    figure: `${level} ${band(style, expanded)}`,
    words: strings.corrected(strings.months(use.months)),
  };
}

/** The correction at this reading with its uncertainty. */
function correctionAnswer(style: Style, state: MeterState): Answer {
  const use = useOf(state);
  const found = knownTo(use);
  const correction = correctionAt(use.readingDbm);
  return {
    figure: strings.correction(change(style, correction)),
    words: found
      ? strings.correctionWords({
          error: change(style, -correction),
          expanded: band(style, found.propagation.expanded),
        })
      : strings.correctionVoid,
  };
}

/** Whether the meter keeps to its limit here. */
function verdictAnswer(style: Style, state: MeterState): Answer {
  const use = useOf(state);
  const judged = verified(use);
  if (judged === undefined) return { figure: strings.notVerified, words: strings.notVerifiedWords };
  const limit = plusMinusText(style, { halfWidth: use.permissibleDb, decimals: 2, unit: 'dB' });
  return {
    figure: strings.limit({ verdict: strings.verdict[judged.verdict], limit }),
    words: strings.verdictWords,
  };
}

/** Result, correction, and verification. */
export const answersOf = (state: MeterState, style: Style = 'shown'): readonly [Answer, Answer, Answer] => [
  resultAnswer(style, state),
  correctionAnswer(style, state),
  verdictAnswer(style, state),
];

/** The settled state in one spoken sentence. */
export function summarise(state: MeterState): string {
  const [result, correction, verdict] = answersOf(state, 'spoken');
  const { spoken, notVerified } = strings;
  const judged = verdict.figure === notVerified ? notVerified : spoken.limit(verdict.figure);
  return aloud([spoken.result(result.figure), correction.figure, judged]);
}
