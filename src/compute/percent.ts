import { representableDb } from './decibel.ts';
import { finite, type GainDb, gainDb, rangeError } from './quantity.ts';
import type { PercentOf } from './statement.ts';

/** Decibels per natural logarithm of a ratio: of powers (10/ln 10) and of volts (20/ln 10). */
const DB_PER_LN = { power: 10 / Math.LN10, volts: 20 / Math.LN10 } as const;

/** Which quantity a percentage is counted in. */
export type PercentQuantity = keyof typeof DB_PER_LN;

/** The share 0.01 x percent, if what is left stays above zero. */
function changeOf(where: string, percent: number): number {
  if (!(finite(where, 'percent', percent) > -100))
    throw rangeError({ where, wish: 'percent must be > -100', got: percent });
  return percent / 100;
}

/**
 * A change of power in percent, in dB: 10 lg(1 + p/100). +5 % is +0.212 dB, -5 % is -0.223 dB.
 * @throws RangeError unless percent is finite and > -100.
 */
export function percentOfPowerToDb(percent: number): GainDb {
  return gainDb(DB_PER_LN.power * Math.log1p(changeOf('percentOfPowerToDb', percent)));
}

/**
 * A change of voltage (resistance unchanged) in percent, in dB: 20 lg(1 + p/100). +3 % is +0.257 dB.
 * @throws RangeError unless percent is finite and > -100.
 */
export function percentOfVoltsToDb(percent: number): GainDb {
  return gainDb(DB_PER_LN.volts * Math.log1p(changeOf('percentOfVoltsToDb', percent)));
}

/**
 * A gain in dB as a change of power in percent: 100 (10^(gain/10) - 1). +1 dB is +25.9 %, -1 dB is -20.6 %.
 * @throws RangeError outside -3000 to 3000 dB.
 */
export function dbToPercentOfPower(gain: GainDb): number {
  return 100 * Math.expm1(representableDb('dbToPercentOfPower', 'gain', gain) / DB_PER_LN.power);
}

/**
 * A gain in dB as a change of voltage in percent: 100 (10^(gain/20) - 1). +1 dB is +12.2 %, -1 dB is -10.9 %.
 * @throws RangeError outside -3000 to 3000 dB.
 */
export function dbToPercentOfVolts(gain: GainDb): number {
  return 100 * Math.expm1(representableDb('dbToPercentOfVolts', 'gain', gain) / DB_PER_LN.volts);
}

/**
 * The small-error rule: 1 % of power is about 0.0434 dB, 1 % of volts 0.0869 dB. An approximation for small errors:
 * for a true -1 dB (-20.6 % of power) it says -0.89 dB; the exact form is {@link percentOfPowerToDb}.
 * @throws RangeError unless percent is finite.
 */
export function smallPercentToDb({
  percent,
  quantity,
}: {
  percent: number;
  quantity: PercentQuantity;
}): GainDb {
  return gainDb((DB_PER_LN[quantity] * finite('smallPercentToDb', 'percent', percent)) / 100);
}

/**
 * Where the true level can lie against the reading, in dB, if the reading is good to +-percent.
 * Of the reading: the truth is reading x (1 +- p). Of the true value: the reading is truth x (1 +- p), so that the truth
 * is reading / (1 -+ p). 3 % of volts: -0.265 to +0.257 dB of the reading, -0.257 to +0.265 dB of the true value.
 * @param percent half-width, 0 or more and below 100.
 * @throws RangeError outside that range.
 */
export function percentLimitsToDb({
  percent,
  quantity,
  of,
}: {
  percent: number;
  quantity: PercentQuantity;
  of: PercentOf;
}): { lower: GainDb; upper: GainDb } {
  if (!(percent >= 0 && percent < 100))
    throw rangeError({
      where: 'percentLimitsToDb',
      wish: 'percent must be from 0 to below 100',
      got: percent,
    });
  const up = DB_PER_LN[quantity] * Math.log1p(percent / 100);
  const down = DB_PER_LN[quantity] * Math.log1p(-percent / 100);
  const [lower, upper] = of === 'reading' ? [down, up] : [0 - up, 0 - down];
  return { lower: gainDb(lower), upper: gainDb(upper) };
}
