/**
 * The styles in which a number becomes text.
 *
 * - `shown`: on the page. Minus U+2212, a no-break space between number and unit.
 * - `spoken`: for screen readers and announcers. `minus 3.0 decibels`.
 * - `ascii`: copied into old boards and mail. `-3.0 dB`, `+/-`, `ohm`, `uW`.
 * - `unicode`: copied elsewhere. As shown, but with ordinary spaces, which survive pasting.
 */
export type Style = 'shown' | 'spoken' | 'ascii' | 'unicode';

/** What differs between styles, sign by sign. A sign stands directly before its number. */
export interface Signs {
  readonly minus: string;
  readonly plus: string;
  readonly plusMinus: string;
  /** Between number and unit. */
  readonly space: string;
  /** Between the plus and the minus part of unequal deviations. */
  readonly between: string;
}

const SIGNS: Readonly<Record<Style, Signs>> = {
  shown: { minus: '\u2212', plus: '+', plusMinus: '\u00b1', space: '\u00a0', between: '/' },
  spoken: { minus: 'minus ', plus: 'plus ', plusMinus: 'plus or minus ', space: ' ', between: ', ' },
  ascii: { minus: '-', plus: '+', plusMinus: '+/-', space: ' ', between: '/' },
  unicode: { minus: '\u2212', plus: '+', plusMinus: '\u00b1', space: ' ', between: '/' },
};

/** The signs of one style. */
export const signsOf = (style: Style): Signs => SIGNS[style];
