import {
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
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

export const resistance = letter('R', 'Ω', 'resistance that takes the power');
const power = letter('P', 'W', 'mean power');
export const rms = letter('V_\\mathrm{rms}', 'V', 'voltage RMS');
const peak = letter('\\hat V', 'V', 'peak of a sine');
const whole = letter('V_\\mathrm{pp}', 'V', 'voltage from trough to crest');
export const joule = [{ of: 'derived', clause: 'P = V²/R' }] as const;
export const sine = [
  { of: 'derived', clause: 'mean of a sine over a period' },
  { of: 'syllabus', clause: '1.6' },
] as const;
const average = letter('\\overline{|V|}', 'V', 'mean of the full-wave rectified sine');

/** What a sine brings into a resistance. */
export const sineFormulas = {
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
} as const satisfies FormulaTopic;
