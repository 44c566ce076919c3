import {
  dcSubstitution,
  estimateOf,
  gainDb,
  inLineLevel,
  inLinePower,
  inLineReflection,
  levelDbm,
  type MethodOutcome,
  ohms,
  oscilloscope,
  padsIntoMeter,
  peakDetector,
  powerW,
  voltsPeakToPeak,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';
import { rollOffFormulas } from './roll-off.ts';

const level = letter('L', 'dBm', 'level at the transmitter');
const resistance = letter('R', 'Ω', 'resistance of the load');
const forward = letter('P_\\mathrm{f}', 'W', 'forward power');
const reflected = letter('P_\\mathrm{r}', 'W', 'reflected power');
/** The estimate of an example that lies in range by its numbers. */
function estimate(outcome: MethodOutcome): number {
  if (!outcome.inRange)
    throw new RangeError(`estimate: outcome must be in range, got ${outcome.reason.code}`);
  return estimateOf(outcome.model);
}
const exact = (power: number) => ({ power: powerW(power), fullScale: powerW(power), percentOfFullScale: 0 });

/** Five ways to a power, and what the parts on the way do. */
export const methodFormulas = {
  oscilloscope: {
    tex: 'L = 10 \\lg \\frac{V_\\mathrm{pp}^2}{8 R \\cdot 1\\,\\mathrm{mW}} + \\delta_\\mathrm{roll}, \\quad 0 \\le \\delta_\\mathrm{roll} \\le 10 \\lg \\left( 1 + \\frac{f^2}{B^2} \\right)',
    symbols: {
      peakToPeak: letter('V_\\mathrm{pp}', 'V', 'voltage from trough to crest'),
      resistance,
      frequencyHz: letter('f', 'Hz', 'frequency'),
      bandwidthsHz: letter('B', 'Hz', 'bandwidth of oscilloscope and probe together'),
      result: level,
    },
    words:
      'Power from an oscilloscope across a load; out of range above 0.3 of the bandwidth or without termination.',
    sources: [
      { of: 'derived', clause: 'P = V²/R for a sine' },
      { of: 'commonPractice', clause: 'limits' },
    ],
    example: example(
      { peakToPeak: 20.4, resistance: 49.6, frequencyHz: 7.03e6, bandwidthsHz: 100e6 },
      (given) =>
        estimate(
          oscilloscope({
            peakToPeak: voltsPeakToPeak(given.peakToPeak),
            resistance: ohms(given.resistance),
            frequencyHz: given.frequencyHz,
            bandwidthsHz: [given.bandwidthsHz],
            terminated: true,
            influences: [],
          }),
        ),
    ),
  },
  peakDetector: {
    tex: 'L = 10 \\lg \\frac{(V_\\mathrm{dc} + V_\\mathrm{d})^2}{2 R \\cdot 1\\,\\mathrm{mW}}',
    symbols: {
      detectedV: letter('V_\\mathrm{dc}', 'V', 'DC voltage of the detector'),
      diodeDropV: letter('V_\\mathrm{d}', 'V', 'what the diode takes away'),
      resistance,
      result: level,
    },
    words: 'Power from a peak detector; out of range below 50 mW without a curve taken with DC.',
    sources: [
      { of: 'derived', clause: 'P = V²/R for a sine' },
      { of: 'commonPractice', clause: 'limit' },
    ],
    example: example({ detectedV: 16.77, diodeDropV: 0.55, resistance: 50 }, (given) =>
      estimate(
        peakDetector({ ...given, resistance: ohms(given.resistance), curveFromDc: false, influences: [] }),
      ),
    ),
  },
  padsIntoMeter: {
    tex: 'L = L_\\mathrm{r} + \\sum_i c_i - \\sum_j g_j',
    symbols: {
      reading: letter('L_\\mathrm{r}', 'dBm', 'reading'),
      corrections: letter('c_i', 'dB', 'corrections, added'),
      gains: letter('g_j', 'dB', 'gains of pads and cables, negative'),
      result: level,
    },
    words: 'Level before pads and cables from the reading behind them.',
    sources: [
      { of: 'vocabulary', clause: '2.53' },
      { of: 'derived', clause: 'a chain of decibels adds' },
    ],
    example: example({ reading: -13.4, corrections: [0], gains: [-20, -20, -0.2] }, (given) =>
      estimate(
        padsIntoMeter({
          reading: levelDbm(given.reading),
          corrections: given.corrections.map(gainDb),
          gains: given.gains.map(gainDb),
          influences: [],
        }),
      ),
    ),
  },
  inLinePower: {
    tex: 'P = \\left( P_\\mathrm{f} - P_\\mathrm{r} \\right) \\cdot 10^{\\sum_i \\delta_i / 10}',
    symbols: {
      forward,
      reflected,
      influences: letter('\\delta_i', 'dB', 'relative influences'),
      result: letter('P', 'W', 'net power'),
    },
    words:
      'Net power from an in-line directional meter; out of range where the error of full scale exceeds a third of the reading.',
    sources: [
      { of: 'derived', clause: 'two waves on a line' },
      { of: 'commonPractice', clause: 'limit' },
    ],
    example: example({ forward: 5, reflected: 0.2 }, (given) =>
      estimate(
        inLinePower({
          forward: exact(given.forward),
          reflected: exact(given.reflected),
          delivery: 'net',
          influences: [],
        }),
      ),
    ),
  },
  inLineLevel: {
    tex: 'L = 10 \\lg \\frac{P_\\mathrm{f} - P_\\mathrm{r}}{1\\,\\mathrm{mW}} + 10 \\lg \\left( 1 + \\varepsilon \\right) + \\sum_i \\delta_i, \\quad |\\varepsilon| \\le \\frac{a_\\mathrm{f} + a_\\mathrm{r}}{P_\\mathrm{f} - P_\\mathrm{r}}',
    symbols: {
      forward,
      reflected,
      percentOfFullScale: letter('a_\\mathrm{f}', 'W', 'limits of a scale, a share of full scale'),
      influences: letter('\\delta_i', 'dB', 'relative influences'),
      result: level,
    },
    words:
      'The same as a level, so that everything adds in decibels; out of range also where both errors of full scale exceed a third of the net power.',
    sources: [
      { of: 'derived', clause: 'two waves on a line' },
      { of: 'commonPractice', clause: 'limit' },
    ],
    example: example({ forward: 5, reflected: 0.2 }, (given) =>
      estimate(
        inLineLevel({
          forward: exact(given.forward),
          reflected: exact(given.reflected),
          delivery: 'net',
          influences: [],
        }),
      ),
    ),
  },
  inLineReflection: {
    tex: '\\rho_\\pm = \\sqrt{\\frac{P_\\mathrm{r} \\pm a_\\mathrm{r}}{P_\\mathrm{f} \\mp a_\\mathrm{f}}} \\pm 10^{-D/20}',
    symbols: {
      forward,
      reflected,
      directivityDb: letter('D', 'dB', 'directivity of the coupler, at least'),
      lower: letter('\\rho_\\pm', '1', 'limits of the reflection magnitude'),
    },
    words:
      'Limits of the reflection at an in-line meter, from the limits of both readings and from its directivity.',
    sources: [{ of: 'derived', clause: 'superposition of leaked and reflected wave' }],
    example: example({ forward: 5, reflected: 0.2, directivityDb: 25 }, (given) => {
      const range = inLineReflection({
        forward: exact(given.forward),
        reflected: exact(given.reflected),
        directivityDb: gainDb(given.directivityDb),
      });
      if (!range.inRange)
        throw new RangeError(`inLineReflection: reading must be in range, got ${range.reason.code}`);
      return range.upper;
    }),
  },
  dcSubstitution: {
    tex: 'L = 10 \\lg \\frac{V I}{1\\,\\mathrm{mW}} \\cdot \\frac{\\Delta T_\\mathrm{rf}}{\\Delta T_\\mathrm{dc}}',
    symbols: {
      volts: letter('V', 'V', 'DC voltage'),
      amperes: letter('I', 'A', 'direct current'),
      riseRfK: letter('\\Delta T_\\mathrm{rf}', 'K', 'rise of temperature with RF'),
      riseDcK: letter('\\Delta T_\\mathrm{dc}', 'K', 'rise of temperature with DC'),
      result: level,
    },
    words: 'Power of RF from the DC power that heats the same load as much.',
    sources: [{ of: 'derived', clause: 'equal heat' }],
    example: example({ volts: 10, amperes: 0.1995, riseRfK: 14.2, riseDcK: 14 }, (given) =>
      estimate(dcSubstitution({ ...given, influences: [] })),
    ),
  },
  ...rollOffFormulas,
} as const satisfies FormulaTopic;
