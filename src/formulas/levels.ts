import {
  addGain,
  amplitudeRatioToDb,
  coherentSum,
  dbToAmplitudeRatio,
  dbToNeper,
  dbToPowerRatio,
  dbwToLevel,
  gainDb,
  intervalInWatts,
  levelDbm,
  levelDifference,
  levelToDbw,
  levelToPower,
  meanAsPowers,
  meanOfDecibels,
  neperToDb,
  powerRatioToDb,
  powerToLevel,
  powerW,
  sumOfGains,
  sumOfLevels,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const gain = letter('g', 'dB', 'gain, negative for a loss');
const level = letter('L', 'dBm', 'level');
const power = letter('P', 'W', 'power');
const levels = letter('L_i', 'dBm', 'the single levels');
const definition = [{ of: 'siBrochure', clause: 'chapter 4' }, { of: 'decibelUse' }] as const;
const isDefinition = [{ of: 'decibelUse' }] as const;

/** Ratios, levels, and their sums and means. */
export const levelFormulas = {
  powerRatioToDb: {
    tex: 'g = 10 \\lg \\frac{P}{P_0}',
    symbols: { powerRatio: letter('\\frac{P}{P_0}', '1', 'ratio of two powers'), result: gain },
    words: 'The decibels in a ratio of two powers.',
    sources: definition,
    example: example({ powerRatio: 2 }, ({ powerRatio }) => powerRatioToDb(powerRatio)),
  },
  dbToPowerRatio: {
    tex: '\\frac{P}{P_0} = 10^{g/10}',
    symbols: { gain, result: letter('\\frac{P}{P_0}', '1', 'ratio of two powers') },
    words: 'The ratio of powers that a gain in decibels stands for.',
    sources: definition,
    example: example({ gain: -20 }, (given) => dbToPowerRatio(gainDb(given.gain))),
  },
  amplitudeRatioToDb: {
    tex: 'g = 20 \\lg \\frac{V}{V_0}',
    symbols: {
      amplitudeRatio: letter('\\frac{V}{V_0}', '1', 'ratio of two voltages across equal resistances'),
      result: gain,
    },
    words: 'The decibels in a ratio of two voltages across equal resistances.',
    sources: definition,
    example: example({ amplitudeRatio: 2 }, ({ amplitudeRatio }) => amplitudeRatioToDb(amplitudeRatio)),
  },
  dbToAmplitudeRatio: {
    tex: '\\frac{V}{V_0} = 10^{g/20}',
    symbols: {
      gain,
      result: letter('\\frac{V}{V_0}', '1', 'ratio of two voltages across equal resistances'),
    },
    words: 'The ratio of voltages that a gain in decibels stands for, at equal resistances.',
    sources: definition,
    example: example({ gain: 6 }, (given) => dbToAmplitudeRatio(gainDb(given.gain))),
  },
  neperToDb: {
    tex: 'g = \\frac{20}{\\ln 10}\\, n',
    symbols: { gainNeper: letter('n', 'Np', 'gain in nepers'), result: gain },
    words: 'A gain in nepers as decibels.',
    sources: [{ of: 'neper' }, { of: 'siBrochure', clause: 'chapter 4' }],
    example: example({ gainNeper: 1 }, ({ gainNeper }) => neperToDb(gainNeper)),
  },
  dbToNeper: {
    tex: 'n = \\frac{\\ln 10}{20}\\, g',
    symbols: { gain, result: letter('n', 'Np', 'gain in nepers') },
    words: 'A gain in decibels as nepers.',
    sources: [{ of: 'neper' }, { of: 'siBrochure', clause: 'chapter 4' }],
    example: example({ gain: 20 }, (given) => dbToNeper(gainDb(given.gain))),
  },
  sumOfGains: {
    tex: 'g = \\sum_i g_i',
    symbols: { gains: letter('g_i', 'dB', 'gains of the links, negative for pads and cables'), result: gain },
    words: 'The gain of several links in a row.',
    sources: [{ of: 'derived', clause: 'logarithm of a product' }],
    example: example({ gains: [-20, -0.4] }, ({ gains }) => sumOfGains(gains.map(gainDb))),
  },
  levelToPower: {
    tex: 'P = 1\\,\\mathrm{mW} \\cdot 10^{L/10}',
    symbols: { level, result: power },
    words: 'The power that a level stands for.',
    sources: isDefinition,
    example: example({ level: 27 }, (given) => levelToPower(levelDbm(given.level))),
  },
  powerToLevel: {
    tex: 'L = 10 \\lg \\frac{P}{1\\,\\mathrm{mW}}',
    symbols: { power, result: level },
    words: 'The level of a power.',
    sources: isDefinition,
    example: example({ power: 0.5 }, (given) => powerToLevel(powerW(given.power))),
  },
  levelToDbw: {
    tex: 'W = L - 30',
    symbols: { level, result: letter('W', 'dBW', 'level above one watt') },
    words: 'A level above one milliwatt as a level above one watt.',
    sources: isDefinition,
    example: example({ level: 27 }, (given) => levelToDbw(levelDbm(given.level))),
  },
  dbwToLevel: {
    tex: 'L = W + 30',
    symbols: { levelDbw: letter('W', 'dBW', 'level above one watt'), result: level },
    words: 'A level above one watt as a level above one milliwatt.',
    sources: isDefinition,
    example: example({ levelDbw: -3 }, ({ levelDbw }) => dbwToLevel(levelDbw)),
  },
  addGain: {
    tex: 'L_2 = L + g',
    symbols: { level, gain, result: letter('L_2', 'dBm', 'level behind the link') },
    words: 'The level behind a link: a level and a gain make a level.',
    sources: [{ of: 'derived', clause: 'logarithm of a product' }],
    example: example({ level: 27, gain: -20 }, (given) =>
      addGain({ level: levelDbm(given.level), gain: gainDb(given.gain) }),
    ),
  },
  levelDifference: {
    tex: 'g = L - L_0',
    symbols: { level, reference: letter('L_0', 'dBm', 'level compared with'), result: gain },
    words: 'How far one level lies above another: two levels make a gain.',
    sources: [{ of: 'derived', clause: 'logarithm of a quotient' }],
    example: example({ level: 27, reference: 24 }, (given) =>
      levelDifference({ level: levelDbm(given.level), reference: levelDbm(given.reference) }),
    ),
  },
  intervalInWatts: {
    tex: 'P_\\pm: \\quad 1\\,\\mathrm{mW} \\cdot 10^{L_-/10} \\;\\ldots\\; 1\\,\\mathrm{mW} \\cdot 10^{L_+/10}',
    symbols: {
      lower: letter('L_-', 'dBm', 'lower level'),
      upper: letter('L_+', 'dBm', 'upper level'),
      result: letter('P_\\pm', 'W', 'lower and upper power'),
    },
    words: 'An interval of levels in watts, end by end: even in decibels is lopsided in watts.',
    sources: isDefinition,
    example: example(
      { lower: 25.5, upper: 28.5 },
      (given) => intervalInWatts({ lower: levelDbm(given.lower), upper: levelDbm(given.upper) }).upper,
    ),
  },
  sumOfLevels: {
    tex: 'L = 10 \\lg \\sum_i 10^{L_i/10}',
    symbols: { levels, result: level },
    words: 'The level of unrelated signals together: their powers add.',
    sources: [{ of: 'derived', clause: 'mean powers of unrelated signals add' }],
    example: example({ levels: [17, 17] }, (given) => sumOfLevels(given.levels.map(levelDbm))),
  },
  coherentSum: {
    tex: 'L = 20 \\lg \\left| \\sum_i 10^{L_i/20}\\, e^{j\\varphi_i} \\right|',
    symbols: {
      level: levels,
      phaseDegrees: letter('\\varphi_i', '°', 'their phases'),
      result: level,
    },
    words: 'The level of signals of one frequency with fixed phases: their voltages add as arrows.',
    sources: [{ of: 'derived', clause: 'superposition' }],
    example: example({ level: 17, phaseDegrees: [0, 90] }, (given) =>
      coherentSum(given.phaseDegrees.map((phaseDegrees) => ({ level: levelDbm(given.level), phaseDegrees }))),
    ),
  },
  meanAsPowers: {
    tex: '\\bar L_P = 10 \\lg \\frac{1}{n} \\sum_i 10^{L_i/10}',
    symbols: { levels, result: letter('\\bar L_P', 'dBm', 'level of the mean power') },
    words: 'The level of the mean power: right where the power itself varies.',
    sources: [{ of: 'derived', clause: 'definition of the mean' }],
    example: example({ levels: [10, 10, 13] }, (given) => meanAsPowers(given.levels.map(levelDbm))),
  },
  meanOfDecibels: {
    tex: '\\bar L = \\frac{1}{n} \\sum_i L_i',
    symbols: { levels, result: letter('\\bar L', 'dBm', 'mean of the levels') },
    words: 'The mean of the decibels: right for an instrument that scatters in decibels.',
    sources: [{ of: 'derived', clause: 'logarithm of the geometric mean' }],
    example: example({ levels: [10, 10, 13] }, (given) => meanOfDecibels(given.levels.map(levelDbm))),
  },
} as const satisfies FormulaTopic;
