import type { Interval } from './distribution/distribution.ts';
import { finite, rangeError } from './quantity.ts';
import { type RoundingMode, roundToPlace, roundUncertainty } from './rounding.ts';

/** The numbers of a stated result, each cut to one common place; words and units are added elsewhere. */
export interface StatedResult {
  readonly estimate: number;
  /** Distance down to the lower end and up to the upper end; equal for a symmetric interval. */
  readonly minus: number;
  readonly plus: number;
  readonly interval: Interval;
  /** Whether minus and plus are still equal once rounded: only then may they be written with one +- sign. */
  readonly symmetric: boolean;
  /** Decimal place of the last digit of every number here; undefined if there is no uncertainty to fix one. */
  readonly place: number | undefined;
}

/**
 * The parts of a result as it is stated: the larger of the two distances gets at most two significant digits, everything
 * else is cut to the same place, so that no number shows more digits than the uncertainty bears (GUM 7.2.6). The ends are
 * the rounded estimate less `minus` and plus `plus`, so that what is printed adds up.
 * @param interval the coverage interval about the estimate; both ends finite.
 * @throws RangeError if the estimate is not finite or lies outside the interval.
 */
export function statedResult({
  estimate,
  interval,
  digits = 2,
  mode = 'nearest',
}: {
  estimate: number;
  interval: Interval;
  digits?: 1 | 2;
  mode?: RoundingMode;
}): StatedResult {
  finite('statedResult', 'estimate', estimate);
  finite('statedResult', 'interval.lower', interval.lower);
  finite('statedResult', 'interval.upper', interval.upper);
  const [below, above] = [estimate - interval.lower, interval.upper - estimate];
  if (below < 0 || above < 0)
    throw rangeError({ where: 'statedResult', wish: 'estimate must lie in the interval', got: estimate });
  const { place } = roundUncertainty({ uncertainty: Math.max(below, above), digits, mode });
  if (place === undefined) return { estimate, minus: 0, plus: 0, interval, symmetric: true, place };
  const value = roundToPlace({ value: estimate, place });
  const minus = roundToPlace({ value: below, place, mode });
  const plus = roundToPlace({ value: above, place, mode });
  const lower = roundToPlace({ value: value - minus, place });
  const upper = roundToPlace({ value: value + plus, place });
  return {
    estimate: value,
    minus,
    plus,
    interval: { lower, upper },
    symmetric: minus === plus,
    place,
  };
}
