import { finite, rangeError } from '#compute';
import { baseOf, type Style, signsOf } from './style.ts';

/** A number that is written with a power of ten, to so many significant digits. */
export interface PowerOfTenToWrite {
  readonly value: number;
  readonly digits: number;
}

/** Least and greatest exponent of a number that is written without a power of ten. */
const PLAIN = { least: -2, greatest: 5 } as const;
const RAISED = { '-': '\u207b', 0: '\u2070', 1: '\u00b9', 2: '\u00b2', 3: '\u00b3' } as const;

/** An exponent in raised figures: `⁻¹`, `²`; nothing for the power of one. */
export const raisedText = (power: number): string => (power === 1 ? '' : raised(String(power)));

const raised = (text: string): string =>
  [...text]
    .map((sign) =>
      Object.hasOwn(RAISED, sign)
        ? RAISED[sign as keyof typeof RAISED]
        : String.fromCodePoint(0x2070 + Number(sign)),
    )
    .join('');

/**
 * Digits in threes from the mark outwards, as the SI Brochure prints them (5.4.4): `9 192 631 770`, `6.626 070 15`. Four on a side
 * stay together. Spoken they stay as they are: a voice reads groups as numbers of their own.
 */
export function groupedText(style: Style, digits: string): string {
  if (style === 'spoken') return digits;
  const { space, decimal } = signsOf(style);
  const [whole = '', fraction] = digits.split('.');
  const left = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, space) : whole;
  if (fraction === undefined) return left;
  return `${left}${decimal}${fraction.length > 4 ? fraction.replace(/(\d{3})(?=\d)/g, `$1${space}`) : fraction}`;
}

/**
 * A number to so many significant digits, with a power of ten where it is large or small: shown `6.25 × 10¹⁷`, spoken
 * `6.25 times ten to the 17`, copied `6.25e17`. Trailing noughts stay: they were asked for.
 * @throws RangeError unless value is finite and above zero, digits whole, 1 to 16.
 */
export function powerOfTenText(style: Style, { value, digits }: PowerOfTenToWrite): string {
  if (!(finite('powerOfTenText', 'value', value) > 0))
    throw rangeError({ where: 'powerOfTenText', wish: 'value must be > 0', got: value });
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 16))
    throw rangeError({ where: 'powerOfTenText', wish: 'digits must be whole, 1 to 16', got: digits });
  const [mantissa = '', power = ''] = value.toExponential(digits - 1).split('e');
  const exponent = Number(power);
  if (exponent >= PLAIN.least && exponent <= PLAIN.greatest && exponent < digits)
    return groupedText(style, Number(value.toPrecision(digits)).toFixed(digits - 1 - exponent));
  return tenText(style, { mantissa: groupedText(style, mantissa), exponent });
}

/** A number with its power of ten, its digits as they are. */
export function tenText(
  style: Style,
  { mantissa, exponent }: { mantissa: string; exponent: number },
): string {
  if (baseOf(style) === 'ascii') return `${mantissa}e${exponent}`;
  if (style === 'spoken')
    return `${mantissa} times ten to the ${exponent < 0 ? `minus ${-exponent}` : exponent}`;
  const { space } = signsOf(style);
  return `${mantissa}${space}\u00d7${space}10${raised(String(exponent))}`;
}

/**
 * A number above zero with every digit that it was given, with a power of ten unless it is whole: `299 792 458`,
 * `6.626 070 15 × 10⁻³⁴`.
 */
export function everyDigitText(style: Style, value: number): string {
  if (Number.isInteger(value)) return groupedText(style, String(value));
  const [mantissa = '', exponent = ''] = value.toExponential().split('e');
  return tenText(style, { mantissa: groupedText(style, mantissa), exponent: Number(exponent) });
}
