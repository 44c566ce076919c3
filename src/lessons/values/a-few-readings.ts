import { coverageOf, logGamma } from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import { wholeMeanOf } from '../../sheet/evaluated-readings.ts';
import { clubReadings, type Repeated } from '../../sheet/evening.ts';
import { carelessDb, experience, floorDb, summaryOf } from '../../sheet/few-readings.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';

const SHARED_DB = 0.5;
const use = (change: Partial<Repeated> = {}): Repeated => ({ ...clubReadings(), ...change });
const even = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const size = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (share: number, decimals = 0): string =>
  percentText('shown', { percent: 100 * share, decimals });
const level = (of: Repeated): string => levelText('shown', { levelDbm: summaryOf(of).mean, decimals: 2 });
const careless = (of: Repeated): string => even(carelessDb(of) ?? Number.NaN);

function whole(of: Repeated): string {
  const { interval } = wholeMeanOf(of) ?? { interval: { lower: Number.NaN, upper: Number.NaN } };
  return even((interval.upper - interval.lower) / 2);
}

const factorFrom = (degreesOfFreedom: number): number =>
  coverageOf({ coverageProbability: COVERAGE_PROBABILITY, degreesOfFreedom }).coverageFactor;
const factor = (degreesOfFreedom: number): string =>
  numberText('shown', { value: factorFrom(degreesOfFreedom), decimals: 2 });

/** How far the band of so many readings reaches, in their standard deviations. */
const reach = (count: number): number => factorFrom(count - 1) / Math.sqrt(count);

/** How far a standard deviation of so many readings is itself in doubt, as a share of it. Source: GUM E.4.3. */
function doubtOfScatter(count: number): number {
  const c = Math.sqrt(2 / (count - 1)) * Math.exp(logGamma(count / 2) - logGamma((count - 1) / 2));
  return Math.sqrt(1 / c ** 2 - 1);
}

/** What somebody claims who divides all there is by the root of the number of readings, in dB. */
function allByRoot({ count, limitsDb }: Repeated): number {
  const { standardDeviation: s = 0 } = summaryOf(use({ count }));
  return (COVERAGE_FACTOR * Math.sqrt(s ** 2 + limitsDb ** 2 / 3)) / Math.sqrt(count);
}

/** Numbers of the lesson on few readings. */
export function readingsValues(): Readonly<Record<string, () => string>> {
  const two = use({ count: 2 });
  const three = use();
  const ten = use({ count: 10 });
  const tenShared = use({ count: 10, limitsDb: SHARED_DB });
  return {
    mean: () => level(three),
    scatter: () => size(summaryOf(three).standardDeviation ?? Number.NaN),
    ofMean: () => size(summaryOf(three).standardDeviationOfMean ?? Number.NaN),
    careless: () => careless(three),
    whole: () => whole(three),
    covered: () => percent(wholeMeanOf(three)?.covered ?? Number.NaN),
    doubt: () => percent(doubtOfScatter(3)),
    factorTwo: () => factor(1),
    factorThree: () => factor(2),
    factorFive: () => factor(4),
    factorTen: () => factor(9),
    wholeTwo: () => whole(two),
    wholeTen: () => whole(ten),
    twiceTheWork: () => percent(1 - reach(20) / reach(10)),
    pooled: () => size(experience().standardDeviation),
    pooledDegrees: () => numberText('shown', { value: experience().degreesOfFreedom, decimals: 0 }),
    pooledFactor: () => factor(experience().degreesOfFreedom),
    wholePooled: () => whole(use({ known: 'pooled' })),
    wholeOnePooled: () => whole(use({ known: 'pooled', count: 1 })),
    sharedThree: () => whole(use({ limitsDb: SHARED_DB })),
    sharedTen: () => whole(tenShared),
    floor: () => even(floorDb(tenShared)),
    twoAsMany: () =>
      `${careless(two)} is claimed and holds ${percent(wholeMeanOf(two)?.covered ?? Number.NaN)}; ${whole(two)} would be right`,
    dividedAll: () =>
      `${even(allByRoot(tenShared))} is claimed; ${whole(tenShared)} is true, of which ${even(floorDb(tenShared))} never goes`,
    oneOnly: () => `${level(use({ count: 1 }))}, and no band that anybody could check`,
  };
}
