import {
  coverageOf,
  estimateOf,
  propagate,
  propagateMany,
  rectangular,
  rootSumSquareOfLimits,
  secondOrder,
  sensitivitiesOf,
  welchSatterthwaite,
  wholeDistribution,
  worstCaseOf,
} from '#compute';
import { halfWidthsLetter, inputs, pads, sum } from './example-sums.ts';
import { example, type FormulaTopic, known, letter } from './formula.ts';
import { simulatedFormulas } from './simulated.ts';

const y = letter('y', 'own', 'estimate of the output');
const c = letter('c_i', 'own', 'sensitivities');
const u = letter('u_\\mathrm{c}', 'own', 'combined standard uncertainty');
/** A product about 0: all that it has comes from its curvature. */
const product = (halfWidths: readonly [number, number]) =>
  ({
    kind: 'function',
    inputs: inputs(halfWidths),
    f: ([p = 0, q = 0]: readonly number[]) => p * q,
  }) as const;

/** Ways to add up. */
export const sumFormulas = {
  estimateOf: {
    tex: 'y = f(x_1, x_2, \\ldots)',
    symbols: { f: letter('f', 'own', 'model of the measurement'), result: y },
    words: 'The estimate of the output: the model at the estimates of its inputs.',
    sources: [{ of: 'gum', clause: '4.1' }],
    example: example({}, () => estimateOf({ ...sum(pads), constant: 26.8 })),
  },
  sensitivitiesOf: {
    tex: 'c_i = \\frac{\\partial f}{\\partial x_i}',
    symbols: { result: c },
    words: 'How much the output changes for each unit of an input.',
    sources: [{ of: 'gum', clause: '5.1.3' }],
    example: example({}, () => known(sensitivitiesOf({ model: sum(pads) })[0]?.value)),
  },
  worstCaseOf: {
    tex: 'y_\\pm = y \\pm \\sum_i |c_i|\\, a_i',
    symbols: { model: halfWidthsLetter, interval: letter('y_\\pm', 'own', 'ends of the worst case') },
    words: 'The worst case: every input at its unfavourable limit at once.',
    sources: [{ of: 'commonPractice', clause: 'adding the limits' }],
    example: example({ model: pads }, (given) => worstCaseOf({ model: sum(given.model) }).interval.upper),
  },
  rootSumSquareOfLimits: {
    tex: 'r = \\sqrt{\\sum_i (c_i a_i)^2}',
    symbols: {
      model: letter('a_i', 'own', 'half-widths of the inputs'),
      halfWidth: letter('r', 'own', 'half-width'),
    },
    words:
      'The naive root of the sum of squared limits: neither a guarantee nor an uncertainty with a known probability.',
    sources: [{ of: 'commonPractice' }],
    example: example(
      { model: pads },
      (given) => rootSumSquareOfLimits({ model: sum(given.model) }).halfWidth,
    ),
  },
  propagate: {
    tex: 'u_\\mathrm{c}^2 = \\sum_i \\sum_j c_i c_j\\, u_i u_j\\, r_{ij}, \\quad U = k\\, u_\\mathrm{c}',
    symbols: {
      model: letter('u_i', 'own', 'standard uncertainties of the inputs'),
      coverageFactor: letter('k', '1', 'coverage factor'),
      standardUncertainty: u,
      expanded: letter('U', 'own', 'expanded uncertainty'),
    },
    words: 'The law of propagation of uncertainty, correlations counted.',
    sources: [{ of: 'gum', clause: '5.1.2, 5.2.2 and 6.2.1' }],
    example: example({ model: pads, coverageFactor: 2 }, ({ model, coverageFactor }) =>
      known(propagate({ model: sum(model), coverageFactor }).expanded),
    ),
  },
  propagateMany: {
    tex: 'u(y_k, y_l) = \\sum_i \\sum_j c_{ki}\\, c_{lj}\\, u_i u_j\\, r_{ij}',
    symbols: {
      inputs: letter('u_i', 'own', 'standard uncertainties of the inputs'),
      outputs: letter('y_k', 'own', 'several outputs'),
      result: letter('u(y_k, y_l)', 'own', 'their covariances'),
    },
    words: 'Several outputs of the same inputs are correlated.',
    sources: [
      { of: 'gumSeveralOutputs', clause: '6.2' },
      { of: 'gum', clause: 'H.2' },
    ],
    example: example({ inputs: [0.5, 2] }, (given) => {
      const outputs = [
        { id: 'sum', f: ([p = 0, q = 0]: readonly number[]) => p + q },
        { id: 'difference', f: ([p = 0, q = 0]: readonly number[]) => p - q },
      ];
      return known(propagateMany({ inputs: inputs(given.inputs), outputs }).correlation[0]?.[1]);
    }),
  },
  secondOrder: {
    tex: '\\Delta u_\\mathrm{c}^2 = \\sum_i \\sum_j \\left[ \\tfrac{1}{2} \\left( \\frac{\\partial^2 f}{\\partial x_i \\partial x_j} \\right)^2 + \\frac{\\partial f}{\\partial x_i} \\frac{\\partial^3 f}{\\partial x_i \\partial x_j^2} \\right] u_i^2 u_j^2',
    symbols: {
      model: letter('u_i', 'own', 'standard uncertainties of the inputs'),
      variance: letter('\\Delta u_\\mathrm{c}^2', 'own', 'to be added to the squared uncertainty'),
    },
    words: 'What the curvature of a model adds where the first terms vanish.',
    sources: [{ of: 'gum', clause: '5.1.2, note, and H.1.7' }],
    example: example({ model: [0.5, 2] }, (given) => secondOrder({ model: product(given.model) }).variance),
  },
  welchSatterthwaite: {
    tex: '\\nu_\\mathrm{eff} = \\frac{u_\\mathrm{c}^4}{\\sum_i \\dfrac{u_i^4}{\\nu_i}}',
    symbols: {
      contribution: letter('u_i', 'own', 'contributions'),
      degreesOfFreedom: letter('\\nu_i', '1', 'their degrees of freedom'),
      result: letter('\\nu_\\mathrm{eff}', '1', 'effective degrees of freedom'),
    },
    words: 'Effective degrees of freedom of a combined uncertainty; never from rounded values.',
    sources: [{ of: 'gum', clause: 'G.4.1' }],
    example: example({ contribution: [0.25, 0.57, 0.82], degreesOfFreedom: [9, 4, 14] }, (given) =>
      welchSatterthwaite(
        given.contribution.map((contribution, i) => ({
          contribution,
          degreesOfFreedom: known(given.degreesOfFreedom[i]),
        })),
      ),
    ),
  },
  coverageOf: {
    tex: 'k = t_p(\\nu_\\mathrm{eff}) = F^{-1}_{\\nu_\\mathrm{eff}} \\left( \\tfrac{1 + p}{2} \\right)',
    symbols: {
      coverageProbability: letter('p', '1', 'coverage probability'),
      degreesOfFreedom: letter('\\nu_\\mathrm{eff}', '1', 'effective degrees of freedom'),
      coverageFactor: letter('k', '1', 'coverage factor'),
    },
    words: 'The coverage factor that belongs to a coverage probability.',
    sources: [{ of: 'gum', clause: 'G.3 and G.6' }],
    example: example({ coverageProbability: 0.95, degreesOfFreedom: 18.9987 }, (given) =>
      known(coverageOf(given).coverageFactor),
    ),
  },
  wholeDistribution: {
    tex: 'p_Y = p_1 * p_2 * \\cdots, \\quad \\phi_Y(\\omega) = e^{j \\omega y_0} \\prod_i \\phi_i(c_i \\omega)',
    symbols: {
      constant: letter('y_0', 'own', 'constant of the sum'),
      terms: letter('\\phi_i', '1', 'characteristic functions of the inputs'),
      curve: letter('p_Y', 'own', 'density of the sum'),
    },
    words: 'The whole distribution of a sum of independent parts: their densities convolved.',
    sources: [
      { of: 'gumSimulation', clause: '5.2 (number from memory)' },
      { of: 'derived', clause: 'product of characteristic functions' },
    ],
    example: example({ constant: 26.8 }, ({ constant }) => {
      const terms = pads.map((halfWidth) => ({
        distribution: rectangular({ lower: -halfWidth, upper: halfWidth }),
        sensitivity: 1,
      }));
      return wholeDistribution({ constant, terms, coverageProbability: 0.95 }).symmetric.upper;
    }),
  },
  ...simulatedFormulas,
} as const satisfies FormulaTopic;
