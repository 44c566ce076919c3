import { rangeError } from './quantity.ts';
import { checkedReadings, compensatedSum, mean } from './readings.ts';

/**
 * How much each reading resembles the one before it: correlation coefficient at lag one. Near 0 for independent readings;
 * near 1 where they drift, and s / sqrt(n) then promises too much.
 * @throws RangeError for fewer than two readings, one not finite, or all equal.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12.
 */
export function serialCorrelation(values: readonly number[]): number {
  const centre = mean(checkedReadings('serialCorrelation', values, 2));
  const deviations = values.map((value) => value - centre);
  const squares = compensatedSum(deviations.map((d) => d * d));
  if (squares === 0)
    throw rangeError({ where: 'serialCorrelation', wish: 'readings must not all be equal', got: values[0] });
  const products = compensatedSum(deviations.slice(1).map((d, i) => d * (deviations[i] ?? 0)));
  return products / squares;
}
