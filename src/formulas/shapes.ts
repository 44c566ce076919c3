import {
  arcsine,
  curvilinear,
  degreesFromReliability,
  normal,
  rectangular,
  student,
  sumOfTerms,
  transformed,
  trapezoidal,
  triangular,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

const u = letter('u', 'own', 'standard uncertainty');
const lower = letter('a_-', 'own', 'lower limit');
const upper = letter('a_+', 'own', 'upper limit');
const limits = { lower: -0.5, upper: 0.5 };
/** The standard deviation of a shape that has one. */
const spread = ({ standardDeviation }: { standardDeviation: number | undefined }) => known(standardDeviation);

/** What a document states, and what it becomes. */
export const shapeFormulas = {
  rectangular: {
    tex: 'u = \\frac{a_+ - a_-}{\\sqrt{12}} = \\frac{a}{\\sqrt 3}',
    symbols: { lower, upper, standardDeviation: u },
    words: 'Limits and nothing else known: any value between them is as likely as any other.',
    sources: [{ of: 'gum', clause: '4.3.7' }],
    example: example(limits, (given) => spread(rectangular(given))),
  },
  triangular: {
    tex: 'u = \\frac{a_+ - a_-}{\\sqrt{24}} = \\frac{a}{\\sqrt 6}',
    symbols: { lower, upper, standardDeviation: u },
    words: 'Limits, and values near the middle are likelier.',
    sources: [{ of: 'gum', clause: '4.3.9' }],
    example: example(limits, (given) => spread(triangular(given))),
  },
  trapezoidal: {
    tex: 'u = \\frac{a_+ - a_-}{2} \\sqrt{\\frac{1 + \\beta^2}{6}}',
    symbols: {
      lower,
      upper,
      topRatio: letter('\\beta', '1', 'width of the top over that of the base'),
      standardDeviation: u,
    },
    words: 'Between rectangle and triangle: a flat top and falling sides.',
    sources: [{ of: 'gum', clause: '4.3.9' }],
    example: example({ ...limits, topRatio: 0.5 }, (given) => spread(trapezoidal(given))),
  },
  curvilinear: {
    tex: 'u^2 = \\frac{(a_+ - a_-)^2}{12} + \\frac{d^2}{9}',
    symbols: {
      lower,
      upper,
      limitHalfWidth: letter('d', 'own', 'how far the limits themselves are known'),
      standardDeviation: u,
    },
    words: 'Limits that are themselves only known to within a distance.',
    sources: [{ of: 'gumSimulation', clause: '6.4.3' }],
    example: example({ ...limits, limitHalfWidth: 0.1 }, (given) => spread(curvilinear(given))),
  },
  arcsine: {
    tex: 'u = \\frac{a}{\\sqrt 2}',
    symbols: { halfWidth: letter('a', 'own', 'half-width'), standardDeviation: u },
    words: 'A sine-like influence of unknown phase, such as mismatch: the ends are the likeliest.',
    sources: [{ of: 'gumSimulation', clause: '6.4.6' }],
    example: example({ halfWidth: 0.2 }, (given) => spread(arcsine({ centre: 0, ...given }))),
  },
  normal: {
    tex: 'u = \\frac{U}{k}, \\quad p(x) = \\frac{1}{u \\sqrt{2 \\pi}}\\, e^{-(x - \\mu)^2 / (2 u^2)}',
    symbols: { mean: letter('\\mu', 'own', 'mean'), standardDeviation: u },
    words: 'What a certificate states as expanded uncertainty with its coverage factor.',
    sources: [{ of: 'gum', clause: '4.3.3 and C.2.14' }],
    example: example({ mean: 0, standardDeviation: 0.1 }, (given) => normal(given).density(0)),
  },
  student: {
    tex: 'u = \\frac{s}{\\sqrt n}, \\quad \\sigma_t = b \\sqrt{\\frac{\\nu}{\\nu - 2}}',
    symbols: {
      scale: letter('b', 'own', 'scale, for readings their s over root n'),
      degreesOfFreedom: letter('\\nu', '1', 'degrees of freedom, for readings one fewer than their number'),
      standardDeviation: letter(
        '\\sigma_t',
        'own',
        'standard deviation of the shape, for more than two degrees',
      ),
    },
    words: 'Few readings: a bell with longer tails, the longer the fewer they are.',
    sources: [
      { of: 'gum', clause: 'G.3' },
      { of: 'gumSimulation', clause: '6.4.9' },
    ],
    example: example({ scale: 0.1, degreesOfFreedom: 4 }, (given) =>
      spread(student({ location: 0, ...given })),
    ),
  },
  transformed: {
    tex: 'p_Y(y) = p_X(x) \\left| \\frac{\\mathrm{d}x}{\\mathrm{d}y} \\right|',
    symbols: {
      of: letter('p_X(x)', 'own', 'density of the quantity as stated'),
      slope: letter('\\frac{\\mathrm{d}x}{\\mathrm{d}y}', 'own', 'slope of the way back'),
      result: letter('p_Y(y)', 'own', 'density of the quantity as needed'),
    },
    words: 'A percentage becomes decibels by carrying its whole shape over, not by a factor.',
    sources: [{ of: 'gumSimulation', clause: '5.2 (number from memory)' }],
    example: example({}, () =>
      spread(
        transformed({
          of: rectangular({ lower: -3, upper: 3 }),
          forward: (x) => 20 * Math.log10(1 + x / 100),
          inverse: (y) => 100 * (10 ** (y / 20) - 1),
          slope: (x) => 20 / Math.LN10 / (100 + x),
        }),
      ),
    ),
  },
  sumOfTerms: {
    tex: 'a = \\frac{p_\\mathrm{r}}{100} |x| + \\frac{p_\\mathrm{f}}{100} F + n d + a_0',
    symbols: {
      reading: letter('x', 'own', 'reading'),
      terms: letter('p_\\mathrm{r}', '%', 'percentages of the reading and of full scale, digits, a floor'),
      halfWidth: letter('a', 'own', 'half-width that they make together'),
    },
    words: 'What a data sheet states as a sum: so much of the reading, of full scale, so many digits.',
    sources: [{ of: 'gum', clause: '4.3.7, example 2' }],
    example: example({ reading: 0.948 }, (given) =>
      known(
        sumOfTerms({
          ...given,
          terms: [
            { of: 'reading', percent: 0.5 },
            { of: 'digits', count: 2, step: 0.001 },
          ],
        }).halfWidth,
      ),
    ),
  },
  degreesFromReliability: {
    tex: '\\nu = \\frac{1}{2 r^2}',
    symbols: {
      reliability: letter('r', '1', 'fraction to which the uncertainty is itself known'),
      result: letter('\\nu', '1', 'degrees of freedom'),
    },
    words: 'The degrees of freedom of a judged uncertainty: a quarter gives 8.',
    sources: [{ of: 'gum', clause: 'G.4.2' }],
    example: example({ reliability: 0.25 }, (given) => degreesFromReliability(given.reliability)),
  },
} as const satisfies FormulaTopic;
