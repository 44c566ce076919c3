import {
  correctedReading,
  correctionLine,
  correctionOf,
  estimateOf,
  normal,
  padByDc,
  padBySwap,
  readCorrection,
  readCorrectionTable,
  type SumModel,
  transferModel,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';
import { validityFormulas } from './validity.ts';

const alternation = [{ of: 'commonPractice', clause: 'substitution in the sequence A-B-A' }] as const;
const correction = letter('c', 'dB', 'correction of one’s own instrument');
const lender = {
  id: 'lender',
  distribution: normal({ mean: 0, standardDeviation: 0.1 }),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
};
const found = (constant: number): SumModel => ({
  kind: 'sum',
  constant,
  inputs: [lender],
  sensitivities: [1],
});
const points = [
  { at: 0, correction: -0.7, standardUncertainty: 0.05 },
  { at: 10, correction: -0.72, standardUncertainty: 0.05 },
  { at: 20, correction: -0.8, standardUncertainty: 0.05 },
];

/** Borrowed calibrations, pads measured at home, checks of validity, and what would help. */
export const transferFormulas = {
  correctionOf: {
    tex: "c = \\frac{1}{n} \\sum_i \\left( \\frac{A_i + A_i'}{2} - B_i \\right)",
    symbols: {
      before: letter('A_i', 'dBm', 'reference before'),
      own: letter('B_i', 'dBm', 'one’s own reading between'),
      after: letter("A_i'", 'dBm', 'reference after'),
      result: correction,
    },
    words: 'The correction from alternating readings: a drift that is straight in time cancels.',
    sources: alternation,
    example: example({ before: [7.34, 7.35], own: [8.1, 8.11], after: [7.36, 7.35] }, (given) =>
      known(
        correctionOf(
          given.before.map((before, i) => ({
            before,
            own: known(given.own[i]),
            after: known(given.after[i]),
          })),
        ).correction,
      ),
    ),
  },
  transferModel: {
    tex: 'c = \\bar c + \\delta_s + \\delta_\\mathrm{d} + \\delta_\\mathrm{l} + \\sum_i \\delta_i, \\quad u_s = \\frac{s}{\\sqrt n}',
    symbols: {
      found: letter('\\bar c', 'dB', 'mean of the rounds, with scatter and drift'),
      lender: letter(
        '\\delta_\\mathrm{l}',
        'dB',
        'deviation of the lender, not divided by the number of rounds',
      ),
      parts: letter('\\delta_i', 'dB', 'resolution, temperature, mismatch'),
      result: correction,
    },
    words: 'A correction with everything that makes it uncertain, as a sum.',
    sources: alternation,
    example: example({ found: -0.75 }, (given) =>
      estimateOf(
        transferModel({
          found: { correction: given.found, rounds: 5, standardDeviation: 0.06, driftHalfWidth: 0.1 },
          lender,
        }),
      ),
    ),
  },
  correctedReading: {
    tex: 'L = L_\\mathrm{r} + c + \\sum_i \\delta_i',
    symbols: {
      reading: letter('L_\\mathrm{r}', 'dBm', 'a later reading'),
      correction,
      parts: letter('\\delta_i', 'dB', 'scatter, resolution, temperature and mismatch of that reading'),
      result: letter('L', 'dBm', 'corrected level'),
    },
    words: 'A later reading, corrected: it carries the correction and its own uncertainty.',
    sources: [{ of: 'vocabulary', clause: '2.53' }],
    example: example({ reading: 7.9, correction: -0.75 }, (given) =>
      estimateOf(correctedReading({ reading: given.reading, correction: found(given.correction) })),
    ),
  },
  correctionLine: {
    tex: 'c(x) = \\bar c + b (x - \\bar x), \\quad b = \\frac{\\sum_i w_i (x_i - \\bar x)(c_i - \\bar c)}{\\sum_i w_i (x_i - \\bar x)^2}, \\quad w_i = u_i^{-2}',
    symbols: {
      at: letter('x_i', 'own', 'levels or frequencies of the points'),
      correction: letter('c_i', 'dB', 'corrections there'),
      standardUncertainty: letter('u_i', 'dB', 'their uncertainties, without what all share'),
      slope: letter('b', 'own', 'slope'),
      result: letter('c(x)', 'dB', 'correction anywhere between'),
    },
    words: 'A line through corrections of unequal uncertainty.',
    sources: [{ of: 'gum', clause: 'H.3' }, { of: 'weightedMean' }],
    example: example({}, () => known(correctionLine(points).slope)),
  },
  readCorrection: {
    tex: 'u^2(x) = u^2(\\bar c) + (x - \\bar x)^2 u^2(b) + u_\\mathrm{l}^2',
    symbols: {
      at: letter('x', 'own', 'where the line is read'),
      line: letter('u^2(b)', 'own', 'squared uncertainty of the slope'),
      common: letter('u_\\mathrm{l}', 'dB', 'uncertainty that all points share, added whole'),
    },
    words: 'The correction at a place between the points; outside them there is none.',
    sources: [{ of: 'gum', clause: 'H.3.4' }],
    example: example({ at: 15 }, (given) =>
      estimateOf(readCorrection({ line: correctionLine(points), ...given, common: [lender] })),
    ),
  },
  readCorrectionTable: {
    tex: 'c(x) = c_1 + \\frac{x - x_1}{x_2 - x_1} (c_2 - c_1), \\quad U(x) = \\max(U_1, U_2)',
    symbols: {
      at: letter('x', 'own', 'the reading'),
      correction: letter('c_1', 'own', 'correction in a line of the table'),
      expanded: letter('U_1', 'own', 'its expanded uncertainty'),
    },
    words: 'The correction between two lines of a certificate; beyond its ends there is none.',
    sources: [{ of: 'commonPractice', clause: 'interpolation between calibration points' }],
    example: example({ at: -13 }, ({ at }) => {
      const points = [
        { at: -20, correction: 0.36, expanded: 0.1 },
        { at: -10, correction: 0.2, expanded: 0.08 },
      ];
      return readCorrectionTable({ points, at }).correction;
    }),
  },
  padByDc: {
    tex: 'A = 20 \\lg \\frac{V_1}{V_2} \\text{ at } R = R_0, \\quad \\frac{V_2}{V_1} = \\frac{S (1 + \\Gamma)}{1 + S^2 \\Gamma}, \\quad A = -20 \\lg S',
    symbols: {
      voltsIn: letter('V_1', 'V', 'DC voltage at the input'),
      voltsOut: letter('V_2', 'V', 'DC voltage across the load'),
      loadOhms: letter('R', 'Ω', 'resistance of the load'),
      impedanceOhms: letter('R_0', 'Ω', 'impedance of the pad'),
      result: letter('A', 'dB', 'attenuation'),
    },
    words: 'The attenuation of a pad from two DC voltages.',
    sources: [{ of: 'derived', clause: 'voltage division of a matched two-port' }],
    example: example({ voltsIn: 3, voltsOut: 0.948, loadOhms: 50 }, (given) => estimateOf(padByDc(given))),
  },
  padBySwap: {
    tex: 'A = L_\\mathrm{out} - L_\\mathrm{in}',
    symbols: {
      withoutDb: letter('L_\\mathrm{out}', 'dB', 'reading with the pad taken out'),
      withDb: letter('L_\\mathrm{in}', 'dB', 'reading with the pad put in'),
      result: letter('A', 'dB', 'attenuation'),
    },
    words: 'The attenuation of a pad swapped in and out: the gain of the receiver cancels.',
    sources: [{ of: 'commonPractice', clause: 'insertion loss by substitution' }],
    example: example({ withoutDb: -13.4, withDb: -33.3 }, (given) =>
      estimateOf(padBySwap({ ...given, parts: [] })),
    ),
  },
  ...validityFormulas,
} as const satisfies FormulaTopic;
