import { shareWithin } from '../special/share.ts';
import { solveRising } from '../special/solve.ts';
import type { Distribution, Interval } from './distribution.ts';

/** Knots on either side of the middle, crowded at the limits and at the middle. */
const KNOTS = 96;

/** What a bounded shape needs to be a distribution: its share below and density at any place inside. */
export interface Numeric
  extends Pick<Distribution, 'shape' | 'mean' | 'standardDeviation' | 'limits' | 'sample'> {
  /** Where the density may have a peak or a corner. */
  readonly middle: number;
  at(x: number): { value: number; slope: number };
}

/** Share below at places in rising order, with its slope there. */
interface Table {
  readonly x: Float64Array;
  readonly value: Float64Array;
  readonly slope: Float64Array;
}

function placesOf({ lower, upper }: Interval, middle: number): number[] {
  const between = (from: number, to: number) =>
    Array.from(
      { length: KNOTS },
      (_, k) => from + ((to - from) * (1 - Math.cos(((k + 0.5) * Math.PI) / KNOTS))) / 2,
    );
  return [lower, ...between(lower, middle), ...between(middle, upper), upper];
}

function tableOf({ at, limits, middle }: Numeric): Table {
  const places = placesOf(limits, middle);
  const last = places.length - 1;
  const inside = places.map((x, k) => (k === 0 || k === last ? { value: k === 0 ? 0 : 1, slope: 0 } : at(x)));
  return {
    x: Float64Array.from(places),
    value: Float64Array.from(inside, ({ value }) => value),
    slope: Float64Array.from(inside, ({ slope }) => slope),
  };
}

/** Index of the last entry that is at most `wanted`, but never the last of all. */
function indexOf(row: Float64Array, wanted: number): number {
  let low = 0;
  let high = row.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((row[middle] as number) <= wanted) low = middle;
    else high = middle;
  }
  return low;
}

/** The cubic through two knots with their slopes (Hermite), at x between knots k and k + 1. */
function cubicAt({ x: places, value, slope }: Table, k: number, x: number): { value: number; slope: number } {
  const from = places[k] as number;
  const width = (places[k + 1] as number) - from;
  const t = (x - from) / width;
  const [v0, v1] = [value[k] as number, value[k + 1] as number];
  const [s0, s1] = [width * (slope[k] as number), width * (slope[k + 1] as number)];
  const square = 3 * (v1 - v0) - 2 * s0 - s1;
  const cube = s0 + s1 - 2 * (v1 - v0);
  return {
    value: v0 + t * (s0 + t * (square + t * cube)),
    slope: (s0 + t * (2 * square + t * 3 * cube)) / width,
  };
}

/**
 * A distribution from its share below and density where these are slow: both are taken once, on first use, at 194
 * places, and a cubic joins them. For smooth shapes the shares between are right to about 1e-7.
 */
export function numeric(given: Numeric): Distribution {
  const { shape, mean, standardDeviation, limits, sample } = given;
  let table: Table | undefined;
  const made = () => {
    table ??= tableOf(given);
    return table;
  };
  const at = (x: number) => cubicAt(made(), indexOf(made().x, x), x);
  const within = (x: number) => x > limits.lower && x < limits.upper;
  return {
    shape,
    mean,
    standardDeviation,
    limits,
    sample,
    density: (x) => (within(x) ? Math.max(0, at(x).slope) : 0),
    shareBelow: (x) => (within(x) ? at(x).value : x > limits.lower ? 1 : 0),
    quantile: (share) => {
      shareWithin('quantile', share);
      const k = indexOf(made().value, share);
      const [lower, upper] = [made().x[k] as number, made().x[k + 1] as number];
      if (share === 0 || share === 1) return share === 0 ? limits.lower : limits.upper;
      const tolerance = 1e-12 * (limits.upper - limits.lower);
      return solveRising((x) => cubicAt(made(), k, x), { wanted: share, lower, upper, tolerance });
    },
  };
}
