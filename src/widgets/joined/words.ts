import { dbToPercentOfPower, gainDb } from '#compute';
import {
  type JoinedOutcome,
  joinedOf,
  METER_KOHM,
  type MeterKind,
  PROBES,
  percentOfVoltsInDb,
} from '../../sheet/joined.ts';
import { aloud } from '../../text/aloud.ts';
import { changeText, numberText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type JoinedState, joiningOf } from './spec.ts';
import { strings } from './strings.ts';

type Answers = readonly [Answer, Answer, Answer];

type InRange = Extract<JoinedOutcome, { inRange: true }>;
type OutOfRange = Extract<JoinedOutcome, { inRange: false }>;

const PICO = 1e12;
/** Decimals of an error: hundredths of a decibel, tenths of a percent. */
const DECIMALS = { percent: 1, dB: 2 } as const;

const errorText = (style: Style, unit: InRange['unit'], value: number): string =>
  changeText(style, { value, decimals: DECIMALS[unit], unit });

/** As it stands beside its name, and on meters. */
const megohms = (style: Style, kilohms: number): string =>
  `${numberText(style, { value: kilohms / 1000, decimals: 0 })}\u00a0MΩ`;

function whyText(style: Style, meter: MeterKind): string {
  switch (meter) {
    case 'digital':
      return strings.why.digital(megohms(style, METER_KOHM.digital));
    case 'needle':
      return strings.why.needle(quantityText(style, { value: METER_KOHM.needle, decimals: 0, unit: 'kohm' }));
    case 'alternating':
      return strings.why.alternating;
    case 'probe1':
    case 'probe10': {
      const pico = numberText(style, { value: PROBES[meter].capacitanceF * PICO, decimals: 0 });
      return strings.why.probe(`${pico}\u00a0pF`);
    }
  }
}

const isProbe = (meter: MeterKind): boolean => meter === 'probe1' || meter === 'probe10';

/** The error as one of power: what a power that is worked out from the reading would be wrong by. */
function powerAnswer(style: Style, meter: MeterKind, { unit, error }: InRange): Answer {
  const db = unit === 'dB' ? error : percentOfVoltsInDb(error);
  const percent = changeText(style, {
    value: dbToPercentOfPower(gainDb(db)),
    decimals: 1,
    unit: 'percent',
  });
  return {
    figure: strings.power(errorText(style, 'dB', db)),
    words: isProbe(meter) ? strings.changed(percent) : strings.powerWords(percent),
  };
}

function rangeAnswer(style: Style, meter: MeterKind, { unit, lower, upper }: InRange): Answer {
  return {
    figure: strings.from({ lower: errorText(style, unit, lower), upper: errorText(style, unit, upper) }),
    words: isProbe(meter) ? strings.rolledOff : strings.stated,
  };
}

/** Decimals to which the highest frequency of a meter is said. */
const MOST_DECIMALS = { kHz: 0, MHz: 2 } as const;

function outAnswers(style: Style, meter: MeterKind, { most, unit }: OutOfRange): Answers {
  const decimals = MOST_DECIMALS[unit];
  // Rounded down, so that there is a number at what is said.
  const value = Math.floor(most * 10 ** decimals) / 10 ** decimals;
  const advice = isProbe(meter) ? strings.outAdvice.probe : strings.outAdvice.alternating;
  return [
    {
      figure: strings.outOfRange,
      words: strings.outWords(quantityText(style, { value, decimals, unit })),
    },
    { figure: strings.outSource, words: strings.outSourceWords },
    { figure: advice, words: strings.outAdviceWords },
  ];
}

/** What joining does, what that is of power, and where the reading may lie; out of range no number, and why. */
export function answersOf(state: JoinedState, style: Style = 'shown'): Answers {
  const found = joinedOf(joiningOf(state));
  const { meter } = state;
  if (!found.inRange) return outAnswers(style, meter, found);
  return [
    { figure: strings.off(errorText(style, found.unit, found.error)), words: whyText(style, meter) },
    powerAnswer(style, meter, found),
    rangeAnswer(style, meter, found),
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(state: JoinedState): string {
  const [off, power, range] = answersOf(state, 'spoken');
  const { spoken } = strings;
  return joinedOf(joiningOf(state)).inRange
    ? aloud([spoken.off(off.figure), spoken.power(power.figure), spoken.range(range.figure)])
    : aloud([off.figure, power.figure, range.figure]);
}
