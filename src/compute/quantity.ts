/**
 * Brands for quantities that look alike as bare numbers. A gain where a level is wanted does not compile;
 * the makers check the value, so that nothing not finite enters the computation.
 *
 * Units: a level in dBm (decibels above 1 mW), a gain in dB (a ratio of powers; negative for loss), power in watts,
 * voltage in volts RMS, resistance in ohms.
 */
declare const quantity: unique symbol;
type Branded<Name extends string> = number & { readonly [quantity]: Name };

/** A power level in dBm: decibels above 1 mW. */
export type LevelDbm = Branded<'level in dBm'>;
/** A gain in dB, the ratio of two powers; negative for a loss. */
export type GainDb = Branded<'gain in dB'>;
/** A power in watts, never negative. */
export type PowerW = Branded<'power in W'>;
/** A voltage in volts RMS, never negative. */
export type VoltsRms = Branded<'volts RMS'>;
/** The peak of an alternating voltage, in volts above its middle, never negative. */
export type VoltsPeak = Branded<'volts peak'>;
/** An alternating voltage from trough to crest, in volts, never negative. */
export type VoltsPeakToPeak = Branded<'volts peak to peak'>;
/** A resistance in ohms, above zero. */
export type Ohms = Branded<'resistance in ohm'>;

/** Says which function wanted what and what it got, in the one form that all of `compute` throws. */
export function rangeError({ where, wish, got }: { where: string; wish: string; got: unknown }): RangeError {
  return new RangeError(`${where}: ${wish}, got ${typeof got === 'number' ? got : JSON.stringify(got)}`);
}

/** Returns `value` unchanged if it is finite. @throws RangeError naming function and parameter otherwise. */
export function finite(where: string, name: string, value: number): number {
  if (!Number.isFinite(value))
    throw rangeError({ where, wish: `${name} must be a finite number`, got: value });
  return value;
}

/** Returns `value` unchanged if it is finite and above zero. @throws RangeError otherwise. */
export function positive(where: string, name: string, value: number): number {
  if (!(Number.isFinite(value) && value > 0))
    throw rangeError({ where, wish: `${name} must be > 0`, got: value });
  return value;
}

/** Returns `value` unchanged if it is finite and zero or more. @throws RangeError otherwise. */
export function notNegative(where: string, name: string, value: number): number {
  if (!(Number.isFinite(value) && value >= 0))
    throw rangeError({ where, wish: `${name} must be >= 0`, got: value });
  return value;
}

/** A level in dBm. @throws RangeError unless finite. */
export const levelDbm = (value: number): LevelDbm => finite('levelDbm', 'value', value) as LevelDbm;
/** A gain in dB, negative for loss. @throws RangeError unless finite. */
export const gainDb = (value: number): GainDb => finite('gainDb', 'value', value) as GainDb;
/** A power in watts. @throws RangeError unless finite and >= 0. */
export const powerW = (value: number): PowerW => notNegative('powerW', 'value', value) as PowerW;
/** A voltage in volts RMS. @throws RangeError unless finite and >= 0. */
export const voltsRms = (value: number): VoltsRms => notNegative('voltsRms', 'value', value) as VoltsRms;
/** A peak voltage in volts. @throws RangeError unless finite and >= 0. */
export const voltsPeak = (value: number): VoltsPeak => notNegative('voltsPeak', 'value', value) as VoltsPeak;
/** A voltage from trough to crest, in volts. @throws RangeError unless finite and >= 0. */
export const voltsPeakToPeak = (value: number): VoltsPeakToPeak =>
  notNegative('voltsPeakToPeak', 'value', value) as VoltsPeakToPeak;
/** A resistance in ohms. @throws RangeError unless finite and > 0. */
export const ohms = (value: number): Ohms => positive('ohms', 'value', value) as Ohms;
