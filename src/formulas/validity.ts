import {
  checkDrift,
  checkFloor,
  checkReconnection,
  checkStep,
  harmonicsLimitsDb,
  readingsThatPay,
  targetForSpecification,
  targetForVerdict,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

/** Checks of validity, and what would help. */
export const validityFormulas = {
  checkStep: {
    tex: 's = A - (L_\\mathrm{out} - L_\\mathrm{in})',
    symbols: {
      withoutDb: letter('L_\\mathrm{out}', 'dB', 'reading without the extra pad'),
      withDb: letter('L_\\mathrm{in}', 'dB', 'reading with it'),
      stepDb: letter('A', 'dB', 'attenuation of the extra pad'),
      shortfallDb: letter('s', 'dB', 'what the reading moved too little'),
    },
    words: 'Whether an extra pad moves the reading by its attenuation: if not, something is overloaded.',
    sources: [{ of: 'commonPractice' }],
    example: example({ withoutDb: 26.8, withDb: 17.1, stepDb: 10 }, (given) =>
      known(checkStep({ ...given, allowedDb: 0.5 }).shortfallDb),
    ),
  },
  checkFloor: {
    tex: 'n = -10 \\lg \\left( 1 - 10^{-(L - L_0)/10} \\right)',
    symbols: {
      readingDb: letter('L', 'dB', 'reading'),
      floorDb: letter('L_0', 'dB', 'reading without a signal'),
      noiseDb: letter('n', 'dB', 'what the floor adds to the reading'),
    },
    words: 'What the floor of an instrument adds to a reading.',
    sources: [{ of: 'derived', clause: 'unrelated powers add' }],
    example: example(
      { readingDb: -50, floorDb: -60 },
      (given) => checkFloor({ ...given, allowedDb: 0.1 }).noiseDb,
    ),
  },
  checkDrift: {
    tex: 'D = b\\, (t_n - t_1)',
    symbols: {
      perTime: letter('b', 'own', 'slope of the line through the readings'),
      total: letter('D', 'own', 'drift from the first time to the last'),
    },
    words: 'How far a reading drifts while the transmitter warms up.',
    sources: [{ of: 'gum', clause: 'H.3' }],
    example: example({}, () =>
      known(
        checkDrift([
          { time: 0, reading: 27 },
          { time: 1, reading: 26.95 },
          { time: 2, reading: 26.92 },
          { time: 3, reading: 26.88 },
        ]).total,
      ),
    ),
  },
  checkReconnection: {
    tex: 's = \\sqrt{\\frac{1}{n - 1} \\sum_i (x_i - \\bar x)^2}',
    symbols: {
      values: letter('x_i', 'own', 'readings, connected anew each time'),
      standardDeviation: letter('s', 'own', 'scatter of one connection'),
    },
    words: 'What taking the connectors off and on again changes.',
    sources: [{ of: 'gum', clause: '4.2' }],
    example: example({ values: [27.1, 27.06, 27.12, 27.08, 27.11] }, (given) =>
      known(checkReconnection(given.values).standardDeviation),
    ),
  },
  harmonicsLimitsDb: {
    tex: 'h_\\pm = 20 \\lg \\left( 1 \\pm \\sum_i 10^{a_i/20} \\right) \\text{ on a peak}, \\quad 10 \\lg \\left( 1 + \\sum_i 10^{a_i/10} \\right) \\text{ of mean power}',
    symbols: {
      harmonicsDbc: letter('a_i', 'dB', 'levels of the harmonics against the carrier, negative'),
      result: letter('h_\\pm', 'dB', 'limits of what they do to a reading'),
    },
    words: 'What harmonics of unknown phase can do to a peak detector, and what they add to the mean power.',
    sources: [{ of: 'derived', clause: 'sum of phasors, sum of powers' }],
    example: example(
      { harmonicsDbc: [-20] },
      (given) => harmonicsLimitsDb({ ...given, responds: 'peak' }).lower,
    ),
  },
  readingsThatPay: {
    tex: 'n = \\left\\lceil \\frac{(s/u)^2}{(1 + w)^2 - 1} \\right\\rceil',
    symbols: {
      standardDeviation: letter('s', 'own', 'scatter of a single reading'),
      otherUncertainty: letter('u', 'own', 'uncertainty of everything else'),
      worthwhile: letter('w', '1', 'share of the uncertainty that all further readings must still win'),
      result: letter('n', '1', 'number of readings that still pay'),
    },
    words: 'How many readings still pay: more shrink only the scatter.',
    sources: [{ of: 'gum', clause: '4.2.3' }],
    example: example({ standardDeviation: 0.3, otherUncertainty: 0.2, worthwhile: 0.05 }, (given) =>
      known(readingsThatPay(given)),
    ),
  },
  targetForVerdict: {
    tex: 'U = \\frac{\\min \\left( |y - T_-|,\\, |T_+ - y| \\right)}{r}',
    symbols: {
      estimate: letter('y', 'own', 'estimate'),
      specification: letter('T_+', 'own', 'limits of the specification'),
      multiplier: letter('r', '1', 'expanded uncertainties that the guard band is wide'),
      expanded: letter('U', 'own', 'largest expanded uncertainty that still decides'),
    },
    words: 'How uncertain a measurement may be to decide about an estimate.',
    sources: [
      { of: 'conformity', clause: '8.3' },
      { of: 'vocabulary', clause: '2.34' },
    ],
    example: example({ estimate: 27.1, specification: [25.5, 28.5], multiplier: 1 }, (given) => {
      const [lower, upper] = given.specification;
      return known(targetForVerdict({ ...given, specification: { lower, upper } }).expanded);
    }),
  },
  targetForSpecification: {
    tex: 'U = \\frac{T_+ - T_-}{2\\, C_m}',
    symbols: {
      specification: letter('T_+', 'own', 'limits of the specification'),
      capability: letter('C_m', '1', 'measurement capability index'),
      result: letter('U', 'own', 'expanded uncertainty that is asked for'),
    },
    words: 'The uncertainty that a specification asks for, wherever the value lies.',
    sources: [{ of: 'conformity', clause: '7.6.3' }],
    example: example({ specification: [25.5, 28.5], capability: 3 }, (given) => {
      const [lower, upper] = given.specification;
      return targetForSpecification({ ...given, specification: { lower, upper } });
    }),
  },
} as const satisfies FormulaTopic;
