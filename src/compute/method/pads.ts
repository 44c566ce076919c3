import { sumOfGains } from '../decibel.ts';
import { addGain } from '../level.ts';
import { type GainDb, gainDb, type LevelDbm } from '../quantity.ts';
import {
  clearlyAbove,
  type Influence,
  type MethodOutcome,
  outOfRange,
  type RelativeUnit,
  sumInDbm,
} from './method.ts';

/** What a power meter or receiver behind pads and cables shows, and what is known of them. */
export interface PadsReading {
  /** Mean of what was read. */
  readonly reading: LevelDbm;
  /** Corrections from certificates and comparisons: added (VIM 2.53). */
  readonly corrections: readonly GainDb[];
  /** Gains of the links before the meter, negative for pads and cables: taken off. */
  readonly gains: readonly GainDb[];
  /** Levels between which the meter is stated to hold. */
  readonly floor?: LevelDbm;
  readonly largest?: LevelDbm;
  readonly influences: readonly Influence<RelativeUnit>[];
}

/**
 * Level before pads and cables: reading + corrections - gains, as a sum in dBm. Out of range where the reading lies below
 * the stated floor of the meter or above its largest level.
 * Source: a chain of decibels adds.
 */
export function padsIntoMeter({
  reading,
  corrections,
  gains,
  floor,
  largest,
  influences,
}: PadsReading): MethodOutcome {
  if (floor !== undefined && clearlyAbove(floor, reading))
    return outOfRange({ code: 'belowFloor', reading, limit: floor });
  if (largest !== undefined && clearlyAbove(reading, largest))
    return outOfRange({ code: 'aboveLargest', reading, limit: largest });
  const gain = gainDb(sumOfGains(corrections) - sumOfGains(gains));
  return sumInDbm(addGain({ level: reading, gain }), influences);
}
