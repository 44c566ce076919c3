import {
  differenceModel,
  estimateOf,
  numericalTolerance,
  randomFrom,
  simulateAtOnce,
  validatePropagation,
} from '#compute';
import { pads, sum } from './example-sums.ts';
import { example, type FormulaTopic, known, letter } from './formula.ts';

/** The sum tried at random, and results held against each other. */
export const simulatedFormulas = {
  simulateAtOnce: {
    tex: 'y_r = f(x_{1,r}, x_{2,r}, \\ldots), \\quad \\tilde y = \\frac{1}{M} \\sum_r y_r, \\quad u^2(\\tilde y) = \\frac{1}{M - 1} \\sum_r (y_r - \\tilde y)^2',
    symbols: {
      model: letter('f', 'own', 'model of the measurement'),
      trials: letter('M', '1', 'number of trials'),
      mean: letter('\\tilde y', 'own', 'estimate'),
      standardDeviation: letter('u^2(\\tilde y)', 'own', 'squared standard uncertainty'),
    },
    words: 'Propagation of distributions by trials; the interval is cut off the sorted values.',
    sources: [{ of: 'gumSimulation', clause: '7' }],
    example: example({ trials: 10_000 }, ({ trials }) =>
      known(
        simulateAtOnce({
          model: sum(pads),
          coverageProbability: 0.95,
          random: randomFrom(1),
          stop: { kind: 'trials', trials },
        }).standardDeviation,
      ),
    ),
  },
  numericalTolerance: {
    tex: '\\delta = \\tfrac{1}{2} \\cdot 10^{\\ell}, \\quad u = c \\cdot 10^{\\ell}, \\quad 10^{d-1} \\le c < 10^{d}',
    symbols: {
      standardUncertainty: letter('u', 'own', 'standard uncertainty'),
      digits: letter('d', '1', 'its significant digits, one or two'),
      result: letter('\\delta', 'own', 'numerical tolerance'),
    },
    words: 'Half a unit in the last digit of an uncertainty: how exact a simulation has to be.',
    sources: [{ of: 'gumSimulation', clause: '7.9.2' }],
    example: example({ standardUncertainty: 0.00035 }, (given) =>
      numericalTolerance({ ...given, digits: 2 }),
    ),
  },
  validatePropagation: {
    tex: 'd_\\pm = \\left| y_\\pm - s_\\pm \\right| \\le \\delta',
    symbols: {
      propagated: letter('y_\\pm', 'own', 'ends of the interval from propagation'),
      simulated: letter('s_\\pm', 'own', 'ends of the interval from simulation'),
      tolerance: letter('\\delta', 'own', 'numerical tolerance'),
      lowDifference: letter('d_\\pm', 'own', 'differences of the ends'),
    },
    words: 'Whether propagation is good enough for a model, judged by a simulation of it.',
    sources: [{ of: 'gumSimulation', clause: '8.1' }],
    example: example({ propagated: [-3.92, 3.92], simulated: [-3.88, 3.88] }, (given) => {
      const between = ([lower, upper]: readonly [number, number]) => ({ lower, upper });
      return validatePropagation({
        propagated: between(given.propagated),
        simulated: between(given.simulated),
        standardUncertainty: 2,
        digits: 2,
      }).highDifference;
    }),
  },
  differenceModel: {
    tex: 'd = y_a - y_b',
    symbols: {
      a: letter('y_a', 'own', 'first sum'),
      b: letter('y_b', 'own', 'second sum'),
      result: letter('d', 'own', 'their difference'),
    },
    words: 'The difference of two sums, in which what both share cancels.',
    sources: [{ of: 'derived', clause: 'a difference is linear' }],
    example: example({ a: 27.1, b: 26.8 }, (given) =>
      estimateOf(
        differenceModel({ a: { ...sum(pads), constant: given.a }, b: { ...sum(pads), constant: given.b } }),
      ),
    ),
  },
} as const satisfies FormulaTopic;
