import {
  type BandResult,
  type Input,
  pooledScatter,
  type ReadingsSummary,
  rectangular,
  type Scatter,
  type SumModel,
  standardDeviation,
  student,
  summariseReadings,
} from '#compute';
import { bandOf } from './band.ts';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from './coverage.ts';
import { EVENING_DBM, type Repeated } from './evening.ts';

/** Five readings each of five evenings before, done the same way, in dBm. Invented. */
const BEFORE_DBM = [
  [26.61, 26.83, 26.74, 26.55, 26.72],
  [27.05, 26.93, 27.21, 27.08, 26.97],
  [26.9, 26.78, 26.99, 26.72, 26.86],
  [26.66, 26.81, 26.94, 26.7, 26.75],
  [27.02, 26.84, 26.91, 27.11, 26.98],
] as const;

/** Mean and scatter of the readings that are used. @throws RangeError unless one to ten are. */
export function summaryOf({ count }: Repeated): ReadingsSummary {
  if (!(count >= 1 && count <= EVENING_DBM.length))
    throw new RangeError(`summaryOf: count must be 1 to ${EVENING_DBM.length}, got ${count}`);
  return summariseReadings(EVENING_DBM.slice(0, count));
}

/** Scatter of one reading from all evenings before. */
export const experience = (): Scatter =>
  pooledScatter(
    BEFORE_DBM.map((series) => ({
      standardDeviation: standardDeviation(series),
      degreesOfFreedom: series.length - 1,
    })),
  );

/** Scatter of one reading by what is known; none where a single reading is all there is. */
export function scatterOf(use: Repeated): Scatter | undefined {
  if (use.known === 'pooled') return experience();
  const { standardDeviation: own, degreesOfFreedom } = summaryOf(use);
  return own === undefined ? undefined : { standardDeviation: own, degreesOfFreedom };
}

/** The mean of the readings as a model, in dBm; none where nothing is known of their scatter. */
export function meanModel(use: Repeated): SumModel | undefined {
  const scatter = scatterOf(use);
  if (scatter === undefined) return undefined;
  const { degreesOfFreedom } = scatter;
  const scale = scatter.standardDeviation / Math.sqrt(use.count);
  const { limitsDb } = use;
  const inputs: Input[] = [
    {
      id: 'scatter',
      distribution: student({ location: 0, scale, degreesOfFreedom }),
      standardUncertainty: scale,
      degreesOfFreedom,
    },
  ];
  if (limitsDb > 0)
    inputs.push({
      id: 'in common',
      distribution: rectangular({ lower: -limitsDb, upper: limitsDb }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    });
  return { kind: 'sum', constant: summaryOf(use).mean, inputs, sensitivities: inputs.map(() => 1) };
}

/** Propagation with the effective degrees of freedom; none where nothing is known of the scatter. */
export function meanOf(use: Repeated): BandResult | undefined {
  const model = meanModel(use);
  return model && bandOf(model);
}

/** What somebody claims who takes two standard uncertainties however few readings there are, in dB. */
export function carelessDb(use: Repeated): number | undefined {
  const found = meanOf(use);
  return found && COVERAGE_FACTOR * found.propagation.standardUncertainty;
}

/** What is left however many readings are taken: the middle of what they have in common, in dB. */
export const floorDb = ({ limitsDb }: Repeated): number => COVERAGE_PROBABILITY * limitsDb;
