import { finite, type LevelDbm, levelDbm, type Ohms, positive, type VoltsRms, voltsRms } from './quantity.ts';

/** 1 W is 30 dBm: what turns 10 lg of watts into dBm. */
const DBM_AT_ONE_WATT = 30;
/** 1 uV and 1 mV against 1 V, in dB. */
const DB_OF_MICROVOLT = -120;
const DB_OF_MILLIVOLT = -60;

/** A level and the resistance that it is across. */
export interface LevelAcross {
  readonly level: LevelDbm;
  readonly resistance: Ohms;
}

/**
 * The voltage of a level across a resistance, in dBV (decibels above 1 V RMS): dBm + 10 lg(R) - 30.
 * Source: V^2 = P R.
 */
export function levelToDbv({ level, resistance }: LevelAcross): number {
  return level + 10 * Math.log10(resistance) - DBM_AT_ONE_WATT;
}

/**
 * The level that a voltage in dBV across a resistance is: dBV - 10 lg(R) + 30.
 * @throws RangeError unless levelDbv is finite.
 */
export function dbvToLevel({ levelDbv, resistance }: { levelDbv: number; resistance: Ohms }): LevelDbm {
  return levelDbm(finite('dbvToLevel', 'levelDbv', levelDbv) - 10 * Math.log10(resistance) + DBM_AT_ONE_WATT);
}

/** The voltage of a level across a resistance, in dBmV (above 1 mV RMS): 46.99 more than the dBm at 50 ohm. */
export function levelToDbmv(across: LevelAcross): number {
  return levelToDbv(across) - DB_OF_MILLIVOLT;
}

/** The level that a voltage in dBmV across a resistance is. @throws RangeError unless levelDbmv is finite. */
export function dbmvToLevel({ levelDbmv, resistance }: { levelDbmv: number; resistance: Ohms }): LevelDbm {
  const levelDbv = finite('dbmvToLevel', 'levelDbmv', levelDbmv) + DB_OF_MILLIVOLT;
  return dbvToLevel({ levelDbv, resistance });
}

/** The voltage of a level across a resistance, in dBuV (above 1 uV RMS): 106.99 more than the dBm at 50 ohm. */
export function levelToDbuv(across: LevelAcross): number {
  return levelToDbv(across) - DB_OF_MICROVOLT;
}

/** The level that a voltage in dBuV across a resistance is. @throws RangeError unless levelDbuv is finite. */
export function dbuvToLevel({ levelDbuv, resistance }: { levelDbuv: number; resistance: Ohms }): LevelDbm {
  const levelDbv = finite('dbuvToLevel', 'levelDbuv', levelDbuv) + DB_OF_MICROVOLT;
  return dbvToLevel({ levelDbv, resistance });
}

/** The voltage that a level is across a resistance, in volts RMS. */
export function levelToVolts(across: LevelAcross): VoltsRms {
  return voltsRms(10 ** (levelToDbv(across) / 20));
}

/**
 * The level that a voltage is across a resistance: 10 lg(V^2 / R / 1 mW).
 * @throws RangeError for zero volts: no voltage has no level.
 */
export function voltsToLevel({ volts, resistance }: { volts: VoltsRms; resistance: Ohms }): LevelDbm {
  const levelDbv = 20 * Math.log10(positive('voltsToLevel', 'volts', volts));
  return dbvToLevel({ levelDbv, resistance });
}
