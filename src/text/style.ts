/** The sign between whole and fraction of a number. */
export const DECIMALS = ['point', 'comma'] as const;
export type Decimal = (typeof DECIMALS)[number];

/**
 * The styles in which a number becomes text.
 *
 * - `shown`: on the page. Minus U+2212, a no-break space between number and unit.
 * - `spoken`: for screen readers and announcers. `minus 3.0 decibels`.
 * - `ascii`: copied into old boards and mail. `-3.0 dB`, `+/-`, `ohm`, `uW`.
 * - `unicode`: copied elsewhere. As shown, but with ordinary spaces, which survive pasting.
 */
export type BaseStyle = 'shown' | 'spoken' | 'ascii' | 'unicode';

/** A style with its decimal sign: a point, or where it says so a comma. What is spoken has a point: an English voice reads `26,8` as two numbers. */
export type Style = BaseStyle | `${Exclude<BaseStyle, 'spoken'>}-comma`;

/** What differs between styles, sign by sign. A sign stands directly before its number. */
export interface Signs {
  readonly decimal: '.' | ',';
  readonly minus: string;
  readonly plus: string;
  readonly plusMinus: string;
  /** Between number and unit. */
  readonly space: string;
  /** Between the plus and the minus part of unequal deviations. */
  readonly between: string;
}

const COMMON = { decimal: '.', plus: '+', space: ' ', between: '/' } as const;
const UNICODE: Signs = { ...COMMON, minus: '\u2212', plusMinus: '\u00b1' };

const SIGNS: Readonly<Record<BaseStyle, Signs>> = {
  shown: { ...UNICODE, space: '\u00a0' },
  spoken: { ...COMMON, minus: 'minus ', plus: 'plus ', plusMinus: 'plus or minus ', between: ', ' },
  ascii: { ...COMMON, minus: '-', plusMinus: '+/-' },
  unicode: UNICODE,
};

/** A style whatever its decimal sign: what every choice between styles goes by. */
export const baseOf = (style: Style): BaseStyle => style.replace('-comma', '') as BaseStyle;

/** The signs of one style. */
export function signsOf(style: Style): Signs {
  const base = baseOf(style);
  return base === style ? SIGNS[base] : { ...SIGNS[base], decimal: ',' };
}

/** A style with a decimal sign; what is spoken keeps its point. */
export function styleWith(style: BaseStyle, decimal: Decimal): Style {
  return decimal === 'point' || style === 'spoken' ? style : `${style}-comma`;
}

/** Digits with the decimal sign of a style in place of their point. */
export const withSign = (style: Style, digits: string): string => digits.replace('.', signsOf(style).decimal);
