import {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToPowerRatio,
  gainDb,
  levelDbm,
  levelToPower,
  powerRatioToDb,
  powerToLevel,
  powerW,
} from '#compute';
import { factorText } from '../text/factor-text.ts';
import { powerText } from '../text/power-text.ts';
import { dbText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

/** Three digits, or as many as a round number has. */
const digitsOf = (value: number): number =>
  Math.abs(value - Math.round(value)) < 1e-9 ? String(Math.round(value)).length : 3;
const watts = (power: number): string =>
  powerText('shown', { powerW: power, digits: power < 1 ? 3 : digitsOf(power) });
const db = (value: number, decimals = 1): string => dbText('shown', { db: value, decimals });
const factor = (ratio: number): string =>
  factorText('shown', { ratio, digits: digitsOf(Math.max(ratio, 1 / ratio)) });

/** The guess that opens the lesson on ratios: what is left behind two pads? */
export function behindTwoPads({ power = 0.5, losses = [20, 6] } = {}): Question {
  const total = losses.reduce((sum, loss) => sum + loss, 0);
  const left = levelToPower(levelDbm(powerToLevel(powerW(power)) - total));
  const pads = losses.map((loss) => db(loss, 0)).join(' and one of ');
  const ratio = dbToPowerRatio(gainDb(-total));
  return {
    id: 'ratios-behind-two-pads',
    stem: `The hidden transmitter gives ${watts(power)} into a pad of ${pads}, one after the other. About how much power comes out of the second?`,
    answer: 'c',
    worked: `In decibels the pads simply add: ${db(total, 0)}. That is ${factor(ratio)} in power, so ${watts(power)} becomes ${watts(left)}.`,
    options: [
      {
        id: 'a',
        text: watts(power / total),
        reply: `That divides by ${total}, the number of decibels. Decibels count the steps, they are not the factor.`,
      },
      {
        id: 'b',
        text: watts(power * dbToAmplitudeRatio(gainDb(-total))),
        reply: `That is ${factor(dbToAmplitudeRatio(gainDb(-total)))}: the factor for volts. Power goes as its square.`,
      },
      { id: 'c', text: watts(left), reply: 'Two tens and two threes: ten times ten times two times two.' },
      {
        id: 'd',
        text: watts(power - total / 1000),
        reply: `That takes ${total} milliwatts away. A pad takes a share of whatever comes in, not an amount.`,
      },
    ],
  };
}

/** From five watts to forty: how many decibels? */
export function doublings({ from = 5, to = 40 } = {}): Question {
  const ratio = to / from;
  const right = powerRatioToDb(ratio);
  const twos = Math.round(Math.log2(ratio));
  return {
    id: 'ratios-doublings',
    stem: `One transmitter gives ${watts(from)}, another ${watts(to)}. How far apart are they?`,
    answer: 'b',
    worked: `${watts(to)} is ${factor(ratio)} as much: ${twos} doublings, and each is about ${db(3, 0)}. 10 lg ${ratio} is ${db(right, 2)}.`,
    options: [
      {
        id: 'a',
        text: db(to - from, 0),
        reply:
          'That is the difference in watts with another unit behind it. Decibels say how many times, not how many more.',
      },
      { id: 'b', text: db(right, 1), reply: `Doublings counted: ${twos} times ${db(3, 0)}.` },
      {
        id: 'c',
        text: db(amplitudeRatioToDb(ratio), 1),
        reply: 'That is 20 lg of a ratio of powers. Twenty belongs to volts; watts take ten.',
      },
      {
        id: 'd',
        text: db(ratio, 1),
        reply: `That is the ratio itself, with a unit that does not belong to it. ${db(ratio, 0)} would be ${factor(dbToPowerRatio(gainDb(ratio)))}.`,
      },
    ],
  };
}

/** The trace grows to twice its height: how many decibels? */
export function twiceTheVolts({ ratio = 2 } = {}): Question {
  const right = amplitudeRatioToDb(ratio);
  return {
    id: 'ratios-twice-the-volts',
    stem: 'Across the same load, a sine on the oscilloscope grows to twice its height. By how much did the level rise?',
    answer: 'c',
    worked: `Twice the volts across one resistance is ${factor(ratio ** 2)} in power, since power goes as the square. 10 lg ${ratio ** 2} and 20 lg ${ratio} are the same number: ${db(right, 2)}.`,
    options: [
      {
        id: 'a',
        text: db(powerRatioToDb(ratio), 1),
        reply: 'That is 10 lg of the ratio of volts. It would be right if the power had doubled.',
      },
      {
        id: 'b',
        text: db(ratio, 1),
        reply: 'That is the ratio itself, not its logarithm.',
      },
      {
        id: 'c',
        text: db(right, 1),
        reply: 'Decibels always compare powers; 20 lg of volts does the squaring.',
      },
      {
        id: 'd',
        text: db(amplitudeRatioToDb(ratio ** 2), 1),
        reply: 'That squares twice: once by hand, and once more by writing 20 before the logarithm.',
      },
    ],
  };
}

/** Seventeen decibels without a calculator. */
export function seventeen({ gain = 17 } = {}): Question {
  const exact = dbToPowerRatio(gainDb(gain));
  const ones = gain - 10;
  return {
    id: 'ratios-seventeen',
    stem: `An amplifier is said to have a gain of ${db(gain, 0)}. Without a calculator: how many times the power comes out?`,
    answer: 'b',
    worked: `${gain} is 10 + 10 − 3: ten times ten, halved. The head says ${factor(10 * 10 * 0.5)}, the formula ${factor(exact)}.`,
    options: [
      {
        id: 'a',
        text: factor(gain),
        reply: 'That takes the decibels for the factor. At 10 dB they happen to agree, here they do not.',
      },
      { id: 'b', text: factor(exact), reply: 'Two tens up, one three down.' },
      {
        id: 'c',
        text: factor(dbToAmplitudeRatio(gainDb(gain))),
        reply:
          'That is how many times the volts, into the same resistance. The power goes as the square of it.',
      },
      {
        id: 'd',
        text: factor(10 * ones),
        reply: `That takes ten for ${db(10, 0)} and ${ones} for ${db(ones, 0)}. ${db(ones, 0)} is ${factor(dbToPowerRatio(gainDb(ones)))}.`,
      },
    ],
  };
}
