import { evaluate, type Interval } from '#compute';
import { COVERAGE_PROBABILITY } from './coverage.ts';
import type { Repeated } from './evening.ts';
import { carelessDb, floorDb, meanModel, meanOf, summaryOf } from './few-readings.ts';

/** The whole distribution of what the mean may be, as far as it is shown. */
export interface WholeMean {
  /** The middle of it, holding as much as two standard uncertainties of a bell. */
  readonly interval: Interval;
  /** What the careless interval holds of it, 0 to 1. */
  readonly covered: number;
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** Points of the curve, and how far it reaches beyond the interval: the tails of few readings would never end. */
const POINTS = 120;
const REACH = 1.25;
const DIGITS = 6;
const short = (value: number): number => Number(value.toPrecision(DIGITS));

/** The whole distribution of a mean; none where nothing is known of the scatter. */
export function wholeMeanOf(use: Repeated): WholeMean | undefined {
  const model = meanModel(use);
  const careless = carelessDb(use);
  if (model === undefined || careless === undefined) return undefined;
  const { whole } = evaluate({ model, coverageProbability: COVERAGE_PROBABILITY });
  if ('unavailable' in whole)
    throw new RangeError(`wholeMeanOf: the mean must have a whole distribution, got ${whole.unavailable}`);
  const { symmetric, shareBelow } = whole;
  const reach = REACH * Math.max(symmetric.upper - model.constant, careless);
  const step = (2 * reach) / POINTS;
  const curve = Array.from({ length: POINTS }, (_, k) => {
    const from = model.constant - reach + k * step;
    const density = Math.max(0, shareBelow(from + step) - shareBelow(from)) / step;
    return { x: short(from + step / 2), density: short(density) };
  });
  const { constant } = model;
  return {
    interval: symmetric,
    covered: shareBelow(constant + careless) - shareBelow(constant - careless),
    curve,
  };
}

/** All that is shown of a mean: plain data that knows itself what it is of. */
export interface FoundMean {
  readonly use: Repeated;
  /** What the intervals hold, 0 to 1. */
  readonly coverageProbability: number;
  readonly meanDbm: number;
  /** What is left however often it is read, in dB. */
  readonly floorDb: number;
  /** Absent where nothing is known of the scatter. */
  readonly band?: {
    readonly carelessDb: number;
    readonly standardUncertainty: number;
    readonly coverageFactor: number;
    /** Effective ones; undefined where they are as good as many. */
    readonly degreesOfFreedom: number | undefined;
    readonly whole: WholeMean;
  };
}

/** Degrees of freedom above this are as good as many. */
const MANY_DEGREES = 1000;

/** All that is shown of the mean of some readings. */
export function foundMeanOf(use: Repeated): FoundMean {
  const found = meanOf(use)?.propagation;
  const whole = wholeMeanOf(use);
  const careless = carelessDb(use);
  const known = {
    use,
    coverageProbability: COVERAGE_PROBABILITY,
    meanDbm: summaryOf(use).mean,
    floorDb: floorDb(use),
  };
  if (found === undefined || whole === undefined || careless === undefined) return known;
  const { standardUncertainty, coverageFactor } = found;
  const degreesOfFreedom = found.degreesOfFreedom > MANY_DEGREES ? undefined : found.degreesOfFreedom;
  return {
    ...known,
    band: { carelessDb: careless, standardUncertainty, coverageFactor, degreesOfFreedom, whole },
  };
}
