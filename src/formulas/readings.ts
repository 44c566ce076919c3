import {
  compareMethods,
  fitLine,
  mean,
  meanOfMethods,
  normalisedError,
  pooledScatter,
  readLine,
  rectangular,
  type SumModel,
  serialCorrelation,
  standardDeviation,
  summariseReadings,
  suspectOf,
  weightedMean,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

const x = letter('x_i', 'own', 'readings');
const average = letter('\\bar x', 'own', 'arithmetic mean');
const s = letter('s', 'own', 'experimental standard deviation');
const readings = [27.1, 26.9, 27.0, 27.2, 26.9];
const points = [
  { x: 0, y: -0.7 },
  { x: 10, y: -0.72 },
  { x: 20, y: -0.75 },
  { x: 30, y: -0.81 },
];
const method = (constant: number, halfWidth: number, id: string): SumModel => ({
  kind: 'sum',
  constant,
  inputs: [
    {
      id,
      distribution: rectangular({ lower: -halfWidth, upper: halfWidth }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    },
  ],
  sensitivities: [1],
});

/** Readings, lines through points, and results compared. */
export const readingFormulas = {
  mean: {
    tex: '\\bar x = \\frac{1}{n} \\sum_i x_i',
    symbols: { values: x, result: average },
    words: 'The arithmetic mean of readings.',
    sources: [{ of: 'gum', clause: '4.2.1' }],
    example: example({ values: readings }, (given) => mean(given.values)),
  },
  standardDeviation: {
    tex: 's = \\sqrt{\\frac{1}{n - 1} \\sum_i (x_i - \\bar x)^2}',
    symbols: { values: x, result: s },
    words: 'The scatter of a single reading.',
    sources: [{ of: 'gum', clause: '4.2.2' }],
    example: example({ values: readings }, (given) => standardDeviation(given.values)),
  },
  summariseReadings: {
    tex: '\\bar x = \\frac{1}{n} \\sum_i x_i, \\quad s_{\\bar x} = \\frac{s}{\\sqrt n}, \\quad \\nu = n - 1',
    symbols: {
      values: x,
      mean: average,
      standardDeviation: s,
      standardDeviationOfMean: letter('s_{\\bar x}', 'own', 'experimental standard deviation of the mean'),
      degreesOfFreedom: letter('\\nu', '1', 'degrees of freedom'),
    },
    words: 'What a series of readings amounts to.',
    sources: [{ of: 'gum', clause: '4.2' }],
    example: example({ values: readings }, (given) =>
      known(summariseReadings(given.values).standardDeviationOfMean),
    ),
  },
  pooledScatter: {
    tex: 's_\\mathrm{p} = \\sqrt{\\frac{\\sum_j \\nu_j s_j^2}{\\sum_j \\nu_j}}',
    symbols: {
      standardDeviation: letter('s_j', 'own', 'scatter of each series'),
      degreesOfFreedom: letter('\\nu_j', '1', 'degrees of freedom of each series'),
      result: letter('s_\\mathrm{p}', 'own', 'scatter of all together'),
    },
    words: 'One scatter from several series of the same procedure.',
    sources: [{ of: 'gum', clause: '4.2.4' }],
    example: example({ standardDeviation: [0.06, 0.08], degreesOfFreedom: [4, 9] }, (given) =>
      known(
        pooledScatter(
          given.standardDeviation.map((deviation, i) => ({
            standardDeviation: deviation,
            degreesOfFreedom: known(given.degreesOfFreedom[i]),
          })),
        ).standardDeviation,
      ),
    ),
  },
  serialCorrelation: {
    tex: 'r_1 = \\frac{\\sum_i (x_i - \\bar x)(x_{i+1} - \\bar x)}{\\sum_i (x_i - \\bar x)^2}',
    symbols: {
      values: letter('x_i', 'own', 'readings in order of time'),
      result: letter('r_1', '1', 'correlation'),
    },
    words: 'How much each reading resembles the one before: near 1 they drift.',
    sources: [{ of: 'statistics', clause: '1.3.5.12' }],
    example: example({ values: readings }, (given) => serialCorrelation(given.values)),
  },
  suspectOf: {
    tex: 'G = \\frac{\\max_i |x_i - \\bar x|}{s} > \\frac{n - 1}{\\sqrt n} \\sqrt{\\frac{t^2}{n - 2 + t^2}}, \\quad t = t_{\\alpha/(2n)}(n - 2)',
    symbols: {
      values: x,
      significance: letter('\\alpha', '1', 'probability of pointing at a sound reading'),
      result: letter('G', '1', 'distance of the furthest reading'),
    },
    words: 'Whether the furthest reading stands too far off: a reason is still needed to leave it out.',
    sources: [{ of: 'statistics', clause: '1.3.5.17.1' }],
    example: example({ values: [10, 10, 13, 10.1, 9.9], significance: 0.05 }, (given) =>
      known(suspectOf(given)?.statistic),
    ),
  },
  fitLine: {
    tex: 'b = \\frac{\\sum_i (x_i - \\bar x)(y_i - \\bar y)}{\\sum_i (x_i - \\bar x)^2}, \\quad a = \\bar y + b (x_0 - \\bar x)',
    symbols: {
      points: letter('y_i', 'own', 'values at the places x'),
      origin: letter('x_0', 'own', 'where the intercept is taken'),
      intercept: letter('a', 'own', 'intercept'),
      slope: letter('b', 'own', 'slope'),
    },
    words: 'A straight line through points by least squares.',
    sources: [{ of: 'gum', clause: 'H.3' }],
    example: example({ origin: 15 }, ({ origin }) => known(fitLine({ points, origin }).slope)),
  },
  readLine: {
    tex: 'u^2(x) = u_a^2 + (x - x_0)^2 u_b^2 + 2 (x - x_0)\\, u_{ab}',
    symbols: {
      at: letter('x', 'own', 'where the line is read'),
      line: letter('u_{ab}', 'own', 'covariance of intercept and slope'),
      standardUncertainty: letter('u^2(x)', 'own', 'squared uncertainty of the line there'),
    },
    words: 'What a line says at a place, with the covariance of its coefficients counted.',
    sources: [{ of: 'gum', clause: 'H.3.4' }],
    example: example({ at: 25 }, ({ at }) =>
      known(readLine({ line: fitLine({ points }), at }).standardUncertainty),
    ),
  },
  normalisedError: {
    tex: 'E_n = \\frac{x - x_\\mathrm{ref}}{\\sqrt{U^2 + U_\\mathrm{ref}^2}}',
    symbols: {
      result: letter('x', 'own', 'result, with its expanded uncertainty'),
      reference: letter('x_\\mathrm{ref}', 'own', 'reference, with its expanded uncertainty'),
      normalisedError: letter('E_n', '1', 'normalised error: both agree up to 1'),
    },
    words: 'Whether two independent results agree.',
    sources: [{ of: 'proficiency' }],
    example: example({ result: 27.1, reference: 26.8 }, (given) =>
      known(
        normalisedError({
          result: { value: given.result, expanded: 0.5 },
          reference: { value: given.reference, expanded: 0.2 },
        }).normalisedError,
      ),
    ),
  },
  weightedMean: {
    tex: '\\bar x = \\frac{\\sum_i x_i / u_i^2}{\\sum_i 1 / u_i^2}, \\quad u = \\left( \\sum_i \\frac{1}{u_i^2} \\right)^{-1/2}, \\quad R_\\mathrm{B} = \\sqrt{\\frac{\\chi^2}{n - 1}}',
    symbols: {
      value: letter('x_i', 'own', 'results'),
      standardUncertainty: letter('u_i', 'own', 'their standard uncertainties'),
      chiSquare: letter('\\chi^2', '1', 'sum of squared distances in uncertainties'),
      birgeRatio: letter('R_\\mathrm{B}', '1', 'Birge ratio: above 1 they scatter more than they should'),
      result: letter('\\bar x', 'own', 'weighted mean'),
    },
    words: 'The mean of several results by their weights, and whether they are consistent.',
    sources: [{ of: 'weightedMean' }],
    example: example({ value: [10, 30], standardUncertainty: [4, 5] }, (given) =>
      known(
        weightedMean(
          given.value.map((value, i) => ({
            value,
            standardUncertainty: known(given.standardUncertainty[i]),
          })),
        ).value,
      ),
    ),
  },
  compareMethods: {
    tex: 'u^2(d) = u_1^2 + u_2^2 - 2 u_{12}, \\quad w = \\frac{u_2^2 - u_{12}}{u^2(d)}, \\quad \\bar x = w x_1 + (1 - w) x_2',
    symbols: {
      first: letter('x_1', 'own', 'result of the first method'),
      second: letter('x_2', 'own', 'result of the second method'),
      shared: letter('u_{12}', 'own', 'covariance from what both share'),
      mean: letter('\\bar x', 'own', 'mean with the least uncertainty'),
    },
    words: 'Two methods on one transmitter: whether they agree, and what they say together.',
    sources: [{ of: 'proficiency' }, { of: 'derived', clause: 'weights of least variance' }],
    example: example(
      { first: 27.1, second: 26.8 },
      (given) =>
        compareMethods({ first: method(given.first, 0.5, 'a'), second: method(given.second, 0.3, 'b') }).mean
          .value,
    ),
  },
  meanOfMethods: {
    tex: '\\bar x = \\sum_i w_i x_i, \\quad \\sum_i \\sum_j w_i w_j u_{ij} \\to \\min, \\quad \\sum_i w_i = 1, \\quad w_i \\ge 0',
    symbols: {
      methods: letter('x_i', 'own', 'results of the methods'),
      weights: letter('w_i', '1', 'their weights'),
      propagation: letter('u_{ij}', 'own', 'covariances from what they share'),
      value: letter('\\bar x', 'own', 'mean with the least uncertainty'),
    },
    words:
      'Several methods on one transmitter: the mean of least uncertainty, with what they share counted once.',
    sources: [{ of: 'derived', clause: 'weights of least variance' }],
    example: example({ methods: [27.1, 26.8, 27] }, (given) => {
      const halves = [0.5, 0.3, 0.4];
      const methods = given.methods.map((value, i) => method(value, known(halves[i]), `method ${i}`));
      return meanOfMethods({ methods }).value;
    }),
  },
} as const satisfies FormulaTopic;
