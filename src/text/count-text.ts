import { numberText } from './quantity-text.ts';
import { baseOf, type Style } from './style.ts';

/** How many there are of something: five digits and more in groups of three where it is seen, `100 000`. @throws RangeError unless finite. */
export function countText(style: Style, count: number): string {
  const text = numberText(style, { value: count, decimals: 0 });
  if (baseOf(style) !== 'shown' || Math.abs(count) < 10_000) return text;
  return text.replaceAll(/\B(?=(?:\d{3})+$)/g, '\u00a0');
}
