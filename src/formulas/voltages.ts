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
  peakOfPeakToPeak,
  peakOfPower,
  peakOfRectifiedAverage,
  peakOfRms,
  peakToPeakOfPeak,
  peakToPeakOfPower,
  powerOfPeak,
  powerOfPeakToPeak,
  powerOfVolts,
  powerW,
  rectifiedAverageOfPeak,
  rmsOfPeak,
  voltsOfPower,
  voltsPeak,
  voltsPeakToPeak,
  voltsRms,
  voltsToLevel,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const resistance = letter('R', 'Ω', 'resistance that takes the power');
const power = letter('P', 'W', 'mean power');
const level = letter('L', 'dBm', 'level');
const rms = letter('V_\\mathrm{rms}', 'V', 'voltage RMS');
const peak = letter('\\hat V', 'V', 'peak of a sine');
const whole = letter('V_\\mathrm{pp}', 'V', 'voltage from trough to crest');
const joule = [{ of: 'derived', clause: 'P = V²/R' }] as const;
const sine = [
  { of: 'derived', clause: 'mean of a sine over a period' },
  { of: 'syllabus', clause: '1.6' },
] as const;
const average = letter('\\overline{|V|}', 'V', 'mean of the full-wave rectified sine');
const into = { level: 0, resistance: 50 };

/** Levels as voltages, and what a sine brings into a resistance. */
export const voltageFormulas = {
  rmsOfPeak: {
    tex: 'V_\\mathrm{rms} = \\frac{\\hat V}{\\sqrt 2}',
    symbols: { peak, result: rms },
    words: 'The RMS of a sine from its peak.',
    sources: sine,
    example: example({ peak: 10 }, (given) => rmsOfPeak(voltsPeak(given.peak))),
  },
  peakOfRms: {
    tex: '\\hat V = \\sqrt 2\\, V_\\mathrm{rms}',
    symbols: { rms, result: peak },
    words: 'The peak of a sine from its RMS.',
    sources: sine,
    example: example({ rms: 5 }, (given) => peakOfRms(voltsRms(given.rms))),
  },
  peakOfPeakToPeak: {
    tex: '\\hat V = \\frac{V_\\mathrm{pp}}{2}',
    symbols: { peakToPeak: whole, result: peak },
    words: 'The peak of a wave that is even about its middle, from trough to crest.',
    sources: [{ of: 'derived', clause: 'symmetry' }],
    example: example({ peakToPeak: 20.4 }, (given) => peakOfPeakToPeak(voltsPeakToPeak(given.peakToPeak))),
  },
  peakToPeakOfPeak: {
    tex: 'V_\\mathrm{pp} = 2 \\hat V',
    symbols: { peak, result: whole },
    words: 'From trough to crest, of a wave that is even about its middle.',
    sources: [{ of: 'derived', clause: 'symmetry' }],
    example: example({ peak: 10 }, (given) => peakToPeakOfPeak(voltsPeak(given.peak))),
  },
  rectifiedAverageOfPeak: {
    tex: '\\overline{|V|} = \\frac{2}{\\pi} \\hat V',
    symbols: { peak, result: average },
    words: 'The mean of a full-wave rectified sine.',
    sources: sine,
    example: example({ peak: 10 }, (given) => rectifiedAverageOfPeak(voltsPeak(given.peak))),
  },
  peakOfRectifiedAverage: {
    tex: '\\hat V = \\frac{\\pi}{2} \\overline{|V|}',
    symbols: { averageV: average, result: peak },
    words: 'The peak of a sine from the mean of its full-wave rectified form.',
    sources: sine,
    example: example({ averageV: 1 }, ({ averageV }) => peakOfRectifiedAverage(averageV)),
  },
  powerOfVolts: {
    tex: 'P = \\frac{V_\\mathrm{rms}^2}{R}',
    symbols: { volts: letter('V_\\mathrm{rms}', 'V', 'voltage RMS'), resistance, result: power },
    words: 'The mean power that a voltage of any waveform brings into a resistance.',
    sources: joule,
    example: example({ volts: 5, resistance: 50 }, (given) =>
      powerOfVolts({ volts: voltsRms(given.volts), resistance: ohms(given.resistance) }),
    ),
  },
  voltsOfPower: {
    tex: 'V_\\mathrm{rms} = \\sqrt{P R}',
    symbols: { power, resistance, result: rms },
    words: 'The voltage across a resistance that takes a power.',
    sources: joule,
    example: example({ power: 0.5, resistance: 50 }, (given) =>
      voltsOfPower({ power: powerW(given.power), resistance: ohms(given.resistance) }),
    ),
  },
  powerOfPeak: {
    tex: 'P = \\frac{\\hat V^2}{2 R}',
    symbols: { peak, resistance, result: power },
    words: 'The power of a sine from its peak.',
    sources: joule,
    example: example({ peak: 10, resistance: 50 }, (given) =>
      powerOfPeak({ peak: voltsPeak(given.peak), resistance: ohms(given.resistance) }),
    ),
  },
  peakOfPower: {
    tex: '\\hat V = \\sqrt{2 P R}',
    symbols: { power, resistance, result: peak },
    words: 'The peak of a sine that brings a power into a resistance.',
    sources: joule,
    example: example({ power: 1, resistance: 50 }, (given) =>
      peakOfPower({ power: powerW(given.power), resistance: ohms(given.resistance) }),
    ),
  },
  powerOfPeakToPeak: {
    tex: 'P = \\frac{V_\\mathrm{pp}^2}{8 R}',
    symbols: { peakToPeak: whole, resistance, result: power },
    words: 'The power of a sine from trough to crest: at 50 ohm its square over 400.',
    sources: joule,
    example: example({ peakToPeak: 20.4, resistance: 49.6 }, (given) =>
      powerOfPeakToPeak({
        peakToPeak: voltsPeakToPeak(given.peakToPeak),
        resistance: ohms(given.resistance),
      }),
    ),
  },
  peakToPeakOfPower: {
    tex: 'V_\\mathrm{pp} = \\sqrt{8 P R}',
    symbols: { power, resistance, result: whole },
    words: 'From trough to crest, of a sine that brings a power into a resistance.',
    sources: joule,
    example: example({ power: 1, resistance: 50 }, (given) =>
      peakToPeakOfPower({ power: powerW(given.power), resistance: ohms(given.resistance) }),
    ),
  },
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
