import { positive, rangeError } from '#compute';
import { decimalsFor } from './place.ts';
import { powerUnitFor } from './power-units.ts';
import { numberText, quantityText } from './quantity-text.ts';
import type { Style } from './style.ts';

/** An end more than ten times the other (10 dB) has a prefix and digits of its own: one place cannot serve both. */
const WIDE_RATIO = 10;

/** Digits of a power that is taken as exact. */
const EXACT_DIGITS = 4;

/**
 * A power to so many significant digits, in the unit that gives it a number from 1 to 999: `501 mW`, `1.05 W`, `9.3 µW`.
 * @throws RangeError unless powerW is finite and digits is whole, 1 to 15.
 */
export function powerText(style: Style, { powerW, digits }: { powerW: number; digits: number }): string {
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15))
    throw rangeError({ where: 'powerText', wish: 'digits must be whole, 1 to 15', got: digits });
  if (powerW === 0) return quantityText(style, { value: 0, decimals: 0, unit: 'W' });
  // Rounded first: 999.6 mW to three digits is 1.00 W.
  const rounded = Number(powerW.toPrecision(digits));
  const { unit, watts } = powerUnitFor(rounded);
  const value = rounded / watts;
  return quantityText(style, { value, decimals: digits - 1 - exponentOf(value), unit });
}

/** The decimal exponent of |value| as printed: 9.999999999 that stands for 10 counts as 10. */
function exponentOf(value: number): number {
  return Number(value.toExponential(14).split('e')[1]);
}

/** An interval of powers in watts; lowerW <= upperW. */
export interface PowerInterval {
  readonly lowerW: number;
  readonly upperW: number;
}

function checked(where: string, { lowerW, upperW }: PowerInterval): void {
  if (!(Number.isFinite(lowerW) && Number.isFinite(upperW) && lowerW <= upperW))
    throw rangeError({
      where,
      wish: 'lowerW must be finite and not above a finite upperW',
      got: `${lowerW} to ${upperW}`,
    });
}

const isWide = ({ lowerW, upperW }: PowerInterval) => lowerW > 0 && upperW > WIDE_RATIO * lowerW;

/** An interval of powers, as many digits as its width bears: `438 to 601 mW`. @throws RangeError unless finite and in order. */
export function powerIntervalText(style: Style, interval: PowerInterval): string {
  checked('powerIntervalText', interval);
  const { lowerW, upperW } = interval;
  if (lowerW === upperW) return powerText(style, { powerW: upperW, digits: EXACT_DIGITS });
  if (isWide(interval))
    return `${powerText(style, { powerW: lowerW, digits: 2 })} to ${powerText(style, { powerW: upperW, digits: 2 })}`;
  const { unit, watts } = powerUnitFor(upperW);
  const decimals = decimalsFor((upperW - lowerW) / 2 / watts);
  const lower = numberText(style, { value: lowerW / watts, decimals });
  return `${lower} to ${quantityText(style, { value: upperW / watts, decimals, unit })}`;
}

/**
 * A power with the ends of its interval, never one plus-minus, since what is even in dB is lopsided in watts:
 * `513 mW, 438 to 601`. As many digits as the width bears.
 * @throws RangeError unless the ends are finite and in order and powerW is > 0.
 */
export function powerWithEndsText(
  style: Style,
  { powerW, lowerW, upperW }: PowerInterval & { powerW: number },
): string {
  checked('powerWithEndsText', { lowerW, upperW });
  positive('powerWithEndsText', 'powerW', powerW);
  if (lowerW === upperW) return powerText(style, { powerW, digits: EXACT_DIGITS });
  if (isWide({ lowerW, upperW }))
    return `${powerText(style, { powerW, digits: 2 })}, ${powerIntervalText(style, { lowerW, upperW })}`;
  const { unit, watts } = powerUnitFor(powerW);
  const decimals = decimalsFor(Math.max(Math.abs(upperW - powerW), Math.abs(powerW - lowerW)) / watts);
  const end = (value: number) => numberText(style, { value: value / watts, decimals });
  const value = quantityText(style, { value: powerW / watts, decimals, unit });
  return `${value}, ${end(lowerW)} to ${end(upperW)}`;
}
