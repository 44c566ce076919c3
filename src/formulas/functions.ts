import {
  chiSquareQuantile,
  chiSquareShareAbove,
  chiSquareShareBelow,
  erf,
  erfc,
  logGamma,
  normalDensity,
  normalQuantile,
  normalShareBelow,
  regularisedBeta,
  regularisedGamma,
  studentDensity,
  studentQuantile,
  studentShareBelow,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const x = letter('x', '1', 'argument');
const z = letter('z', '1', 'distance from the mean in standard deviations');
const share = letter('p', '1', 'share below');
const degrees = letter('\\nu', '1', 'degrees of freedom');
const chi = letter('x', '1', 'value of chi-square');
const t = letter('t', '1', 'distance from the mean in standard uncertainties');

/** The functions that shares and quantiles rest on. */
export const functionFormulas = {
  erf: {
    tex: '\\operatorname{erf} x = \\frac{2}{\\sqrt\\pi} \\int_0^x e^{-s^2}\\, \\mathrm{d}s',
    symbols: { x, result: letter('\\operatorname{erf} x', '1', 'error function') },
    words: 'The error function.',
    sources: [{ of: 'mathematicalFunctions', clause: '7.2' }],
    example: example({ x: 1 }, (given) => erf(given.x)),
  },
  erfc: {
    tex: '\\operatorname{erfc} x = 1 - \\operatorname{erf} x',
    symbols: { x, result: letter('\\operatorname{erfc} x', '1', 'complementary error function') },
    words: 'What the error function leaves of one, small values kept exact.',
    sources: [{ of: 'mathematicalFunctions', clause: '7.2' }],
    example: example({ x: 1 }, (given) => erfc(given.x)),
  },
  logGamma: {
    tex: '\\ln \\Gamma(x) = \\ln \\int_0^\\infty s^{x - 1} e^{-s}\\, \\mathrm{d}s',
    symbols: { x, result: letter('\\ln \\Gamma(x)', '1', 'logarithm of the gamma function') },
    words: 'The logarithm of the gamma function.',
    sources: [{ of: 'mathematicalFunctions', clause: '5.2' }],
    example: example({ x: 4.5 }, (given) => logGamma(given.x)),
  },
  regularisedGamma: {
    tex: 'P(a, x) = \\frac{1}{\\Gamma(a)} \\int_0^x s^{a - 1} e^{-s}\\, \\mathrm{d}s',
    symbols: { a: letter('a', '1', 'shape'), x, below: letter('P(a, x)', '1', 'share below') },
    words: 'The incomplete gamma function as a share.',
    sources: [{ of: 'mathematicalFunctions', clause: '8.2' }],
    example: example({ a: 2, x: 3 }, (given) => regularisedGamma(given).below),
  },
  regularisedBeta: {
    tex: 'I_x(a, b) = \\frac{\\Gamma(a + b)}{\\Gamma(a)\\, \\Gamma(b)} \\int_0^x s^{a - 1} (1 - s)^{b - 1}\\, \\mathrm{d}s',
    symbols: {
      x,
      a: letter('a', '1', 'first shape'),
      b: letter('b', '1', 'second shape'),
      result: letter('I_x(a, b)', '1', 'share below'),
    },
    words: 'The incomplete beta function as a share: the tails of Student are made of it.',
    sources: [{ of: 'mathematicalFunctions', clause: '8.17' }],
    example: example({ x: 0.3, a: 2, b: 3 }, (given) => regularisedBeta(given)),
  },
  normalDensity: {
    tex: '\\varphi(z) = \\frac{1}{\\sqrt{2 \\pi}}\\, e^{-z^2/2}',
    symbols: { z, result: letter('\\varphi(z)', '1', 'density') },
    words: 'The density of the normal distribution.',
    sources: [{ of: 'gum', clause: 'C.2.14' }],
    example: example({ z: 1 }, (given) => normalDensity(given.z)),
  },
  normalShareBelow: {
    tex: '\\Phi(z) = \\tfrac{1}{2} \\operatorname{erfc} \\frac{-z}{\\sqrt 2}',
    symbols: { z, result: letter('\\Phi(z)', '1', 'share below') },
    words: 'The share of a normal distribution below a value.',
    sources: [{ of: 'mathematicalFunctions', clause: '7.1' }],
    example: example({ z: 1.96 }, (given) => normalShareBelow(given.z)),
  },
  normalQuantile: {
    tex: 'z = \\Phi^{-1}(p)',
    symbols: { share, result: z },
    words: 'The value of a normal distribution with a given share below it.',
    sources: [{ of: 'gum', clause: 'table G.1' }],
    example: example({ share: 0.975 }, (given) => normalQuantile(given.share)),
  },
  studentDensity: {
    tex: 'p(t) = \\frac{\\Gamma \\left( \\frac{\\nu + 1}{2} \\right)}{\\sqrt{\\nu \\pi}\\, \\Gamma \\left( \\frac{\\nu}{2} \\right)} \\left( 1 + \\frac{t^2}{\\nu} \\right)^{-(\\nu + 1)/2}',
    symbols: { t, degreesOfFreedom: degrees, result: letter('p(t)', '1', 'density') },
    words: 'The density of Student’s distribution.',
    sources: [{ of: 'gum', clause: 'C.3.8' }],
    example: example({ t: 1, degreesOfFreedom: 4 }, (given) => studentDensity(given)),
  },
  studentShareBelow: {
    tex: 'F(t) = 1 - \\tfrac{1}{2} I_{\\nu/(\\nu + t^2)} \\left( \\tfrac{\\nu}{2}, \\tfrac{1}{2} \\right), \\quad t \\ge 0',
    symbols: { t, degreesOfFreedom: degrees, result: letter('F(t)', '1', 'share below') },
    words: 'The share of Student’s distribution below a value.',
    sources: [
      { of: 'gum', clause: 'G.3' },
      { of: 'mathematicalFunctions', clause: '8.17' },
    ],
    example: example({ t: 2.571, degreesOfFreedom: 5 }, (given) => studentShareBelow(given)),
  },
  studentQuantile: {
    tex: 't = F^{-1}_\\nu(p)',
    symbols: { share, degreesOfFreedom: degrees, result: t },
    words: 'The value of Student’s distribution with a given share below it.',
    sources: [{ of: 'gum', clause: 'table G.2' }],
    example: example({ share: 0.975, degreesOfFreedom: 16 }, (given) => studentQuantile(given)),
  },
  chiSquareShareBelow: {
    tex: 'F(x) = P \\left( \\tfrac{\\nu}{2}, \\tfrac{x}{2} \\right)',
    symbols: { x: chi, degreesOfFreedom: degrees, result: letter('F(x)', '1', 'share below') },
    words: 'The share of the chi-square distribution below a value.',
    sources: [{ of: 'statistics', clause: '1.3.6.6.6' }],
    example: example({ x: 3.84, degreesOfFreedom: 1 }, (given) => chiSquareShareBelow(given)),
  },
  chiSquareShareAbove: {
    tex: 'Q(x) = 1 - P \\left( \\tfrac{\\nu}{2}, \\tfrac{x}{2} \\right)',
    symbols: { x: chi, degreesOfFreedom: degrees, result: letter('Q(x)', '1', 'share above') },
    words: 'The share of the chi-square distribution above a value: whether results are consistent.',
    sources: [{ of: 'statistics', clause: '1.3.6.6.6' }],
    example: example({ x: 9.756, degreesOfFreedom: 1 }, (given) => chiSquareShareAbove(given)),
  },
  chiSquareQuantile: {
    tex: 'x = F^{-1}_\\nu(p)',
    symbols: { share, degreesOfFreedom: degrees, result: chi },
    words: 'The value of the chi-square distribution with a given share below it.',
    sources: [{ of: 'statistics', clause: '1.3.6.7.4' }],
    example: example({ share: 0.95, degreesOfFreedom: 10 }, (given) => chiSquareQuantile(given)),
  },
} as const satisfies FormulaTopic;
