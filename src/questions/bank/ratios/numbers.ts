import {
  addGain,
  amplitudeRatioToDb,
  dbToPercentOfPower,
  dbToPercentOfVolts,
  dbToPowerRatio,
  gainDb,
  levelDbm,
  levelToPower,
  meanAsPowers,
  meanOfDecibels,
  powerRatioToDb,
  powerToLevel,
  powerW,
  sumOfGains,
  sumOfLevels,
} from '#compute';
import { numeric } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { exactly, factor, fixed, given, givenPower, power, sig, takenOff } from '../write.ts';

const lesson = 'decibels/ratios-that-add';
const levels = 'decibels/levels-and-gains';
const percent = 'decibels/a-decibel-is-not-a-percentage';
const syllabus = ['1.9'];
const db1 = fixed('dB', 1);
const dbm1 = fixed('dBm', 1);
const pct1 = fixed('percent', 1);
const toLevel = (watts: number): number => powerToLevel(powerW(watts));
const toPower = (dbm: number): number => levelToPower(levelDbm(dbm));

/** Ratios and levels with drawn numbers. */
export const RATIO_NUMBERS: readonly BankQuestion[] = [
  numeric('ratios', {
    id: 'watts-to-dbm',
    lesson: levels,
    syllabus,
    difficulty: 1,
    given: {
      watts: oneOf(
        0.02,
        0.05,
        0.1,
        0.2,
        0.25,
        0.4,
        0.5,
        0.8,
        1,
        1.5,
        2,
        2.5,
        3,
        4,
        5,
        8,
        10,
        15,
        20,
        25,
        40,
        50,
      ),
    },
    stem: ({ watts }) => `A transmitter gives ${givenPower(watts)}. What level is that?`,
    answer: ({ watts }) => toLevel(watts),
    write: dbm1,
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ watts }) => [
      [toLevel(watts) - 30, 'milliwatts-for-watts'],
      [2 * toLevel(watts), 'twenty-for-ten'],
    ],
    worked: ({ watts }) => [
      `In milliwatts: ${givenPower(watts)}/${given(1, 'mW')} = ${sig(1000 * watts, 4)}.`,
      `10 lg ${sig(1000 * watts, 4)} =`,
    ],
    right: 'Ten times the logarithm of how many milliwatts there are.',
  }),
  numeric('ratios', {
    id: 'dbm-to-watts',
    lesson: levels,
    syllabus,
    difficulty: 1,
    given: { level: steps(7, 44, 1) },
    stem: ({ level }) => `A power meter shows ${given(level, 'dBm')}. How much power is that?`,
    answer: ({ level }) => toPower(level),
    write: power(),
    wrong: ({ level }) => [
      [1000 * toPower(level), 'milliwatts-for-watts'],
      [
        toPower(level / 2),
        'twenty-for-ten',
        'That divides by twenty, as for volts. A level is of power: divide by ten.',
      ],
      [
        level / 1000,
        'db-as-factor',
        'The number of dBm is not the number of milliwatts: it is ten times their logarithm.',
      ],
    ],
    worked: ({ level }) => [`${given(1, 'mW')} times ten to the power of ${given(level)}/10 is`],
    right: 'A tenth of the level is the power of ten, counted in milliwatts.',
  }),
  numeric('ratios', {
    id: 'doublings',
    lesson,
    syllabus,
    difficulty: 1,
    given: { from: oneOf(1, 2, 2.5, 3, 4, 5, 6, 10, 12), twos: steps(1, 4, 1) },
    stem: ({ from, twos }) =>
      `An amplifier takes ${given(from, 'W')} and gives ${given(from * 2 ** twos, 'W')}. What is its gain?`,
    answer: ({ twos }) => powerRatioToDb(2 ** twos),
    write: db1,
    wrong: ({ from, twos }) => [
      [amplitudeRatioToDb(2 ** twos), 'six-per-doubling'],
      [from * 2 ** twos - from, 'difference-as-db'],
      [2 ** twos, 'ratio-as-db'],
      [10 * twos, 'ten-per-doubling'],
    ],
    worked: ({ from, twos }) => [
      `${given(from * 2 ** twos, 'W')}/${given(from, 'W')} = ${given(2 ** twos)}, which is 2${'¹²³⁴'[twos - 1]}: twice, ${twos === 1 ? 'once' : `${twos} times in a row`}.`,
      `Each doubling is 10 lg 2 = ${given(3.01, 'dB')}, and ${given(twos)} × ${given(3.01, 'dB')} =`,
    ],
    right: 'Count the doublings and give each three decibels.',
  }),
  numeric('ratios', {
    id: 'steps-of-three-and-ten',
    lesson,
    syllabus,
    difficulty: 2,
    given: { tens: steps(1, 3, 1), threes: steps(1, 2, 1) },
    stem: ({ tens, threes }) =>
      `In your head, with tens and threes: how many times the power is ${given(10 * tens + 3 * threes, 'dB')}?`,
    answer: ({ tens, threes }) => 10 ** tens * 2 ** threes,
    write: (value) => factor(String(Math.round(value)).replace(/0+$/, '').length)(value),
    wrong: ({ tens, threes }) => [
      [10 * tens + 3 * threes, 'db-as-factor'],
      [10 * tens + 2 * threes, 'factors-added'],
      [10 ** tens * 2 ** (threes - 1), 'one-step-short'],
      [10 ** tens * 2 ** (threes + 1), 'one-step-more'],
    ],
    worked: ({ tens, threes }) => [
      `${given(10 * tens + 3 * threes)} is ${[...Array(tens).fill('10'), ...Array(threes).fill('3')].join(' + ')}.`,
      `Decibels add, factors multiply: ${[...Array(tens).fill('10'), ...Array(threes).fill('2')].join(' × ')} = ${given(10 ** tens * 2 ** threes)}, so`,
    ],
    right: 'Ten decibels are ten times, three are twice.',
  }),
  numeric('ratios', {
    id: 'ratio-to-db',
    lesson,
    syllabus,
    difficulty: 2,
    given: { out: steps(12, 95, 1), into: oneOf(1.5, 2, 2.5, 4, 5, 6, 8) },
    suits: ({ out, into }) => out / into > 2.2 && Math.abs(Math.log2(out / into) % 1) > 0.02,
    stem: ({ out, into }) =>
      `${given(into, 'W')} go into an amplifier and ${given(out, 'W')} come out. What is its gain?`,
    answer: ({ out, into }) => powerRatioToDb(out / into),
    write: db1,
    typed: { quantity: 'gain', unit: 'dB', tolerance: { of: 'value', size: 0.15 } },
    wrong: ({ out, into }) => [
      [amplitudeRatioToDb(out / into), 'twenty-for-ten'],
      [out / into, 'ratio-as-db'],
      [out - into, 'difference-as-db'],
    ],
    worked: ({ out, into }) => [
      `${given(out, 'W')}/${given(into, 'W')} = ${sig(out / into, 4)}.`,
      `10 lg ${sig(out / into, 4)} =`,
    ],
    right: 'Ten times the logarithm of the ratio of the powers.',
  }),
  numeric('ratios', {
    id: 'volts-to-db',
    lesson,
    syllabus,
    difficulty: 2,
    given: { times: oneOf(1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 20, 30, 50) },
    stem: ({ times }) =>
      `Across the same load the voltage becomes ${given(times)} times as large. By how much does the level rise?`,
    answer: ({ times }) => amplitudeRatioToDb(times),
    write: db1,
    wrong: ({ times }) => [
      [powerRatioToDb(times), 'ten-for-twenty'],
      [times, 'ratio-as-db'],
      [
        2 * amplitudeRatioToDb(times),
        'twenty-for-ten',
        'That squares the volts and then takes twenty times the logarithm as well: the square is counted twice.',
      ],
    ],
    worked: ({ times }) => [
      `The power becomes ${given(times)}² = ${exactly(times * times)} times as large.`,
      `10 lg ${exactly(times * times)} = 20 lg ${given(times)} =`,
    ],
    right: 'Volts are squared in the power, so it is twenty times their logarithm.',
  }),
  numeric('ratios', {
    id: 'loss-to-percent-left',
    lesson: percent,
    syllabus,
    difficulty: 2,
    given: { loss: steps(0.3, 4, 0.1) },
    suits: ({ loss }) => Math.abs(loss - 3) > 0.15,
    stem: ({ loss }) =>
      `A cable loses ${given(loss, 'dB')}. What share of the power comes out at its far end?`,
    answer: ({ loss }) => 100 * dbToPowerRatio(gainDb(-loss)),
    write: pct1,
    wrong: ({ loss }) => [
      [
        100 + dbToPercentOfVolts(gainDb(-loss)),
        'volts-percent',
        'That is what is left of the volts. Of the power there is the square of that.',
      ],
      [-dbToPercentOfPower(gainDb(-loss)), 'lost-for-left'],
      [100 - 10 * loss, 'db-as-percent'],
    ],
    worked: ({ loss }) => [
      `Ten to the power of −${given(loss)}/10 is ${sig(dbToPowerRatio(gainDb(-loss)))}:`,
    ],
    right: 'The minus makes it less than the whole; ten in the exponent because it is power.',
  }),
  numeric('ratios', {
    id: 'gain-to-percent-more',
    lesson: percent,
    syllabus,
    difficulty: 2,
    given: { gain: steps(0.2, 2.5, 0.1) },
    suits: ({ gain }) => gain !== 1,
    stem: ({ gain }) =>
      `After a repair the output is ${given(gain, 'dB')} higher. By how much has the power risen?`,
    answer: ({ gain }) => dbToPercentOfPower(gainDb(gain)),
    write: pct1,
    wrong: ({ gain }) => [
      [dbToPercentOfVolts(gainDb(gain)), 'volts-percent'],
      [-dbToPercentOfPower(gainDb(-gain)), 'loss-for-gain'],
      [10 * gain, 'db-as-percent'],
    ],
    worked: ({ gain }) => [
      `Ten to the power of ${given(gain)}/10 is ${sig(dbToPowerRatio(gainDb(gain)), 4)}.`,
      `The rise is what is above one: ${sig(dbToPowerRatio(gainDb(gain)), 4)} − 1 =`,
    ],
    right: 'The factor less one, in per cent.',
  }),
  numeric('ratios', {
    id: 'one-db-down',
    lesson: percent,
    syllabus,
    difficulty: 2,
    given: {
      drop: oneOf(0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2),
      watts: oneOf(1, 2, 4, 5, 10),
    },
    stem: ({ drop, watts }) =>
      `As its battery empties, a transmitter of ${given(watts, 'W')} gives ${given(drop, 'dB')} less. By what share has its power fallen?`,
    answer: ({ drop }) => -dbToPercentOfPower(gainDb(-drop)),
    write: pct1,
    wrong: ({ drop }) => [
      [-dbToPercentOfVolts(gainDb(-drop)), 'volts-percent'],
      [dbToPercentOfPower(gainDb(drop)), 'gain-for-loss'],
      [
        dbToPercentOfVolts(gainDb(drop)),
        'volts-percent',
        'That is a percentage of volts, and of a rise at that. Asked is how much the power has fallen.',
      ],
    ],
    worked: ({ drop }) => [
      `Ten to the power of −${given(drop)}/10 is ${sig(dbToPowerRatio(gainDb(-drop)), 4)}: that share is left, whatever the watts.`,
      `What has gone is the rest: 1 − ${sig(dbToPowerRatio(gainDb(-drop)), 4)} =`,
    ],
    right: 'One less the factor; the watts do not matter.',
  }),
  numeric('ratios', {
    id: 'chain-level',
    lesson: levels,
    syllabus,
    difficulty: 2,
    given: {
      level: steps(-10, 10, 1),
      pad: oneOf(3, 6, 10, 20),
      gain: steps(12, 30, 1),
      cable: steps(0.5, 2.5, 0.1),
    },
    stem: ({ level, pad, gain, cable }) =>
      `A source of ${fixed('dBm', 0)(level)}, then a pad of ${given(pad, 'dB')}, an amplifier of ${given(gain, 'dB')} gain and a cable that loses ${given(cable, 'dB')}. What is the level at the end?`,
    answer: ({ level, pad, gain, cable }) =>
      addGain({ level: levelDbm(level), gain: sumOfGains([gainDb(-pad), gainDb(gain), gainDb(-cable)]) }),
    write: dbm1,
    wrong: ({ level, pad, gain, cable }) => [
      [level + pad + gain - cable, 'sign-of-loss', 'The pad takes away: its decibels are subtracted.'],
      [level - pad + gain + cable, 'sign-of-loss', 'The cable takes away: its decibels are subtracted.'],
      [level + gain - cable, 'link-left-out', 'The pad is missing from this sum.'],
      [level - pad - gain - cable, 'sign-of-gain'],
    ],
    worked: ({ level, pad, gain, cable }) => [
      `Gains are added, losses taken off: ${fixed('dBm', 0)(level)} − ${given(pad, 'dB')} + ${given(gain, 'dB')} − ${given(cable, 'dB')} =`,
    ],
    right: 'A level, and gains with their signs.',
  }),
  numeric('ratios', {
    id: 'chain-power',
    lesson: levels,
    syllabus,
    difficulty: 3,
    given: {
      level: steps(-5, 10, 1),
      pad: oneOf(3, 6, 10),
      gain: steps(10, 24, 1),
      cable: steps(0.5, 2, 0.1),
    },
    stem: ({ level, pad, gain, cable }) =>
      `A level of ${fixed('dBm', 0)(level)} goes through a pad of ${given(pad, 'dB')}, an amplifier of ${given(gain, 'dB')} gain and a cable that loses ${given(cable, 'dB')}. How much power arrives?`,
    answer: ({ level, pad, gain, cable }) => toPower(level - pad + gain - cable),
    write: power(),
    typed: { quantity: 'power', unit: 'mW', tolerance: { of: 'share', size: 0.02 } },
    wrong: ({ level, pad, gain, cable }) => [
      [
        toPower(level + pad + gain - cable),
        'sign-of-loss',
        'The pad takes away: its decibels are subtracted.',
      ],
      [
        toPower(level - pad + gain + cable),
        'sign-of-loss',
        'The cable takes away: its decibels are subtracted.',
      ],
      [
        toPower((level - pad + gain - cable) / 2),
        'twenty-for-ten',
        'The level is of power: ten in the exponent, not twenty.',
      ],
    ],
    worked: ({ level, pad, gain, cable }) => [
      `In decibels first: ${fixed('dBm', 0)(level)} − ${given(pad, 'dB')} + ${given(gain, 'dB')} − ${given(cable, 'dB')} = ${dbm1(level - pad + gain - cable)}.`,
      `Then once to milliwatts: ${given(1, 'mW')} times ten to the power of ${fixed('none', 1)(level - pad + gain - cable)}/10 is`,
    ],
    right: 'All in decibels, and turned into milliwatts once, at the end.',
  }),
  numeric('ratios', {
    id: 'missing-pad',
    lesson: levels,
    syllabus,
    difficulty: 2,
    given: { into: steps(20, 40, 1), gain: steps(8, 15, 1), out: steps(5, 19, 1) },
    stem: ({ into, gain, out }) =>
      `A level of ${given(into, 'dBm')} goes into a pad, an amplifier of ${given(gain, 'dB')} gain follows, and ${given(out, 'dBm')} come out. How much does the pad take?`,
    answer: ({ into, gain, out }) => into + gain - out,
    write: fixed('dB', 0),
    typed: { quantity: 'loss', unit: 'dB', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ into, gain, out }) => [
      [
        into - out,
        'link-left-out',
        'The amplifier has lifted the level again: the pad takes what is missing and that besides.',
      ],
      [into - gain - out, 'sign-of-gain', 'The amplifier lifts: the pad has to take more, not less.'],
      [into + out + gain, 'levels-added'],
    ],
    worked: ({ into, gain, out }) => [
      `What the pad takes is what would come out without it, less what does: ${given(into, 'dBm')} + ${given(gain, 'dB')} − ${given(out, 'dBm')} =`,
    ],
    right: 'What went in and what the amplifier added, less what came out.',
  }),
  numeric('ratios', {
    id: 'levels-apart',
    lesson: levels,
    syllabus,
    difficulty: 1,
    given: { first: steps(20, 37, 1), second: steps(-30, 12, 1) },
    stem: ({ first, second }) =>
      `One meter shows ${given(first, 'dBm')}, one further down the line ${fixed('dBm', 0)(second)}. How many decibels lie between them?`,
    answer: ({ first, second }) => first - second,
    write: fixed('dB', 0),
    suits: ({ second }) => second < -2,
    wrong: ({ first, second }) => [
      [
        first + second,
        'added-for-subtracted',
        'The second level is below nought: taking it away makes the distance longer.',
      ],
      [
        -second,
        'from-nought',
        'That is only the way from nought to the second meter. The first one is on the other side.',
      ],
      [
        first - second - 30,
        'milliwatts-for-watts',
        'Both count from a milliwatt: nothing has to be changed over.',
      ],
    ],
    worked: ({ first, second }) => [
      `A level less a level is a number of decibels: ${given(first, 'dBm')} − ${takenOff(fixed('dBm', 0)(second))} =`,
    ],
    right: 'A difference of two levels is a ratio, in dB.',
  }),
  numeric('ratios', {
    id: 'two-unrelated',
    lesson: levels,
    difficulty: 3,
    given: { level: steps(-20, 20, 1), below: steps(1, 6, 1) },
    stem: ({ level, below }) =>
      `Two unrelated signals of ${fixed('dBm', 0)(level)} and ${fixed('dBm', 0)(level - below)} meet in one power meter. What does it show?`,
    answer: ({ level, below }) => sumOfLevels([levelDbm(level), levelDbm(level - below)]),
    write: dbm1,
    wrong: ({ level, below }) => [
      [2 * level - below, 'levels-added'],
      [level + 20 * Math.log10(1 + 10 ** (-below / 20)), 'unrelated-as-volts'],
      [level, 'largest-only'],
    ],
    worked: ({ level, below }) => {
      const [one, two] = [toPower(level), toPower(level - below)];
      return [
        `${given(level, 'dBm')} is ${power(4)(one)}, ${given(level - below, 'dBm')} is ${power(4)(two)}; ${power(4)(one)} + ${power(4)(two)} = ${power(4)(one + two)}.`,
        `As a level ${power(4)(one + two)} is`,
      ];
    },
    right: 'The milliwatts add, then once back to dBm.',
  }),
  numeric('ratios', {
    id: 'mean-of-sessions',
    lesson: percent,
    difficulty: 3,
    given: { low: steps(8, 30, 1), apart: steps(3, 8, 1) },
    stem: ({ low, apart }) =>
      `A transmitter gives ${given(low, 'dBm')} for one minute and ${given(low + apart, 'dBm')} for the next. What level has its mean power over the two?`,
    answer: ({ low, apart }) => meanAsPowers([levelDbm(low), levelDbm(low + apart)]),
    write: fixed('dBm', 2),
    wrong: ({ low, apart }) => [
      [meanOfDecibels([levelDbm(low), levelDbm(low + apart)]), 'mean-of-db'],
      [sumOfLevels([levelDbm(low), levelDbm(low + apart)]), 'sum-for-mean'],
      [
        low + 20 * Math.log10((1 + 10 ** (apart / 20)) / 2),
        'unrelated-as-volts',
        'That averages the volts. Power goes with their squares.',
      ],
    ],
    worked: ({ low, apart }) => {
      const [one, two] = [toPower(low), toPower(low + apart)];
      return [
        `${given(low, 'dBm')} is ${power(4)(one)}, ${given(low + apart, 'dBm')} is ${power(4)(two)}; the mean is (${power(4)(one)} + ${power(4)(two)})/2 = ${power(4)((one + two) / 2)}.`,
        `As a level ${power(4)((one + two) / 2)} is`,
      ];
    },
    right: 'The power itself varies, so powers are averaged.',
  }),
];
