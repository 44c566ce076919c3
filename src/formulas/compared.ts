import {
  compareMethods,
  fitLine,
  meanOfMethods,
  normalisedError,
  readLine,
  rectangular,
  type SumModel,
  weightedMean,
} from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

/** Letter of single readings. */
export const readingsLetter = letter('x_i', 'own', 'readings');
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

/** Lines through points, and results compared. */
export const comparedFormulas = {
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
