import { finite, notNegative } from '#compute';
import { digitsOf, isZero } from './digits.ts';
import { withUnit } from './quantity-text.ts';
import { type Style, signsOf, withSign } from './style.ts';
import type { UnitName } from './units.ts';

/** Even limits around a value: shown `±0.69 dB`, spoken `plus or minus 0.69 decibels`, copied `+/-0.69 dB`. */
export function plusMinusText(
  style: Style,
  { halfWidth, decimals, unit }: { halfWidth: number; decimals: number; unit: UnitName },
): string {
  notNegative('plusMinusText', 'halfWidth', halfWidth);
  return `${signsOf(style).plusMinus}${withUnit(style, digitsOf({ value: halfWidth, decimals }), unit)}`;
}

/**
 * Uneven deviations from a value, both given as signed numbers: `+0.26/−0.27 dB`. Where both come to the same digits and
 * opposite signs, one plus-minus says it.
 * @throws RangeError unless both are finite.
 */
export function deviationsText(
  style: Style,
  { upper, lower, decimals, unit }: { upper: number; lower: number; decimals: number; unit: UnitName },
): string {
  const up = digitsOf({ value: finite('deviationsText', 'upper', upper), decimals });
  const down = digitsOf({ value: finite('deviationsText', 'lower', lower), decimals });
  const signs = signsOf(style);
  if (up === down && (isZero(up) || (upper > 0 && lower < 0)))
    return `${signs.plusMinus}${withUnit(style, up, unit)}`;
  const sign = (value: number) => (value < 0 ? signs.minus : signs.plus);
  return `${sign(upper)}${withSign(style, up)}${signs.between}${sign(lower)}${withUnit(style, down, unit)}`;
}
