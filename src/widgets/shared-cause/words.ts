import { correlationOfPair, type SharedPair, withCause } from '../../sheet/shared-cause.ts';
import { correlationBetween, impedanceOf } from '../../sheet/simultaneous.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { independentWidthOf, widthOf } from './figure.ts';
import { type SharedState, type SharedSubject, subjectOf } from './spec.ts';
import { strings } from './strings.ts';

type Answers = readonly [Answer, Answer, Answer];

/** Decimals of a width of nothing, which fixes none. */
const DECIMALS_OF_NOTHING = 2;

const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, {
    halfWidth,
    decimals: halfWidth > 0 ? decimalsFor(halfWidth) : DECIMALS_OF_NOTHING,
    unit: 'dB',
  });
const coefficient = (style: Style, value: number): string => numberText(style, { value, decimals: 2 });
const ohm = (style: Style, value: number): string => quantityText(style, { value, decimals: 3, unit: 'ohm' });

/** Widths closer than this, in dB, are the same to whoever reads them. */
const SAME_DB = 1e-9;

function judgedOf(subject: SharedSubject): string {
  const more = independentWidthOf(subject) - widthOf(subject);
  if (Math.abs(more) < SAME_DB) return strings.same;
  return more < 0 ? strings.tooNarrow : strings.tooWide;
}

function pairAnswers(style: Style, pair: SharedPair): Answers {
  const subject = { kind: 'pair', pair } as const;
  const { interval } = withCause(pair).worstCase;
  return [
    { figure: band(style, widthOf(subject)), words: strings.together(pair.combined) },
    {
      figure: strings.coefficient(coefficient(style, correlationOfPair(pair))),
      words: strings.independent({
        width: band(style, independentWidthOf(subject)),
        judged: judgedOf(subject),
      }),
    },
    { figure: band(style, interval.upper), words: strings.worst },
  ];
}

/** The three coefficients of the readings, the one that matters most first. */
function readAnswer(style: Style): Answer {
  const { read, readCoefficient } = strings;
  const text = (pair: string, r: number): string => readCoefficient({ pair, r: coefficient(style, r) });
  const others = [
    text(read.vi, correlationBetween('V', 'I')),
    text(read.iPhi, correlationBetween('I', 'phi')),
  ];
  return {
    figure: text(read.vPhi, correlationBetween('V', 'phi')),
    words: strings.readWords(others.join(', ')),
  };
}

function impedanceAnswers(
  style: Style,
  subject: Extract<SharedSubject, { readonly kind: 'impedance' }>,
): Answers {
  const { output, counted } = subject;
  const { estimate, standardUncertainty } = impedanceOf(subject);
  const none = independentWidthOf(subject);
  const times = none / widthOf({ ...subject, counted: 1 });
  return [
    {
      figure: strings.impedance({
        output,
        value: ohm(style, estimate),
        u: ohm(style, standardUncertainty),
      }),
      words: strings.impedanceWords(percentText(style, { percent: 100 * counted, decimals: 0 })),
    },
    readAnswer(style),
    {
      figure: strings.leftOut(ohm(style, none)),
      words: strings.leftOutWords(numberText(style, { value: times, decimals: 2 })),
    },
  ];
}

/** The result, what ties its parts, and what to compare it with. */
export function answersOf(state: SharedState, style: Style = 'shown'): Answers {
  const subject = subjectOf(state);
  return subject.kind === 'pair' ? pairAnswers(style, subject.pair) : impedanceAnswers(style, subject);
}

/** The settled state in one spoken sentence. */
export function summarise(state: SharedState): string {
  const [result, tie, other] = answersOf(state, 'spoken');
  if (subjectOf(state).kind === 'impedance') return aloud([result.figure, tie.figure, other.figure]);
  return aloud([strings.spoken.result(result.figure), tie.figure, strings.spoken.worst(other.figure)]);
}
