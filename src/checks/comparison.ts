import { normalisedError, weightedMean } from '#compute';
import type { CheckSource } from './check.ts';
import { figure } from './figure.ts';

const results = [
  { value: 10, expanded: 4 },
  { value: 30, expanded: 5 },
] as const;

const combined = () =>
  weightedMean(results.map(({ value, expanded }) => ({ value, standardUncertainty: expanded })));

/** Comparing two results. */
export function comparison(): CheckSource {
  return {
    id: 'comparison',
    name: 'Comparing results',
    citation: 'Formulas of ISO 13528 and ISO/IEC 17043; the example is worked out apart from this site',
    checks: [
      {
        id: 'comparison-weighted-mean',
        clause: 'weighted mean, chi-square',
        title: 'two results that do not agree have a weighted mean and a chi-square that says so',
        status: 'recomputed',
        given: '10 ± 4 and 30 ± 5, standard uncertainties',
        figures: [
          figure('weighted mean', '17.8049', '', () => combined().value),
          figure('its u', '3.1235', '', () => combined().standardUncertainty),
          figure('chi-square', '9.756', '', () => combined().chiSquare),
          figure('Birge ratio', '3.1235', '', () => combined().birgeRatio),
        ],
        note: 'That the Birge ratio and u have the same digits is chance: both are 20/√41.',
      },
      {
        id: 'comparison-normalised-error',
        clause: 'E_n',
        title: 'the normalised error of the same two is the difference over its uncertainty',
        status: 'recomputed',
        given: '10 and 30 with U = 4 and 5',
        figures: [
          figure('|E_n|', '3.1235', '', () =>
            Math.abs(normalisedError({ result: results[0], reference: results[1] }).normalisedError),
          ),
        ],
      },
    ],
  };
}
