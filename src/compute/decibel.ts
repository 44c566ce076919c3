import { type GainDb, gainDb, positive, rangeError } from './quantity.ts';

/** 20/ln 10, the decibels in one neper (IUPAC Gold Book, "neper"). */
const DB_PER_NEPER = 20 / Math.LN10;

/** Beyond this many decibels a double can no longer hold the power ratio (10^308 is 3080 dB). */
const LARGEST_DB = 3000;

/** Returns `value` unchanged if its power ratio fits a double. @throws RangeError beyond 3000 dB either way. */
export function representableDb(where: string, name: string, value: number): number {
  if (!(Math.abs(value) <= LARGEST_DB))
    throw rangeError({ where, wish: `${name} must be from -3000 to 3000`, got: value });
  return value;
}

/**
 * How many decibels is a ratio of two powers? 10 lg(P/P0).
 * @param powerRatio any ratio > 0. Worst error: a few units in the last place.
 * @throws RangeError unless powerRatio is finite and > 0.
 * Source: SI Brochure (9th ed.), chapter 4; ITU-R V.574.
 */
export function powerRatioToDb(powerRatio: number): GainDb {
  return gainDb(10 * Math.log10(positive('powerRatioToDb', 'powerRatio', powerRatio)));
}

/**
 * Which ratio of powers is a gain in dB? 10^(gain/10).
 * @throws RangeError outside -3000 to 3000 dB, where a double overflows.
 * Source: inverse of {@link powerRatioToDb}.
 */
export function dbToPowerRatio(gain: GainDb): number {
  return 10 ** (representableDb('dbToPowerRatio', 'gain', gain) / 10);
}

/**
 * How many decibels is a ratio of two amplitudes (volts, field strengths) across equal resistances? 20 lg(V/V0).
 * @param amplitudeRatio any ratio > 0.
 * @throws RangeError unless amplitudeRatio is finite and > 0.
 * Source: SI Brochure (9th ed.), chapter 4; ITU-R V.574.
 */
export function amplitudeRatioToDb(amplitudeRatio: number): GainDb {
  return gainDb(20 * Math.log10(positive('amplitudeRatioToDb', 'amplitudeRatio', amplitudeRatio)));
}

/**
 * Which ratio of amplitudes is a gain in dB, at equal resistances? 10^(gain/20).
 * @throws RangeError outside -3000 to 3000 dB.
 * Source: inverse of {@link amplitudeRatioToDb}.
 */
export function dbToAmplitudeRatio(gain: GainDb): number {
  return 10 ** (representableDb('dbToAmplitudeRatio', 'gain', gain) / 20);
}

/** A gain in nepers: 1 dB = ln 10 / 20 Np. Any finite gain. Source: IUPAC Gold Book; SI Brochure, chapter 4. */
export function dbToNeper(gain: GainDb): number {
  return gain / DB_PER_NEPER;
}

/**
 * A gain given in nepers, in dB: 1 Np = 20/ln 10 dB = 8.685 89 dB.
 * @throws RangeError unless the gain is finite.
 * Source: IUPAC Gold Book; SI Brochure, chapter 4.
 */
export function neperToDb(gainNeper: number): GainDb {
  return gainDb(gainNeper * DB_PER_NEPER);
}

/**
 * The gain of several links in a row: the sum of their gains in dB. No link: 0 dB.
 * Source: logarithm of the product of ratios.
 */
export function sumOfGains(gains: readonly GainDb[]): GainDb {
  return gainDb(gains.reduce((sum, gain) => sum + gain, 0));
}
