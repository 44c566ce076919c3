import { representableDb } from './decibel.ts';
import {
  finite,
  type GainDb,
  gainDb,
  type LevelDbm,
  levelDbm,
  type PowerW,
  positive,
  powerW,
  rangeError,
} from './quantity.ts';

/** 0 dBW is 30 dBm, since 1 W is 1000 mW. */
const DBM_AT_ONE_WATT = 30;

/**
 * Which power is a level? 1 mW x 10^(level/10), in watts.
 * @throws RangeError outside -3000 to 3000 dBm, where a double overflows.
 * Source: definition of dBm; ITU-R V.574.
 */
export function levelToPower(level: LevelDbm): PowerW {
  return powerW(10 ** ((representableDb('levelToPower', 'level', level) - DBM_AT_ONE_WATT) / 10));
}

/**
 * Which level is a power? 10 lg(P / 1 mW), in dBm.
 * @throws RangeError for zero watts: no power has no level.
 * Source: definition of dBm; ITU-R V.574.
 */
export function powerToLevel(power: PowerW): LevelDbm {
  return levelDbm(10 * Math.log10(positive('powerToLevel', 'power', power)) + DBM_AT_ONE_WATT);
}

/** A level in dBm, in dBW (decibels above 1 W): 30 less. */
export function levelToDbw(level: LevelDbm): number {
  return level - DBM_AT_ONE_WATT;
}

/** A level in dBW, in dBm: 30 more. @throws RangeError unless finite. */
export function dbwToLevel(levelDbw: number): LevelDbm {
  return levelDbm(finite('dbwToLevel', 'levelDbw', levelDbw) + DBM_AT_ONE_WATT);
}

/** The level after a gain: dBm + dB = dBm. A loss is a negative gain. */
export function addGain({ level, gain }: { level: LevelDbm; gain: GainDb }): LevelDbm {
  return levelDbm(level + gain);
}

/** How far a level lies above a reference level: dBm - dBm = dB. Negative where it lies below. */
export function levelDifference({ level, reference }: { level: LevelDbm; reference: LevelDbm }): GainDb {
  return gainDb(level - reference);
}

/**
 * An interval of levels in watts, end by end. Lopsided in watts where it is even in dB: never to be written with one
 * plus-minus.
 * @throws RangeError if lower lies above upper, or an end is outside -3000 to 3000 dBm.
 */
export function intervalInWatts({ lower, upper }: { lower: LevelDbm; upper: LevelDbm }): {
  lower: PowerW;
  upper: PowerW;
} {
  if (lower > upper)
    throw rangeError({
      where: 'intervalInWatts',
      wish: 'lower must not be above upper',
      got: `${lower} to ${upper}`,
    });
  return { lower: levelToPower(lower), upper: levelToPower(upper) };
}
