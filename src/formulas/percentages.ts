import {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  gainDb,
  percentLimitsToDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  smallPercentToDb,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const gain = letter('g', 'dB', 'change in decibels');
const percent = letter('p', '%', 'change in percent');
const sources = [{ of: 'derived', clause: 'definition of the decibel' }] as const;

/** Percentages of power and of volts as decibels. */
export const percentFormulas = {
  percentOfPowerToDb: {
    tex: 'g = 10 \\lg \\left( 1 + \\frac{p}{100} \\right)',
    symbols: { percent, result: gain },
    words: 'A change of power in percent as decibels.',
    sources,
    example: example({ percent: 5 }, (given) => percentOfPowerToDb(given.percent)),
  },
  dbToPercentOfPower: {
    tex: 'p = 100 \\left( 10^{g/10} - 1 \\right)',
    symbols: { gain, result: percent },
    words: 'A change in decibels as percent of power.',
    sources,
    example: example({ gain: 1 }, (given) => dbToPercentOfPower(gainDb(given.gain))),
  },
  percentOfVoltsToDb: {
    tex: 'g = 20 \\lg \\left( 1 + \\frac{p}{100} \\right)',
    symbols: { percent, result: gain },
    words: 'A change of voltage in percent as decibels: power goes as its square.',
    sources,
    example: example({ percent: 3 }, (given) => percentOfVoltsToDb(given.percent)),
  },
  dbToPercentOfVolts: {
    tex: 'p = 100 \\left( 10^{g/20} - 1 \\right)',
    symbols: { gain, result: percent },
    words: 'A change in decibels as percent of volts.',
    sources,
    example: example({ gain: 1 }, (given) => dbToPercentOfVolts(gainDb(given.gain))),
  },
  smallPercentToDb: {
    tex: 'g \\approx \\frac{10 q}{\\ln 10} \\cdot \\frac{p}{100}, \\quad q = 1 \\text{ for power}, 2 \\text{ for volts}',
    symbols: { percent, quantity: letter('q', '1', 'how often the quantity enters power'), result: gain },
    words: 'The small-error rule: one percent of power is about 0.043 dB, of volts 0.087 dB.',
    sources: [{ of: 'derived', clause: 'first term of the logarithm' }],
    example: example({ percent: 1 }, (given) =>
      smallPercentToDb({ percent: given.percent, quantity: 'power' }),
    ),
  },
  percentLimitsToDb: {
    tex: 'g_\\pm = 10 q \\lg \\left( 1 \\pm \\frac{p}{100} \\right) \\text{ of the reading}, \\quad -10 q \\lg \\left( 1 \\mp \\frac{p}{100} \\right) \\text{ of the true value}',
    symbols: {
      percent,
      quantity: letter('q', '1', '1 for power, 2 for volts'),
      result: letter('g_\\pm', 'dB', 'limits of the true level against the reading'),
    },
    words:
      'Where the true level can lie if a reading is good to a percentage; it depends on what the percentage is of.',
    sources,
    example: example(
      { percent: 3 },
      (given) => percentLimitsToDb({ percent: given.percent, quantity: 'volts', of: 'trueValue' }).upper,
    ),
  },
} as const satisfies FormulaTopic;
