import {
  directivityRange,
  gainDb,
  mismatch,
  mismatchCorrection,
  mismatchLimits,
  mismatchLossDb,
  mismatchWithin,
  netPower,
  ohms,
  powerW,
  rayleigh,
  reflectionOfPowers,
  reflectionOfResistance,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  reflectionThrough,
  returnLossOfReflection,
  rice,
  swrOfReflection,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

const reflection = letter('\\rho', '1', 'magnitude of the reflection coefficient');
const swr = letter('s', '1', 'standing-wave ratio');
const returnLoss = letter('a_\\mathrm{r}', 'dB', 'return loss');
const line = [{ of: 'derived', clause: 'waves on a line' }] as const;
const flow = [{ of: 'derived', clause: 'signal flow between source, two-port and load' }] as const;
const forward = letter('P_\\mathrm{f}', 'W', 'forward power');
const reflected = letter('P_\\mathrm{r}', 'W', 'reflected power');
const source = letter('\\rho_\\mathrm{s}', '1', 'reflection magnitude of the source');
const load = letter('\\rho_\\mathrm{l}', '1', 'reflection magnitude of the load');

/** Reflection, standing waves and mismatch. */
export const mismatchFormulas = {
  reflectionOfSwr: {
    tex: '\\rho = \\frac{s - 1}{s + 1}',
    symbols: { swr, result: reflection },
    words: 'The reflection magnitude that belongs to a standing-wave ratio.',
    sources: line,
    example: example({ swr: 1.5 }, (given) => reflectionOfSwr(given.swr)),
  },
  swrOfReflection: {
    tex: 's = \\frac{1 + \\rho}{1 - \\rho}',
    symbols: { reflection, result: swr },
    words: 'The standing-wave ratio that belongs to a reflection magnitude.',
    sources: line,
    example: example({ reflection: 0.2 }, (given) => swrOfReflection(given.reflection)),
  },
  returnLossOfReflection: {
    tex: 'a_\\mathrm{r} = -20 \\lg \\rho',
    symbols: { reflection, result: returnLoss },
    words: 'The return loss, a positive number of decibels.',
    sources: line,
    example: example({ reflection: 0.1 }, (given) => returnLossOfReflection(given.reflection)),
  },
  reflectionOfReturnLoss: {
    tex: '\\rho = 10^{-a_\\mathrm{r}/20}',
    symbols: { returnLossDb: returnLoss, result: reflection },
    words: 'The reflection magnitude that belongs to a return loss.',
    sources: line,
    example: example({ returnLossDb: 20 }, (given) => reflectionOfReturnLoss(given.returnLossDb)),
  },
  mismatchLossDb: {
    tex: 'a_\\mathrm{m} = -10 \\lg \\left( 1 - \\rho^2 \\right)',
    symbols: { reflection, result: letter('a_\\mathrm{m}', 'dB', 'mismatch loss') },
    words: 'What a load takes less than a matched one would, of the power that arrives.',
    sources: line,
    example: example({ reflection: 0.2 }, (given) => mismatchLossDb(given.reflection)),
  },
  reflectionOfResistance: {
    tex: '\\rho = \\frac{|R - R_0|}{R + R_0}',
    symbols: {
      resistance: letter('R', 'Ω', 'resistance of the load'),
      reference: letter('R_0', 'Ω', 'resistance of the line'),
      result: reflection,
    },
    words: 'The reflection magnitude of a pure resistance at the end of a line.',
    sources: line,
    example: example({ resistance: 49.6, reference: 50 }, (given) =>
      reflectionOfResistance({ resistance: ohms(given.resistance), reference: ohms(given.reference) }),
    ),
  },
  reflectionOfPowers: {
    tex: '\\rho = \\sqrt{\\frac{P_\\mathrm{r}}{P_\\mathrm{f}}}',
    symbols: { forward, reflected, result: reflection },
    words: 'The reflection magnitude from forward and reflected power.',
    sources: line,
    example: example({ forward: 5, reflected: 0.2 }, (given) =>
      reflectionOfPowers({ forward: powerW(given.forward), reflected: powerW(given.reflected) }),
    ),
  },
  netPower: {
    tex: 'P = P_\\mathrm{f} - P_\\mathrm{r}',
    symbols: { forward, reflected, result: letter('P', 'W', 'power that stays in the load') },
    words: 'The power that stays in a load: forward less reflected.',
    sources: line,
    example: example({ forward: 5, reflected: 0.2 }, (given) =>
      netPower({ forward: powerW(given.forward), reflected: powerW(given.reflected) }),
    ),
  },
  directivityRange: {
    tex: '\\rho_\\pm = \\rho \\pm 10^{-D/20}',
    symbols: {
      reflection: letter('\\rho', '1', 'reflection magnitude as shown'),
      directivityDb: letter('D', 'dB', 'directivity of the coupler, at least'),
      result: letter('\\rho_\\pm', '1', 'limits of the true magnitude, held between 0 and 1'),
    },
    words: 'Where the true reflection can lie behind a coupler that leaks.',
    sources: [{ of: 'derived', clause: 'superposition of leaked and reflected wave, phase unknown' }],
    example: example(
      { reflection: 0.2, directivityDb: 25 },
      (given) =>
        directivityRange({ reflection: given.reflection, directivityDb: gainDb(given.directivityDb) }).upper,
    ),
  },
  mismatchLimits: {
    tex: 'm_\\pm = 20 \\lg \\left( 1 \\pm \\rho_\\mathrm{s} \\rho_\\mathrm{l} \\right)',
    symbols: { source, load, result: letter('m_\\pm', 'dB', 'limits of the correction') },
    words:
      'Limits of the correction for mismatch to the power into an ideal load, for two magnitudes whose phases are unknown.',
    sources: flow,
    example: example({ source: 1 / 3, load: 1 / 9 }, (given) => mismatchLimits(given).upper),
  },
  mismatchCorrection: {
    tex: 'm_\\pm = 20 \\lg \\left( 1 \\pm \\rho_\\mathrm{s} \\rho_\\mathrm{l} \\right) \\text{ into an ideal load}, \\quad 10 \\lg \\left( 1 - \\rho_\\mathrm{l}^2 \\right) \\text{ delivered}',
    symbols: { source, load, result: letter('m_\\pm', 'dB', 'limits of the correction') },
    words:
      'What mismatch adds to the incident wave that a terminating meter shows, by the power that is meant; for the incident wave itself nothing.',
    sources: flow,
    example: example(
      { source: 0.3, load: 0.2 },
      (given) => mismatchCorrection({ delivery: 'delivered', ...given }).upper,
    ),
  },
  mismatch: {
    tex: 'm = 20 \\lg \\left| 1 - \\rho_\\mathrm{s} \\rho_\\mathrm{l}\\, e^{j\\varphi} \\right|',
    symbols: {
      source,
      load,
      result: letter('m', 'dB', 'correction, distributed as a phase that may be anything makes it'),
    },
    words: 'The correction for mismatch as a distribution: U-shaped and lopsided, its mean exactly 0 dB.',
    sources: [...flow, { of: 'gumSimulation', clause: '6.4.6' }],
    example: example({ source: 1 / 3, load: 1 / 9 }, (given) => known(mismatch(given).standardDeviation)),
  },
  mismatchWithin: {
    tex: 'm = 20 \\lg \\left| 1 - x_\\mathrm{s}\\, x_\\mathrm{l}\\, e^{j\\varphi} \\right|, \\quad 0 \\le x_\\mathrm{s} \\le \\rho_\\mathrm{s}, \\quad 0 \\le x_\\mathrm{l} \\le \\rho_\\mathrm{l}',
    symbols: {
      source: letter('\\rho_\\mathrm{s}', '1', 'largest reflection magnitude of the source'),
      load: letter('\\rho_\\mathrm{l}', '1', 'largest reflection magnitude of the load'),
      result: letter('m', 'dB', 'correction'),
    },
    words: 'The same where the magnitudes are only bounded: uniform, or uniform over a disc.',
    sources: [...flow, { of: 'commonPractice' }],
    example: example({ source: 1 / 3, load: 1 / 9 }, (given) =>
      known(mismatchWithin({ ...given, knowledge: { source: 'disc', load: 'disc' } }).standardDeviation),
    ),
  },
  rayleigh: {
    tex: 'p(x) = \\frac{x}{b^2}\\, e^{-x^2/(2 b^2)}',
    symbols: {
      scale: letter('b', 'own', 'standard deviation of either component'),
      result: letter('p(x)', 'own', 'density of the length'),
    },
    words: 'The length of a reflection made of many small ones.',
    sources: [{ of: 'derived', clause: 'length of two normal components' }],
    example: example({ scale: 0.1 }, (given) => known(rayleigh(given).mean)),
  },
  rice: {
    tex: 'p(x) = \\frac{x}{b^2}\\, e^{-(x^2 + a^2)/(2 b^2)}\\, I_0 \\left( \\frac{x a}{b^2} \\right)',
    symbols: {
      offset: letter('a', 'own', 'length without the scatter'),
      scale: letter('b', 'own', 'standard deviation of either component'),
      result: letter('p(x)', 'own', 'density of the length'),
    },
    words: 'The length of a known reflection seen through a leak or noise.',
    sources: [{ of: 'mathematicalFunctions', clause: '10.25' }],
    example: example({ offset: 0.2, scale: 0.05 }, (given) => known(rice(given).mean)),
  },
  reflectionThrough: {
    tex: '\\rho = |S_{22}| + \\frac{10^{g/10} \\rho_\\mathrm{s}}{1 - |S_{11}| \\rho_\\mathrm{s}}',
    symbols: {
      source,
      input: letter('|S_{11}|', '1', 'reflection magnitude of the pad towards the source'),
      output: letter('|S_{22}|', '1', 'reflection magnitude of the pad towards the load'),
      gain: letter('g', 'dB', 'gain of the pad, negative'),
      result: letter('\\rho', '1', 'largest reflection magnitude that the load sees'),
    },
    words: 'The largest reflection that a load can see looking back through a pad at the source.',
    sources: flow,
    example: example({ source: 1 / 3, input: 0.07, output: 0.07, gain: -6 }, (given) =>
      reflectionThrough({
        source: given.source,
        between: { input: given.input, output: given.output, gain: gainDb(given.gain) },
      }),
    ),
  },
} as const satisfies FormulaTopic;
