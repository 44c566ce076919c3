import { finite, rangeError } from './quantity.ts';

/**
 * How a number is cut to its place.
 * `nearest`: to the nearest, a tie to the even digit (ISO 80000-1, annex B, rule A): ties then push neither up nor down,
 * and the GUM does the same in 4.4.3, where 100.145 becomes 100.14.
 * `up`: away from zero unless what is cut off is at most a tenth of the last place. Both examples of GUM 7.2.6 follow:
 * 10.47 mohm becomes 11 mohm, 28.05 kHz becomes 28 kHz. Where to draw that line is this project's own choice.
 */
export type RoundingMode = 'nearest' | 'up';

/** What `up` may cut off, in units of the last place kept. */
const NEGLIGIBLE_PART = 0.1;
/** Digits that a sum of doubles can be trusted to: what lies beyond is noise of the arithmetic and decides no tie. */
const TRUSTED_DIGITS = 14;
/** Places beyond which a power of ten is no longer a normal double. */
const LARGEST_PLACE = 290;

/** A decimal number as its digits and the exponent of the first: 0.035 is digits "35", exponent -2. */
function decimalOf(magnitude: number): { digits: string; exponent: number } {
  const [mantissa = '0', exponent = '0'] = magnitude.toExponential(TRUSTED_DIGITS - 1).split('e');
  return { digits: mantissa.replace('.', ''), exponent: Number(exponent) };
}

/** Whether the digits cut off raise the last kept one. `rest` has one digit at least. */
function raises({ kept, rest, mode }: { kept: string; rest: string; mode: RoundingMode }): boolean {
  const part = Number(`0.${rest}`);
  if (mode === 'up') return part > NEGLIGIBLE_PART;
  return part > 0.5 || (part === 0.5 && Number(kept) % 2 === 1);
}

/**
 * A value cut to a decimal place: place -2 keeps hundredths, 1 keeps tens. Works on the decimal digits that a reader
 * sees, so that 100.145 is a tie although its double lies below. Idempotent; keeps the sign; never gives -0.
 * @throws RangeError unless value is finite and place a whole number from -290 to 290.
 * Source: ISO 80000-1, annex B; GUM 7.2.6.
 */
export function roundToPlace({
  value,
  place,
  mode = 'nearest',
}: {
  value: number;
  place: number;
  mode?: RoundingMode;
}): number {
  finite('roundToPlace', 'value', value);
  if (!Number.isInteger(place) || Math.abs(place) > LARGEST_PLACE)
    throw rangeError({
      where: 'roundToPlace',
      wish: 'place must be a whole number from -290 to 290',
      got: place,
    });
  const { digits, exponent } = decimalOf(Math.abs(value));
  const keep = exponent - place + 1;
  if (keep >= digits.length) return value;
  const kept = keep > 0 ? digits.slice(0, keep) : '0';
  const rest = keep >= 0 ? digits.slice(keep) : `${'0'.repeat(-keep)}${digits}`;
  const whole = BigInt(kept) + (raises({ kept, rest, mode }) ? 1n : 0n);
  return whole === 0n ? 0 : Math.sign(value) * Number(`${whole}e${place}`);
}

/**
 * An uncertainty cut to one or two significant digits, and the place of its last digit. 0.0996 becomes 0.10, place -2.
 * `place` is undefined for an uncertainty of 0, which fixes no place.
 * @param digits 1 or 2: at most two significant digits are usually enough (GUM 7.2.6).
 * @throws RangeError unless the uncertainty is finite and >= 0 and digits is 1 or 2.
 */
export function roundUncertainty({
  uncertainty,
  digits = 2,
  mode = 'nearest',
}: {
  uncertainty: number;
  digits?: 1 | 2;
  mode?: RoundingMode;
}): { value: number; place: number | undefined } {
  if (!(Number.isFinite(uncertainty) && uncertainty >= 0))
    throw rangeError({ where: 'roundUncertainty', wish: 'uncertainty must be >= 0', got: uncertainty });
  if (digits !== 1 && digits !== 2)
    throw rangeError({ where: 'roundUncertainty', wish: 'digits must be 1 or 2', got: digits });
  if (uncertainty === 0) return { value: 0, place: undefined };
  const exponent = decimalOf(uncertainty).exponent;
  const place = exponent - digits + 1;
  const value = roundToPlace({ value: uncertainty, place, mode });
  // 0.0996 rounds up to 0.100, which would show a third digit: one place less.
  return decimalOf(value).exponent > exponent ? { value, place: place + 1 } : { value, place };
}
