import {
  arcsine,
  componentOf,
  type Input,
  normal,
  rectangular,
  type Statement,
  type SumModel,
} from '#compute';

/** Length of the standard and what the comparator showed more, in nanometres; bench less 20 degrees; expansion. Source: GUM H.1. */
export const STANDARD_NM = 50_000_623;
export const DIFFERENCE_NM = 215;
const BENCH_K = -0.1;
const EXPANSION_PER_K = 11.5e-6;

const known = (
  id: string,
  mean: number,
  standardDeviation: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): Input => ({ id, distribution: normal({ mean, standardDeviation }), degreesOfFreedom });
const stated = (id: string, statement: Statement, reliability?: number): Input =>
  componentOf({ id, statement, unit: 'own', reliability });

/** The standard: its certificate, k = 3. */
const standard = (): Input =>
  stated('standard', { form: 'expanded', expanded: 75, coverageFactor: 3, degreesOfFreedom: 18 });

/** How often the gauges were compared for the mean; the scatter of a comparison was known from more. */
export const COMPARISONS = 5;

/** The comparison of the two gauges: repeatability (pooled), comparator random and systematic, in nm. */
export const differenceInputs = (comparisons = COMPARISONS): readonly Input[] => [
  known('repeatability', 0, 13 / Math.sqrt(comparisons), 24),
  stated('comparator, random', { form: 'coverage', expanded: 10, probability: 0.95, degreesOfFreedom: 5 }),
  stated('comparator, systematic', { form: 'expanded', expanded: 20, coverageFactor: 3 }, 0.25),
];

/** Temperature of the bench: its mean, and the cycle about it whose phase nobody noted, in kelvin. */
export const temperatureInputs = (): readonly Input[] => [
  known('mean', BENCH_K, 0.2),
  {
    id: 'cycle',
    distribution: arcsine({ centre: 0, halfWidth: 0.5 }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
];

/** All inputs of the calibration, in the order of their table. Source: GUM H.1.3. */
export const gaugeInputs = (comparisons = COMPARISONS): readonly Input[] => [
  standard(),
  ...differenceInputs(comparisons),
  stated('expansion difference', { form: 'limits', shape: 'rectangular', halfWidth: 1e-6 }, 0.1),
  stated('temperature difference', { form: 'limits', shape: 'rectangular', halfWidth: 0.05 }, 0.5),
  {
    id: 'expansion',
    distribution: rectangular({ lower: EXPANSION_PER_K - 2e-6, upper: EXPANSION_PER_K + 2e-6 }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
  ...temperatureInputs(),
];

/**
 * The length in nanometres as a sum: l = lS + d - lS (dAlpha theta + alpha dTheta) about its estimates, each sensitivity derived by
 * hand. Expansion and temperature of the bench stand with 0: the differences that they multiply are estimated as 0. Source: GUM H.1.4.
 */
export function gaugeModel(comparisons = COMPARISONS): SumModel {
  return {
    kind: 'sum',
    constant: STANDARD_NM + DIFFERENCE_NM,
    inputs: gaugeInputs(comparisons),
    sensitivities: [1, 1, 1, 1, -STANDARD_NM * BENCH_K, -STANDARD_NM * EXPANSION_PER_K, 0, 0, 0],
  };
}
