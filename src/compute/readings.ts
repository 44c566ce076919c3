import { finite, notNegative, rangeError } from './quantity.ts';

/** What a series of readings of one quantity amounts to, in their unit. */
export interface ReadingsSummary {
  readonly count: number;
  readonly mean: number;
  /** Experimental standard deviation of a single reading; undefined for one reading, which says nothing of its scatter. */
  readonly standardDeviation: number | undefined;
  /** Of the mean: s / sqrt(n). */
  readonly standardDeviationOfMean: number | undefined;
  /** n - 1. */
  readonly degreesOfFreedom: number;
  readonly smallest: number;
  readonly largest: number;
}

/** Returns readings unchanged. @throws RangeError unless there are `least` or more and all are finite. */
export function checkedReadings(where: string, values: readonly number[], least: number): readonly number[] {
  if (values.length < least)
    throw rangeError({ where, wish: `there must be ${least} or more readings`, got: values.length });
  for (const value of values) finite(where, 'reading', value);
  return values;
}

/** Sum with the rounding errors of the additions carried along (Neumaier 1974). */
export function compensatedSum(values: readonly number[]): number {
  let [sum, lost] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}

/**
 * Arithmetic mean, right to the last place or two: deviations from a first mean are averaged once more.
 * @throws RangeError for no readings or one not finite.
 * Source: GUM 4.2.1.
 */
export function mean(values: readonly number[]): number {
  checkedReadings('mean', values, 1);
  const first = compensatedSum(values) / values.length;
  return first + compensatedSum(values.map((value) => value - first)) / values.length;
}

/** Sum of squared deviations from the mean, with what the rounded mean leaves over taken off (two passes, corrected). */
export function squaredDeviations(values: readonly number[]): number {
  const centre = mean(values);
  const deviations = values.map((value) => value - centre);
  const left = compensatedSum(deviations);
  return compensatedSum(deviations.map((d) => d * d)) - (left * left) / values.length;
}

/**
 * Experimental standard deviation of a single reading, n - 1 in the denominator. As exact as the readings themselves are
 * held: about 14 digits of what their binary forms say.
 * @throws RangeError for fewer than two readings or one not finite.
 * Source: GUM 4.2.2.
 */
export function standardDeviation(values: readonly number[]): number {
  checkedReadings('standardDeviation', values, 2);
  return Math.sqrt(Math.max(0, squaredDeviations(values)) / (values.length - 1));
}

/**
 * Mean, scatter and degrees of freedom of a series of readings.
 * @throws RangeError for no readings or one not finite.
 * Source: GUM 4.2.
 */
export function summariseReadings(values: readonly number[]): ReadingsSummary {
  checkedReadings('summariseReadings', values, 1);
  const s = values.length > 1 ? standardDeviation(values) : undefined;
  return {
    count: values.length,
    mean: mean(values),
    standardDeviation: s,
    standardDeviationOfMean: s === undefined ? undefined : s / Math.sqrt(values.length),
    degreesOfFreedom: values.length - 1,
    smallest: values.reduce((a, b) => Math.min(a, b)),
    largest: values.reduce((a, b) => Math.max(a, b)),
  };
}

/** Scatter of one series, known apart from its values. */
export interface Scatter {
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
}

/**
 * One standard deviation from several series of the same procedure: the root of their variances averaged by degrees of freedom,
 * which add up. What makes a single later reading worth something.
 * @throws RangeError for no series, a negative standard deviation, or degrees of freedom not above zero.
 * Source: GUM 4.2.4, H.1.3.2.
 */
export function pooledScatter(series: readonly Scatter[]): Scatter {
  if (series.length === 0)
    throw rangeError({ where: 'pooledScatter', wish: 'there must be 1 or more series', got: 0 });
  let [squares, degreesOfFreedom] = [0, 0];
  for (const { standardDeviation: s, degreesOfFreedom: n } of series) {
    if (!(Number.isFinite(n) && n > 0))
      throw rangeError({ where: 'pooledScatter', wish: 'degreesOfFreedom must be > 0', got: n });
    squares += n * notNegative('pooledScatter', 'standardDeviation', s) ** 2;
    degreesOfFreedom += n;
  }
  return { standardDeviation: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}
