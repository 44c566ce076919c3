import { positive, rangeError } from '#compute';
import { numberText } from './quantity-text.ts';
import { baseOf, type Style, signsOf } from './style.ts';

/** A ratio that is to become text: so many significant digits. */
export interface RatioToWrite {
  readonly ratio: number;
  readonly digits: number;
}

/** A bare ratio to so many significant digits: `0.00251`, `398`. @throws RangeError unless finite and > 0. */
export function ratioText(style: Style, { ratio, digits }: RatioToWrite): string {
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15))
    throw rangeError({ where: 'ratioText', wish: 'digits must be whole, 1 to 15', got: digits });
  const rounded = Number(positive('ratioText', 'ratio', ratio).toPrecision(digits));
  const exponent = Number(rounded.toExponential(14).split('e')[1]);
  return numberText(style, { value: rounded, decimals: Math.max(0, digits - 1 - exponent) });
}

/** A ratio as a multiplication or a division: `×500`, `÷398`; spoken `times 500`, `divided by 398`. @throws RangeError unless finite and > 0. */
export function factorText(style: Style, { ratio, digits }: RatioToWrite): string {
  const down = positive('factorText', 'ratio', ratio) < 1;
  const size = ratioText(style, { ratio: down ? 1 / ratio : ratio, digits });
  if (style === 'spoken') return `${down ? 'divided by' : 'times'} ${size}`;
  if (baseOf(style) === 'ascii') return `${down ? '/' : 'x'}${size}`;
  return `${down ? '\u00f7' : '\u00d7'}${size}`;
}

/** A ratio as a plain number of times: `0.00251 times`. @throws RangeError unless finite and > 0. */
export const timesText = (style: Style, given: RatioToWrite): string =>
  `${ratioText(style, given)}${signsOf(style).space}times`;

/** Something that is not exact: `≈ ÷400`; spoken `about divided by 400`. */
export const aboutText = (style: Style, text: string): string =>
  ['spoken', 'ascii'].includes(baseOf(style)) ? `about ${text}` : `\u2248\u00a0${text}`;
