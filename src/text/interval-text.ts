import { rangeError } from '#compute';
import { numberText, quantityText } from './quantity-text.ts';
import type { Style } from './style.ts';
import type { UnitName } from './units.ts';

/** An interval that is to become text; both ends finite and in order. */
export interface IntervalToWrite {
  readonly lower: number;
  readonly upper: number;
  readonly decimals: number;
  readonly unit: UnitName;
}

/** From end to end: shown `26.3 to 27.7 dBm`, spoken likewise with the unit in words. @throws RangeError unless finite and lower <= upper. */
export function intervalText(style: Style, { lower, upper, decimals, unit }: IntervalToWrite): string {
  if (!(lower <= upper))
    throw rangeError({
      where: 'intervalText',
      wish: 'lower must not be above upper',
      got: `${lower} to ${upper}`,
    });
  return `${numberText(style, { value: lower, decimals })} to ${quantityText(style, { value: upper, decimals, unit })}`;
}
