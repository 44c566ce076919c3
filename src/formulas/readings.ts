import {
  mean,
  pooledScatter,
  serialCorrelation,
  standardDeviation,
  summariseReadings,
  suspectOf,
} from '#compute';
import { comparedFormulas, readingsLetter } from './compared.ts';
import { example, type FormulaTopic, known, letter } from './formula.ts';

const average = letter('\\bar x', 'own', 'arithmetic mean');
const s = letter('s', 'own', 'experimental standard deviation');
const readings = [27.1, 26.9, 27.0, 27.2, 26.9];

/** Readings, lines through points, and results compared. */
export const readingFormulas = {
  mean: {
    tex: '\\bar x = \\frac{1}{n} \\sum_i x_i',
    symbols: { values: readingsLetter, result: average },
    words: 'The arithmetic mean of readings.',
    sources: [{ of: 'gum', clause: '4.2.1' }],
    example: example({ values: readings }, (given) => mean(given.values)),
  },
  standardDeviation: {
    tex: 's = \\sqrt{\\frac{1}{n - 1} \\sum_i (x_i - \\bar x)^2}',
    symbols: { values: readingsLetter, result: s },
    words: 'The scatter of a single reading.',
    sources: [{ of: 'gum', clause: '4.2.2' }],
    example: example({ values: readings }, (given) => standardDeviation(given.values)),
  },
  summariseReadings: {
    tex: '\\bar x = \\frac{1}{n} \\sum_i x_i, \\quad s_{\\bar x} = \\frac{s}{\\sqrt n}, \\quad \\nu = n - 1',
    symbols: {
      values: readingsLetter,
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
      values: readingsLetter,
      significance: letter('\\alpha', '1', 'probability of pointing at a sound reading'),
      result: letter('G', '1', 'distance of the furthest reading'),
    },
    words: 'Whether the furthest reading stands too far off: a reason is still needed to leave it out.',
    sources: [{ of: 'statistics', clause: '1.3.5.17.1' }],
    example: example({ values: [10, 10, 13, 10.1, 9.9], significance: 0.05 }, (given) =>
      known(suspectOf(given)?.statistic),
    ),
  },
  ...comparedFormulas,
} as const satisfies FormulaTopic;
