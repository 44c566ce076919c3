import {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  gainDb,
  type Interval,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  powerToLevel,
  powerW,
  smallPercentToDb,
  voltsRms,
  voltsToLevel,
} from '#compute';
import type { BandRulersState } from './spec.ts';

/** The load across which the volts stand. */
const LOAD_OHM = 50;
/** The rulers by name: level in dBm, power in watts, volts RMS across the load. */
export type RulerName = 'level' | 'power' | 'volts';

/** The ends of the band around its middle, in dB; lower is negative. */
export function endsOf({ even, halfDb, halfPercent }: BandRulersState): Interval {
  const ends = (toDb: (value: number) => number, half: number): Interval => ({
    lower: toDb(-half),
    upper: toDb(half),
  });
  switch (even) {
    case 'decibels':
      return ends((db) => db + 0, halfDb);
    case 'watts':
      return ends(percentOfPowerToDb, halfPercent);
    case 'volts':
      return ends(percentOfVoltsToDb, halfPercent);
  }
}

/** A value on one of the rulers, from the level that it stands for. */
export function onRuler(name: RulerName, dbm: number): number {
  const level = levelDbm(dbm);
  switch (name) {
    case 'level':
      return dbm;
    case 'power':
      return levelToPower(level);
    case 'volts':
      return levelToVolts({ level, resistance: ohms(LOAD_OHM) });
  }
}

/** The level that a value on one of the rulers stands for; undefined where no power is there. */
export function fromRuler(name: RulerName, value: number): number | undefined {
  if (name === 'level') return Number.isFinite(value) ? value : undefined;
  if (!(Number.isFinite(value) && value > 0)) return undefined;
  return name === 'power'
    ? powerToLevel(powerW(value))
    : voltsToLevel({ volts: voltsRms(value), resistance: ohms(LOAD_OHM) });
}

/** Which field, and how much in it, makes the upper end of the band lie so many dB above the middle. */
export function amountForUpper(
  even: BandRulersState['even'],
  upperDb: number,
): { name: string; value: number } {
  const up = gainDb(Math.max(0, upperDb));
  if (even === 'decibels') return { name: 'halfDb', value: up };
  const value = even === 'watts' ? dbToPercentOfPower(up) : dbToPercentOfVolts(up);
  return { name: 'halfPercent', value };
}

/** Half of the band that a mistake claims, in percent of power; undefined where none is shown. */
export function claimedPercent(state: BandRulersState): number | undefined {
  const upper = gainDb(endsOf(state).upper);
  switch (state.claim) {
    case 'none':
      return undefined;
    case 'samePercent':
      return upper;
    case 'tenPercent':
      return 10 * upper;
    case 'squared':
      return dbToPercentOfVolts(upper) ** 2;
    case 'mirrored':
      return dbToPercentOfPower(upper);
  }
}

/** Nothing is drawn below this share of the middle: a claim of a hundred percent or more has no lower end. */
const LEAST_SHARE = 0.001;

/** The ends that a mistake claims, in dB around the middle. */
export function claimedEnds(state: BandRulersState): Interval | undefined {
  const percent = claimedPercent(state);
  if (percent === undefined) return undefined;
  const lower = Math.max(100 * (LEAST_SHARE - 1), -percent);
  return { lower: percentOfPowerToDb(lower), upper: percentOfPowerToDb(percent) };
}

/** What the small-error rule makes of the upper end, in percent of power: 1 dB is about 23 %. */
export const smallRulePercent = (state: BandRulersState): number =>
  endsOf(state).upper / smallPercentToDb({ percent: 1, quantity: 'power' });
