import {
  averageMeterRatio,
  crestFactor,
  dbmvToLevel,
  dbuvToLevel,
  dbvToLevel,
  formFactor,
  levelDbm,
  levelToDbmv,
  levelToDbuv,
  levelToDbv,
  levelToVolts,
  ohms,
  voltsRms,
  voltsToLevel,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';
import { joule, resistance, rms, sine, sineFormulas } from './sines.ts';

const level = letter('L', 'dBm', 'level');
const into = { level: 0, resistance: 50 };

/** Levels as voltages, and what a sine brings into a resistance. */
export const voltageFormulas = {
  ...sineFormulas,
  levelToVolts: {
    tex: 'V_\\mathrm{rms} = \\sqrt{1\\,\\mathrm{mW} \\cdot 10^{L/10}\\, R}',
    symbols: { level, resistance, result: rms },
    words: 'The voltage that a level is across a resistance.',
    sources: joule,
    example: example(into, (given) =>
      levelToVolts({ level: levelDbm(given.level), resistance: ohms(given.resistance) }),
    ),
  },
  voltsToLevel: {
    tex: 'L = 10 \\lg \\frac{V_\\mathrm{rms}^2}{R \\cdot 1\\,\\mathrm{mW}}',
    symbols: { volts: rms, resistance, result: level },
    words: 'The level that a voltage is across a resistance.',
    sources: joule,
    example: example({ volts: 5, resistance: 50 }, (given) =>
      voltsToLevel({ volts: voltsRms(given.volts), resistance: ohms(given.resistance) }),
    ),
  },
  levelToDbv: {
    tex: 'v = L + 10 \\lg \\frac{R}{1\\,\\Omega} - 30',
    symbols: { level, resistance, result: letter('v', 'dBV', 'voltage above 1 V') },
    words: 'A level across a resistance in decibels above one volt.',
    sources: joule,
    example: example(into, (given) =>
      levelToDbv({ level: levelDbm(given.level), resistance: ohms(given.resistance) }),
    ),
  },
  dbvToLevel: {
    tex: 'L = v - 10 \\lg \\frac{R}{1\\,\\Omega} + 30',
    symbols: { levelDbv: letter('v', 'dBV', 'voltage above 1 V'), resistance, result: level },
    words: 'Decibels above one volt across a resistance as a level.',
    sources: joule,
    example: example({ levelDbv: 0, resistance: 50 }, (given) =>
      dbvToLevel({ levelDbv: given.levelDbv, resistance: ohms(given.resistance) }),
    ),
  },
  levelToDbmv: {
    tex: 'v = L + 10 \\lg \\frac{R}{1\\,\\Omega} + 30',
    symbols: { level, resistance, result: letter('v', 'dBmV', 'voltage above 1 mV') },
    words: 'A level across a resistance in decibels above one millivolt.',
    sources: joule,
    example: example(into, (given) =>
      levelToDbmv({ level: levelDbm(given.level), resistance: ohms(given.resistance) }),
    ),
  },
  dbmvToLevel: {
    tex: 'L = v - 10 \\lg \\frac{R}{1\\,\\Omega} - 30',
    symbols: { levelDbmv: letter('v', 'dBmV', 'voltage above 1 mV'), resistance, result: level },
    words: 'Decibels above one millivolt across a resistance as a level.',
    sources: joule,
    example: example({ levelDbmv: 60, resistance: 50 }, (given) =>
      dbmvToLevel({ levelDbmv: given.levelDbmv, resistance: ohms(given.resistance) }),
    ),
  },
  levelToDbuv: {
    tex: 'v = L + 10 \\lg \\frac{R}{1\\,\\Omega} + 90',
    symbols: { level, resistance, result: letter('v', 'dBµV', 'voltage above 1 µV') },
    words: 'A level across a resistance in decibels above one microvolt.',
    sources: joule,
    example: example(into, (given) =>
      levelToDbuv({ level: levelDbm(given.level), resistance: ohms(given.resistance) }),
    ),
  },
  dbuvToLevel: {
    tex: 'L = v - 10 \\lg \\frac{R}{1\\,\\Omega} - 90',
    symbols: { levelDbuv: letter('v', 'dBµV', 'voltage above 1 µV'), resistance, result: level },
    words: 'Decibels above one microvolt across a resistance as a level.',
    sources: joule,
    example: example({ levelDbuv: 34, resistance: 50 }, (given) =>
      dbuvToLevel({ levelDbuv: given.levelDbuv, resistance: ohms(given.resistance) }),
    ),
  },
  crestFactor: {
    tex: 'k_\\mathrm{c} = \\frac{\\hat V}{V_\\mathrm{rms}}',
    symbols: { result: letter('k_\\mathrm{c}', '1', 'crest factor of a waveform') },
    words: 'Peak over RMS: root two for a sine, 1 for a square wave, root three for a triangle.',
    sources: sine,
    example: example({}, () => crestFactor('sine')),
  },
  formFactor: {
    tex: 'k_\\mathrm{f} = \\frac{V_\\mathrm{rms}}{\\overline{|V|}}',
    symbols: { result: letter('k_\\mathrm{f}', '1', 'form factor of a waveform') },
    words: 'RMS over rectified mean: 1.11 for a sine, 1 for a square wave, 1.15 for a triangle.',
    sources: sine,
    example: example({}, () => formFactor('sine')),
  },
  averageMeterRatio: {
    tex: 'r = \\frac{\\pi}{2\\sqrt 2} \\cdot \\frac{1}{k_\\mathrm{f}}',
    symbols: { result: letter('r', '1', 'indication over true RMS') },
    words: 'What an average-responding meter with a scale made for sines shows of another waveform.',
    sources: sine,
    example: example({}, () => averageMeterRatio('triangle')),
  },
} as const satisfies FormulaTopic;
