import {
  coherentSum,
  gainDb,
  levelDbm,
  levelDifference,
  levelToPower,
  powerW,
  sumOfGains,
  sumOfLevels,
} from '#compute';
import { powerText } from '../text/power-text.ts';
import { dbText, levelText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const level = (levelDb: number, decimals = 1): string => levelText('shown', { levelDbm: levelDb, decimals });
const db = (value: number, decimals = 1): string => dbText('shown', { db: value, decimals });
const power = (levelDb: number): string =>
  powerText('shown', { powerW: levelToPower(levelDbm(levelDb)), digits: 3 });

/** The guess that opens the lesson on levels: two transmitters in one load. */
export function twoTransmitters({ each = 17 } = {}): Question {
  const both = [levelDbm(each), levelDbm(each)];
  const right = sumOfLevels(both);
  const inPhase = coherentSum(both.map((one) => ({ level: one, phaseDegrees: 0 })));
  return {
    id: 'levels-two-transmitters',
    stem: `Two transmitters on different frequencies each bring ${level(each, 0)} into one load. What does a power meter that averages show there?`,
    answer: 'c',
    worked: `Each brings ${power(each)}. Unrelated powers add, so there are ${power(right)}: ${level(right)}, about ${db(3, 0)} more than one.`,
    options: [
      {
        id: 'a',
        text: level(2 * each),
        reply: `That would be ${power(2 * each)}, out of two times ${power(each)}. Adding dBm multiplies milliwatts.`,
      },
      {
        id: 'b',
        text: level(each),
        reply: 'Then the second one would have brought nothing. A meter that heats up shows both.',
      },
      { id: 'c', text: level(right), reply: 'Twice the power, three decibels more.' },
      {
        id: 'd',
        text: level(inPhase),
        reply:
          'That is what two signals of one frequency make, if they are in phase: their volts add. These are on different frequencies.',
      },
    ],
  };
}

/** From the meter back to the socket. */
export function throughTheChain({ reading = 7, pad = 20, coax = 0.1 } = {}): Question {
  const back = (gains: readonly number[]): number => reading + sumOfGains(gains.map(gainDb));
  const right = back([pad, coax]);
  return {
    id: 'levels-through-the-chain',
    stem: `A meter reads ${level(reading)} behind a ${db(pad, 0)} pad and coax that loses ${db(coax)}. What level is at the transmitter’s socket?`,
    answer: 'b',
    worked: `The pad and the coax took ${db(pad + coax)} away; going back to the socket you put them on again: ${level(reading)} + ${db(pad, 0)} + ${db(coax)} = ${level(right)}, or ${power(right)}.`,
    options: [
      {
        id: 'a',
        text: level(back([-pad, -coax])),
        reply: 'That goes the wrong way: it would be the level behind one more such pad and coax.',
      },
      { id: 'b', text: level(right), reply: 'A level and two gains, the losses put back.' },
      {
        id: 'c',
        text: level(back([coax])),
        reply: `That forgets the pad. ${db(pad, 0)} is a factor of a hundred in power.`,
      },
      {
        id: 'd',
        text: level(back([pad, pad, coax])),
        reply: 'That puts the pad back twice. It happens where the meter has been told of the pad already.',
      },
    ],
  };
}

/** What a negative level means. */
export function whatIsNegative({ reading = -10 } = {}): Question {
  const milliwatts = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'mW' });
  return {
    id: 'levels-what-is-negative',
    stem: `A receiver shows ${level(reading, 0)}. How much power is that?`,
    answer: 'a',
    worked: `${level(reading, 0)} is ${db(-reading, 0)} below one milliwatt: a tenth of it, ${power(reading)}.`,
    options: [
      {
        id: 'a',
        text: power(reading),
        reply: 'Below a milliwatt the logarithm is negative; the power is not.',
      },
      {
        id: 'b',
        text: milliwatts(reading),
        reply: 'No receiver gives power back. The minus is the logarithm’s.',
      },
      { id: 'c', text: power(-reading), reply: `That is ${level(-reading, 0)}: the sign counts.` },
      {
        id: 'd',
        text: power(reading / 2),
        reply: 'That takes twenty before the logarithm. A level compares powers: ten.',
      },
    ],
  };
}

/** From one level to another: how much gain? */
export function levelsApart({ from = 17, to = 27 } = {}): Question {
  const right = levelDifference({ level: levelDbm(to), reference: levelDbm(from) });
  const more = levelToPower(levelDbm(to)) - levelToPower(levelDbm(from));
  return {
    id: 'levels-difference',
    stem: `An amplifier takes ${level(from, 0)} and gives ${level(to, 0)}. What is its gain?`,
    answer: 'd',
    worked: `A level less a level is a ratio: ${level(to, 0)} − ${level(from, 0)} = ${db(right, 0)}. The milliwatt that both are compared with drops out.`,
    options: [
      {
        id: 'a',
        text: level(right, 0),
        reply: `That would be a power, ${power(right)}. A gain is a ratio, so its unit is dB.`,
      },
      {
        id: 'b',
        text: level(from + to, 0),
        reply: `Two levels added mean nothing; as a power it would be ${power(from + to)}.`,
      },
      {
        id: 'c',
        text: powerText('shown', { powerW: powerW(more), digits: 3 }),
        reply:
          'That is the difference in watts. It says how much more comes out; a gain says how many times as much.',
      },
      { id: 'd', text: db(right, 0), reply: 'Ten times the power, whatever the milliwatts.' },
    ],
  };
}
