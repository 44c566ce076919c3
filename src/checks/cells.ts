import { raisedText } from '../text/power-of-ten-text.ts';
import { numberText } from '../text/quantity-text.ts';
import type { Figure } from './check.ts';
import { outcomeOf } from './outcome.ts';
import { readPrinted } from './printed.ts';

/** Digits shown beyond the printed ones: enough to see how it rounds. */
const MORE_DECIMALS = 2;
/** Significant digits that a double can bear. */
const MOST_DIGITS = 16;
/** Digits of a value that only has to stay below a bound. */
const BOUND_DIGITS = 3;

/** Decimal exponent of a value: 2 for 123, -1 for 0.5; 0 for 0. */
const exponentOf = (value: number): number => (value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value))));

/** A title, written for the middle of a line, as a heading. */
export const headingOf = (title: string): string => `${title.charAt(0).toUpperCase()}${title.slice(1)}`;

/** The printed value with a true minus sign, as the page shows it. */
export const printedText = ({ printed }: Figure): string => printed.replace('-', '\u2212');

/** The unit as it follows its number: with a no-break space, and a multiplication sign before a power of ten. */
export function unitAfter({ unit }: Figure): string {
  if (unit === '') return '';
  return unit.startsWith('10') ? `\u00a0×\u00a0${unit}` : `\u00a0${unit}`;
}

/** Decimals that show how a value rounds, or, where print differs, why. */
function decimalsWanted({ printed, differs }: Figure, computed: number): number {
  const { decimals, isUpperBound } = readPrinted(printed);
  if (isUpperBound) return BOUND_DIGITS - 1 - exponentOf(computed);
  return Math.max(decimals + MORE_DECIMALS, differs ? readPrinted(differs.exact).decimals : 0);
}

/** This site's value, with two digits more than printed so that a reader sees how it rounds. */
export function computedText(figure: Figure): string {
  const { computed } = outcomeOf(figure);
  const bearable = MOST_DIGITS - 1 - exponentOf(computed);
  const decimals = Math.max(0, Math.min(decimalsWanted(figure, computed), bearable));
  return numberText('shown', { value: computed, decimals });
}

/** Below this a tolerance is told as a power of ten. */
const SMALL = 1e-4;

/** A power of ten: `10⁻¹⁴`. */
const powerOfTen = (exponent: number): string => `10${raisedText(exponent)}`;

/** A small relative difference: `3.4 × 10⁻¹¹`; `0` for none. */
export function relativeText(relative: number): string {
  if (relative === 0) return '0';
  const exponent = exponentOf(relative);
  const mantissa = numberText('shown', { value: relative / 10 ** exponent, decimals: 1 });
  return `${mantissa} × ${powerOfTen(exponent)}`;
}

/** A tolerance as text: `0.003`, or `10⁻¹⁴` (rounded up to the next power of ten) where zeros would hide it. */
function allowedText(allowed: number): string {
  if (allowed >= SMALL)
    return numberText('shown', { value: allowed, decimals: Math.max(0, -exponentOf(allowed)) });
  return powerOfTen(Math.ceil(Math.log10(allowed) - 1e-9));
}

/** How the two stand to each other, in words. */
export function agreementText(figure: Figure): string {
  const { agrees, allowed } = outcomeOf(figure);
  if (figure.differs) return 'differs, explained';
  if (!agrees) return 'does not agree';
  if (figure.tolerance) return `agrees within ${allowedText(allowed)}`;
  return readPrinted(figure.printed).isUpperBound ? 'is below' : 'agrees';
}

/** The reasons for tolerances of a check, each once. */
export const toleranceReasons = (figures: readonly Figure[]): string[] => [
  ...new Set(figures.flatMap(({ tolerance }) => (tolerance ? [tolerance.because] : []))),
];
