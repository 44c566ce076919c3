import {
  addGain,
  antennaGainOver,
  dbToAmplitudeRatio,
  dbToPowerRatio,
  eirp,
  erp,
  gainDb,
  heatInPad,
  levelDbm,
  levelToPower,
  powerToLevel,
  powerW,
} from '#compute';
import { powerText } from '../text/power-text.ts';
import { dbText, levelText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const watts = (power: number): string => powerText('shown', { powerW: power, digits: 3 });
const dbm = (value: number, decimals = 1): string => levelText('shown', { levelDbm: value, decimals });
const db = (value: number, decimals = 1): string => dbText('shown', { db: value, decimals });
const both = (level: number): string => `${dbm(level)}, ${watts(levelToPower(levelDbm(level)))}`;

/** The guess that opens the lesson: what arrives behind two pads and a piece of coax? */
export function lineAtInput({ level = 27, losses = [20, 0.1, 20] } = {}): Question {
  const loss = losses.reduce((sum, one) => sum + one, 0);
  const [first = 0, coax = 0, second = 0] = losses;
  const right = addGain({ level: levelDbm(level), gain: gainDb(-loss) });
  return {
    id: 'line-at-input',
    stem: `${dbm(level)} go through a pad of ${db(first, 0)}, a piece of coax with ${db(coax)}, and a second pad of ${db(second, 0)}. What arrives at the receiver behind them?`,
    wall: `${dbm(level)} go through two pads of ${db(first, 0)} each, with a piece of coax of ${db(coax)} between them. What arrives at the receiver behind them?`,
    answer: 'c',
    worked: `In decibels every part is taken away in turn: ${db(loss)} in all. ${dbm(level)} less ${db(loss)} is ${dbm(right)}: ${watts(levelToPower(right))}, small and well above nothing.`,
    options: [
      {
        id: 'a',
        text: both(level + loss),
        reply: 'That adds the losses. Pads take away; adding them is the way back.',
      },
      {
        id: 'b',
        text: both(0 - right),
        reply:
          'That drops the sign. The level has gone below one milliwatt, and a negative dBm says just that.',
      },
      { id: 'c', text: both(right), reply: 'Each part taken away in turn.' },
      {
        id: 'd',
        text: 'Nothing: below 0 dBm there is no power.',
        reply: `0 dBm is ${watts(levelToPower(levelDbm(0)))}. Below it there is less than that, and never none.`,
      },
    ],
  };
}

/** Where the power of a pad goes. */
export function lineHeat({ power = powerW(5), lossDb = 10 } = {}): Question {
  const gain = gainDb(-lossDb);
  const right = heatInPad({ power, gain });
  const out = power * dbToPowerRatio(gain);
  return {
    id: 'line-heat',
    stem: `${watts(power)} go into a pad of ${db(lossDb, 0)}. How much of it becomes heat in the pad?`,
    answer: 'b',
    worked: `What goes in and does not come out is heat. ${db(lossDb, 0)} let a share of ${watts(out)} through; ${watts(power)} less that is ${watts(right)}.`,
    options: [
      { id: 'a', text: watts(out), reply: 'That is what comes out. The rest stays in the pad.' },
      { id: 'b', text: watts(right), reply: 'In less out. The first pad of a line is always the hot one.' },
      {
        id: 'c',
        text: watts(power * (1 - dbToAmplitudeRatio(gain))),
        reply: 'That takes the factor for volts. Power is divided by its square.',
      },
      {
        id: 'd',
        text: watts(power),
        reply: `All of it would stay in a dummy load. A pad lets a share through: ${watts(out)} here.`,
      },
    ],
  };
}

/** The way back from a reading. */
export function lineBack({ reading = -20.3, lossDb = 30 } = {}): Question {
  const right = addGain({ level: levelDbm(reading), gain: gainDb(lossDb) });
  const power = (level: number): number => levelToPower(levelDbm(level));
  return {
    id: 'line-back',
    stem: `A receiver behind a pad of ${db(lossDb, 0)} shows ${dbm(reading)}. What power goes into the pad?`,
    answer: 'a',
    worked: `On the way back the loss is added: ${dbm(reading)} and ${db(lossDb, 0)} make ${dbm(right)}, which is ${watts(power(right))}.`,
    options: [
      { id: 'a', text: watts(power(right)), reply: 'The loss added back, once, and then turned into watts.' },
      {
        id: 'b',
        text: watts(power(reading)),
        reply: 'That forgets the pad: a factor of a thousand. It is the power at the receiver.',
      },
      {
        id: 'c',
        text: watts(power(reading - lossDb)),
        reply: 'That takes the pad away once more. The reading is already behind it.',
      },
      {
        id: 'd',
        text: watts(power(reading) * lossDb),
        reply:
          'That multiplies the power by the number of decibels. Decibels are added to the level, and only there.',
      },
    ],
  };
}

/** From one reference antenna to the other. */
export function lineErp({ power = powerW(10) } = {}): Question {
  const dipoleDbi = antennaGainOver('isotropic', { gain: gainDb(0), over: 'halfWaveDipole' });
  const parts = {
    level: powerToLevel(power),
    feeder: gainDb(0),
    antenna: { gain: gainDb(0), over: 'isotropic' },
  } as const;
  const right = levelToPower(erp(parts));
  const wrongWay = levelToPower(eirp({ ...parts, antenna: { gain: gainDb(0), over: 'halfWaveDipole' } }));
  return {
    id: 'line-erp',
    stem: `A rule speaks of ${watts(power)} EIRP. How much is that as ERP?`,
    answer: 'd',
    worked: `A half-wave dipole has ${db(dipoleDbi, 2)} over an isotropic radiator, so the same field needs that much less into a dipole: ${dbm(powerToLevel(power), 2)} less ${db(dipoleDbi, 2)} is ${dbm(erp(parts), 2)}, ${watts(right)}.`,
    options: [
      {
        id: 'a',
        text: watts(power),
        reply:
          'The field is the same, the reference is not: the two numbers differ by the dipole’s own gain.',
      },
      {
        id: 'b',
        text: watts(wrongWay),
        reply: 'The other way round. The better reference antenna needs less power.',
      },
      {
        id: 'c',
        text: watts(power - dipoleDbi),
        reply: 'That takes decibels away from watts. Go to dBm first.',
      },
      { id: 'd', text: watts(right), reply: 'Less, because a dipole already gathers the power a little.' },
    ],
  };
}
