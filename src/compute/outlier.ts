import { openShare } from './combine/coverage-factor.ts';
import { checkedReadings, mean, standardDeviation } from './readings.ts';
import { studentQuantile } from './special/student.ts';

/** The reading that stands furthest off, and whether it stands too far off to be one of them. */
export interface Suspect {
  /** Its place in the series, from 0. */
  readonly index: number;
  readonly value: number;
  /** Its distance from the mean in standard deviations, its own value counted in both. */
  readonly statistic: number;
  /** What that distance exceeds with probability `significance` if all readings are alike and normal. */
  readonly critical: number;
  readonly suspicious: boolean;
}

/**
 * Points at the reading furthest from the mean, by Grubbs' test for one outlier on either side. It removes nothing: a
 * reading is left out only for a reason that was found, and then it is said. Undefined where all readings are equal.
 * @param significance probability of pointing at a sound reading, 0.05 if not said.
 * @throws RangeError for fewer than three readings, one not finite, or a significance outside 0 to 1.
 * Sources: F. E. Grubbs, Technometrics 11 (1969) 1; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1; ISO 5725-2, 7.3.4.
 */
export function suspectOf({
  values,
  significance = 0.05,
}: {
  values: readonly number[];
  significance?: number;
}): Suspect | undefined {
  checkedReadings('suspectOf', values, 3);
  openShare('suspectOf', 'significance', significance);
  const [centre, s, n] = [mean(values), standardDeviation(values), values.length];
  if (s === 0) return undefined;
  const distances = values.map((value) => Math.abs(value - centre) / s);
  const index = distances.reduce((best, d, i) => (d > (distances[best] ?? 0) ? i : best), 0);
  const t = studentQuantile({ share: significance / (2 * n), degreesOfFreedom: n - 2 });
  const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
  const statistic = distances[index] ?? 0;
  return { index, value: values[index] ?? centre, statistic, critical, suspicious: statistic > critical };
}
