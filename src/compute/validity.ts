import { coverageOf } from './combine/coverage-factor.ts';
import { type FitPoint, fitLine } from './fit.ts';
import { finite, positive, rangeError } from './quantity.ts';
import { checkedReadings, standardDeviation } from './readings.ts';

/** What the instrument shows with the transmitter off, against the reading. In dB. */
export interface FloorCheck {
  readonly marginDb: number;
  /** What the floor adds to the reading; infinite at or below the floor. */
  readonly noiseDb: number;
  /** Whether that is within what was allowed. */
  readonly passed: boolean;
}

/**
 * Is the reading far enough above what the instrument shows without signal? Noise adds as power: 10 dB above it the
 * reading is 0.46 dB too high, 20 dB above 0.04 dB. An offset of a detector, or hum on a trace, adds as volts: 20 dB above it
 * the reading is up to 0.92 dB too high.
 * @param adds how the floor and the signal come together: as powers if not said.
 * @throws RangeError for a number not finite or an allowance not above zero.
 * Source: sum of uncorrelated powers; sum of voltages.
 */
export function checkFloor({
  readingDb,
  floorDb,
  allowedDb,
  adds = 'powers',
}: {
  readingDb: number;
  floorDb: number;
  allowedDb: number;
  adds?: 'powers' | 'volts';
}): FloorCheck {
  const marginDb = finite('checkFloor', 'readingDb', readingDb) - finite('checkFloor', 'floorDb', floorDb);
  const allowed = positive('checkFloor', 'allowedDb', allowedDb);
  const perDecade = adds === 'powers' ? 10 : 20;
  const noiseDb =
    marginDb > 0 ? -perDecade * Math.log10(1 - 10 ** (-marginDb / perDecade)) : Number.POSITIVE_INFINITY;
  return { marginDb, noiseDb, passed: noiseDb <= allowed };
}

/** Fewer reconnections than this say little of a connector (common practice). */
const RECONNECTIONS = 5;

/**
 * How much does taking the connectors off and on again change? The standard deviation of one connection; `enough` from
 * five readings on. Unit: the readings'.
 * @throws RangeError for fewer than two readings or one not finite.
 * Source: GUM 4.2; common practice for the number.
 */
export function checkReconnection(values: readonly number[]): {
  standardDeviation: number;
  largestDifference: number;
  enough: boolean;
} {
  checkedReadings('checkReconnection', values, 2);
  return {
    standardDeviation: standardDeviation(values),
    largestDifference: Math.max(...values) - Math.min(...values),
    enough: values.length >= RECONNECTIONS,
  };
}

/** Drift over the time of the readings, in their unit; times in any one unit. */
export interface DriftCheck {
  readonly perTime: number;
  /** From the first to the last time, along the line. */
  readonly total: number;
  /** Expanded uncertainty of that at 95 %, from the scatter about the line. */
  readonly totalExpanded: number;
  /** Whether the slope stands out of its own scatter at 95 %. */
  readonly significant: boolean;
  /** What to allow for the drift where it is not corrected: half of its size, either way. */
  readonly halfWidth: number;
}

/**
 * Does the reading drift with warm-up or key-down time? A straight line through readings against time.
 * @throws RangeError for fewer than three readings, one not finite, or all at one time.
 * Source: GUM H.3 (line), G.3 (t).
 */
export function checkDrift(
  readings: readonly { readonly time: number; readonly reading: number }[],
): DriftCheck {
  const points = readings.map(({ time, reading }): FitPoint => ({ x: time, y: reading }));
  const line = fitLine({ points });
  const { coverageFactor } = coverageOf({ degreesOfFreedom: line.degreesOfFreedom });
  const span = line.range.upper - line.range.lower;
  const total = line.slope * span;
  return {
    perTime: line.slope,
    total,
    totalExpanded: coverageFactor * line.slopeUncertainty * span,
    significant: Math.abs(line.slope) > coverageFactor * line.slopeUncertainty,
    halfWidth: Math.abs(total) / 2,
  };
}

/**
 * What harmonics may do to a reading, as limits in dB against the fundamental alone. A thermal instrument adds their powers; a peak
 * detector sees their volts with unknown phase, and may be misled either way: a second harmonic 20 dB down raises the
 * power by 0.04 dB and moves a peak by +0.83/-0.92 dB.
 * @param harmonicsDbc levels against the carrier, below 0.
 * @throws RangeError for a level not below 0, or harmonics whose volts together reach the carrier's at a peak detector.
 * Source: sum of powers, sum of phasors.
 */
export function harmonicsLimitsDb({
  harmonicsDbc,
  responds,
}: {
  harmonicsDbc: readonly number[];
  responds: 'mean' | 'peak';
}): { lower: number; upper: number } {
  for (const level of harmonicsDbc)
    if (!(Number.isFinite(level) && level < 0))
      throw rangeError({ where: 'harmonicsLimitsDb', wish: 'a harmonic must be below 0 dBc', got: level });
  if (responds === 'mean') {
    const power = harmonicsDbc.reduce((sum, level) => sum + 10 ** (level / 10), 0);
    return { lower: 0, upper: 10 * Math.log10(1 + power) };
  }
  const volts = harmonicsDbc.reduce((sum, level) => sum + 10 ** (level / 20), 0);
  if (volts >= 1)
    throw rangeError({
      where: 'harmonicsLimitsDb',
      wish: 'volts of harmonics must stay below the carrier',
      got: volts,
    });
  return { lower: 20 * Math.log10(1 - volts), upper: 20 * Math.log10(1 + volts) };
}
