import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { powerText } from '../text/power-text.ts';
import { levelText, quantityText } from '../text/quantity-text.ts';
import { baseOf, type Style } from '../text/style.ts';
import type { UnitName } from '../text/units.ts';
import type { Said } from './example.ts';
import { wattsOfLevel } from './watts.ts';

/** How the signs of a formula are written where a board takes ASCII alone, and how they are said. */
const SIGNS: readonly (readonly [shown: string, ascii: string, spoken: string])[] = [
  ['²', '^2', ' squared'],
  ['√', 'sqrt', 'the root of '],
  [' × ', ' x ', ' times '],
  [' / ', ' / ', ' divided by '],
  [' − ', ' - ', ' minus '],
  ['Γ', 'G', 'gamma '],
  ['Δ', 'd', 'delta '],
  ['≈', '=~', 'about '],
  ['’', "'", '’'],
];

/** A formula with numbers: signs and numbers as the style writes them. */
export function formula(write: Said): Said {
  return (style) => {
    const text = write(style);
    const base = baseOf(style);
    if (base === 'ascii') return SIGNS.reduce((all, [sign, ascii]) => all.replaceAll(sign, ascii), text);
    if (base === 'spoken') return SIGNS.reduce((all, [sign, , said]) => all.replaceAll(sign, said), text);
    return text;
  };
}

/** A number with its unit, to so many decimals. */
export const num = (style: Style, value: number, decimals: number, unit: UnitName): string =>
  quantityText(style, { value, decimals, unit });

/** A given number: as many decimals as it was stated to. */
export const given =
  (value: number, decimals: number, unit: UnitName): Said =>
  (style) =>
    num(style, value, decimals, unit);

/** A given number with its limits. */
export const within =
  (
    value: number,
    decimals: number,
    unit: UnitName,
    limits: { half: number; decimals: number; unit: UnitName },
  ): Said =>
  (style) =>
    `${num(style, value, decimals, unit)} ${half(style, limits.half, limits.decimals, limits.unit)}`;

/** Limits that are as far on either side: `±0.5 dB`. */
export const half = (style: Style, halfWidth: number, decimals: number, unit: UnitName): string =>
  plusMinusText(style, { halfWidth, decimals, unit });

/** An expanded uncertainty in dB with the factor that it was made with, without which nobody can use it. */
export function expandedBy(
  style: Style,
  { expanded, coverageFactor }: { expanded: number; coverageFactor: number },
  decimals: number,
): string {
  const whole = Number(coverageFactor.toFixed(2)) === Math.round(coverageFactor);
  const factor = num(style, coverageFactor, whole ? 0 : 2, 'none');
  const said = baseOf(style) === 'spoken' ? `coverage factor ${factor}` : `k = ${factor}`;
  return `${half(style, expanded, decimals, 'dB')}, ${said}`;
}

/** Lopsided limits in dB. */
export const sides = (
  style: Style,
  { lower, upper }: { lower: number; upper: number },
  decimals = 2,
): string => deviationsText(style, { lower, upper, decimals, unit: 'dB' });

/** A level in dBm, to so many decimals. */
export const level = (style: Style, dbm: number, decimals = 2): string =>
  levelText(style, { levelDbm: dbm, decimals });

/** A power, given in watts, to so many digits that count; the prefix follows its size. */
export const watts = (style: Style, powerW: number, digits = 3): string =>
  powerText(style, { powerW, digits });

/** The power of a level in dBm, as text. */
export const wattsOf = (style: Style, dbm: number, digits = 3): string =>
  watts(style, wattsOfLevel(dbm), digits);
