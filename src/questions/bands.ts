import {
  dbToPercentOfPower,
  gainDb,
  type Interval,
  levelDbm,
  levelToPower,
  meanAsPowers,
  meanOfDecibels,
  percentLimitsToDb,
  percentOfPowerToDb,
  sumOfLevels,
} from '#compute';
import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { intervalText } from '../text/interval-text.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, levelText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

/** Two powers in whole milliwatts, all options alike: digits should not give the answer away. */
const between = ({ lower, upper }: Interval): string =>
  intervalText('shown', { lower: 1000 * lower, upper: 1000 * upper, decimals: 0, unit: 'mW' });
const level = (dbm: number, decimals: number): string => levelText('shown', { levelDbm: dbm, decimals });
const apart = (db: number): string => changeText('shown', { value: db, decimals: 2, unit: 'dB' });
const evenDb = (half: number, decimals = 2): string =>
  plusMinusText('shown', { halfWidth: half, decimals, unit: 'dB' });
const evenPercent = (half: number, decimals = 0): string =>
  plusMinusText('shown', { halfWidth: half, decimals, unit: 'percent' });

/** Percent of power at both ends of an interval in dB. */
const percentEnds = ({ lower, upper }: Interval): Interval => ({
  lower: dbToPercentOfPower(gainDb(lower)),
  upper: dbToPercentOfPower(gainDb(upper)),
});
const percentText = (ends: Interval): string =>
  deviationsText('shown', { ...ends, decimals: 1, unit: 'percent' });

/** The guess that opens the lesson: which watts are one decibel to either side? */
export function oneDecibel({ reading = 27, half = 1 } = {}): Question {
  const watts = (dbm: number): number => levelToPower(levelDbm(dbm));
  const middle = watts(reading);
  const right = { lower: watts(reading - half), upper: watts(reading + half) };
  const ends = percentEnds({ lower: -half, upper: half });
  const even = (percent: number): Interval => ({
    lower: middle * (1 - percent / 100),
    upper: middle * (1 + percent / 100),
  });
  return {
    id: 'bands-one-decibel',
    stem: `A power is stated as ${level(reading, 0)} ${evenDb(half, 0)}. In watts, between which values is that?`,
    answer: 'd',
    worked: `${level(reading - half, 0)} is ${powerText('shown', { powerW: right.lower, digits: 3 })} and ${level(reading + half, 0)} is ${powerText('shown', { powerW: right.upper, digits: 3 })}: ${percentText(ends)} of the ${powerText('shown', { powerW: middle, digits: 3 })} in the middle.`,
    options: [
      {
        id: 'a',
        text: between(even(half)),
        reply: `That is ${evenPercent(half)}. A decibel is not a percentage: it is a factor of about one and a quarter.`,
      },
      {
        id: 'b',
        text: between(even(10 * half)),
        reply: `That is ${evenPercent(10 * half)} of power: about what ${evenDb(percentOfPowerToDb(10 * half), 1)} would be.`,
      },
      {
        id: 'c',
        text: between(even(ends.upper)),
        reply:
          'The upper end is right, and it was taken for both. Downwards a decibel is fewer watts than upwards.',
      },
      { id: 'd', text: between(right), reply: 'Each end turned into watts for itself.' },
    ],
  };
}

/** Three per cent of volts: how much of power? */
export function threePercentOfVolts({ percent = 3 } = {}): Question {
  const ends = percentEnds(percentLimitsToDb({ percent, quantity: 'volts', of: 'reading' }));
  return {
    id: 'bands-three-percent',
    stem: `An oscilloscope reads a voltage across a known load; the true one is within ${evenPercent(percent)} of the reading. How far may the power be off?`,
    answer: 'b',
    worked: `Power goes as the square: (1 + ${percent / 100})² and (1 − ${percent / 100})² are ${percentText(ends)}. A small error doubles; it is not squared.`,
    options: [
      {
        id: 'a',
        text: evenPercent(percent),
        reply:
          'That forgets that the voltage enters twice: once for the volts, once for the current that they drive.',
      },
      { id: 'b', text: percentText(ends), reply: 'Twice as much, and a little more upwards than downwards.' },
      {
        id: 'c',
        text: evenPercent(percent ** 2),
        reply: `That squares the percentage. It is the voltage that is squared, and ${evenPercent(percent)} of it becomes about twice that.`,
      },
      {
        id: 'd',
        text: evenPercent(percent / 2, 1),
        reply: 'That halves where it should double: a root has the half, a square has the double.',
      },
    ],
  };
}

/** A band that is even in watts: how far is its other end in dB? */
export function otherEnd({ share = 1 / 3 } = {}): Question {
  const percent = 100 * share;
  const right = { lower: percentOfPowerToDb(-percent), upper: percentOfPowerToDb(percent) };
  return {
    id: 'bands-other-end',
    stem: 'An in-line meter shows 3 W, and the true power may lie 1 W to either side. How far is that in decibels?',
    answer: 'c',
    worked: `4 W over 3 W is ${apart(right.upper)}, and 2 W over 3 W is ${apart(right.lower)}: a third less is a larger factor than a third more.`,
    options: [
      {
        id: 'a',
        text: evenDb(right.upper),
        reply: 'That is the upper end, taken for both. Down to 2 W it is farther.',
      },
      {
        id: 'b',
        text: evenDb(-right.lower),
        reply: 'That is the lower end, taken for both. Up to 4 W it is not as far.',
      },
      {
        id: 'c',
        text: deviationsText('shown', { ...right, decimals: 2, unit: 'dB' }),
        reply: 'Even in watts, lopsided in decibels: the other way round.',
      },
      {
        id: 'd',
        text: evenDb(percent / 10),
        reply: 'That takes ten per cent for a decibel. A decibel is about a quarter more, or a fifth less.',
      },
    ],
  };
}

/** Which mean is the mean power? */
export function whichMean({ levels = [7, 10, 13] as readonly number[] } = {}): Question {
  const given = levels.map(levelDbm);
  const right = meanAsPowers(given);
  const shown = (dbm: number): string => level(dbm, 1);
  return {
    id: 'bands-mean',
    stem: `A transmitter runs at ${levels.map((dbm) => level(dbm, 0)).join(', then ')}, a minute each, by a switch on it. What level does the mean power have?`,
    answer: 'a',
    worked: `The power itself changes, so the watts are averaged: ${levels.map((dbm) => powerText('shown', { powerW: levelToPower(levelDbm(dbm)), digits: 3 })).join(', ')} have the mean ${powerText('shown', { powerW: levelToPower(right), digits: 3 })}, which is ${shown(right)}.`,
    options: [
      { id: 'a', text: shown(right), reply: 'The loud minute counts for more: it has more watts.' },
      {
        id: 'b',
        text: shown(meanOfDecibels(given)),
        reply:
          'That is the mean of the decibels. It would be right for one steady power and an instrument that scatters.',
      },
      {
        id: 'c',
        text: shown(sumOfLevels(given)),
        reply: 'That is all three at once, not one after the other: divide by three.',
      },
      {
        id: 'd',
        text: shown(levels.reduce((sum, dbm) => sum + dbm, 0)),
        reply: 'Levels added mean nothing.',
      },
    ],
  };
}
