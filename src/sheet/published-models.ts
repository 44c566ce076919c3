import {
  arcsine,
  curvilinear,
  type Distribution,
  type FunctionModel,
  type Input,
  normal,
  rectangular,
  student,
} from '#compute';

/** Models of published examples that are no sums; checks and the figure that tries them out take them from here. */

const input = (id: string, distribution: Distribution): Input => ({
  id,
  distribution,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const known = (id: string, mean: number, standardDeviation: number): Input =>
  input(id, normal({ mean, standardDeviation }));

const within = (id: string, lower: number, upper: number): Input => input(id, rectangular({ lower, upper }));

/** A t: propagation counts its scale and its degrees of freedom, whatever the shape itself spreads. */
const t = (id: string, location: number, scale: number, degreesOfFreedom: number): Input => ({
  id,
  distribution: student({ location, scale, degreesOfFreedom }),
  standardUncertainty: scale,
  degreesOfFreedom,
});

/** Limits that are themselves in doubt: propagation counts them as if they were not, with degrees of freedom (GUM G.4.2, H.1.6). */
const doubted = (
  id: string,
  {
    halfWidth,
    limitHalfWidth,
    degreesOfFreedom,
  }: {
    readonly halfWidth: number;
    readonly limitHalfWidth: number;
    readonly degreesOfFreedom: number;
  },
): Input => ({
  id,
  distribution: curvilinear({ lower: -halfWidth, upper: halfWidth, limitHalfWidth }),
  standardUncertainty: halfWidth / Math.sqrt(3),
  degreesOfFreedom,
});

/** Standard uncertainty of both parts of the reflection in the comparison loss. */
export const PART_U = 0.005;

/** Comparison loss X1^2 + X2^2 with x2 = 0; the two parts correlated by r. Source: JCGM 101, 9.4. */
export const lossModel = (x1: number, r = 0): FunctionModel => ({
  kind: 'function',
  inputs: [known('X1', x1, PART_U), known('X2', 0, PART_U)],
  f: ([one = 0, two = 0]) => one ** 2 + two ** 2,
  correlations: r === 0 ? [] : [{ a: 'X1', b: 'X2', r }],
});

const NOMINAL_MG = 100_000;
const REFERENCE_AIR = 1.2;

/** Deviation of a weight from 100 g in mg, weighed in air; densities in kg/m3. Source: JCGM 101, 9.3. */
export const massModel = (): FunctionModel => ({
  kind: 'function',
  inputs: [
    known('reference', 100_000, 0.05),
    known('difference', 1.234, 0.02),
    within('air', 1.1, 1.3),
    within('weight', 7000, 9000),
    within('reference density', 7950, 8050),
  ],
  f: ([reference = 0, difference = 0, air = 0, weight = 1, standard = 1]) =>
    (reference + difference) * (1 + (air - REFERENCE_AIR) * (1 / weight - 1 / standard)) - NOMINAL_MG,
});

/** The end gauge of GUM H.1 with the shapes that JCGM 101, 9.5 gives its inputs; deviation from 50 mm in nm. */
export const gaugeModel = (): FunctionModel => ({
  kind: 'function',
  inputs: [
    t('standard', 50_000_623, 25, 18),
    t('difference', 215, 6, 24),
    t('comparator, random', 0, 4, 5),
    t('comparator, systematic', 0, 7, 8),
    within('expansion', 9.5e-6, 13.5e-6),
    known('mean temperature', -0.1, 0.2),
    input('cycle', arcsine({ centre: 0, halfWidth: 0.5 })),
    doubted('expansion difference', { halfWidth: 1e-6, limitHalfWidth: 0.1e-6, degreesOfFreedom: 50 }),
    doubted('temperature difference', { halfWidth: 0.05, limitHalfWidth: 0.025, degreesOfFreedom: 2 }),
  ],
  f: ([standard = 0, d = 0, d1 = 0, d2 = 0, alpha = 0, mean = 0, cycle = 0, dAlpha = 0, dTheta = 0]) =>
    standard + d + d1 + d2 - standard * (dAlpha * (mean + cycle) + alpha * dTheta) - 50_000_000,
});
