import { digitsOf, isZero } from './digits.ts';
import { type Style, signsOf, withSign } from './style.ts';
import { type UnitName, unitText } from './units.ts';

/** A number that is to become text: rounded to `decimals` places (negative: to tens, hundreds ...). */
export interface NumberToWrite {
  readonly value: number;
  readonly decimals: number;
}

/** A number with its unit. */
export interface QuantityToWrite extends NumberToWrite {
  readonly unit: UnitName;
}

/** Joins digits (with a point) and unit into the one string that they always are. */
export function withUnit(style: Style, digits: string, unit: UnitName): string {
  const text = unitText(style, unit, digits);
  const number = withSign(style, digits);
  return text === '' ? number : `${number}${signsOf(style).space}${text}`;
}

function signed(style: Style, { value, decimals }: NumberToWrite, plus: string): string {
  const digits = digitsOf({ value, decimals });
  if (isZero(digits)) return withSign(style, digits);
  return `${value < 0 ? signsOf(style).minus : plus}${withSign(style, digits)}`;
}

/** A bare number: shown `−3.0`, spoken `minus 3.0`, copied `-3.0`. A rounded zero has no sign. @throws RangeError unless finite. */
export const numberText = (style: Style, number: NumberToWrite): string => signed(style, number, '');

/** A number with its unit: shown `−3.0 dB`, spoken `minus 3.0 decibels`, copied `-3.0 dB`. @throws RangeError unless finite. */
export function quantityText(style: Style, { value, decimals, unit }: QuantityToWrite): string {
  const digits = digitsOf({ value, decimals });
  const sign = value < 0 && !isZero(digits) ? signsOf(style).minus : '';
  return `${sign}${withUnit(style, digits, unit)}`;
}

/** A difference, its sign always given: `+0.26 dB`, `−0.27 dB`. @throws RangeError unless finite. */
export function changeText(style: Style, { value, decimals, unit }: QuantityToWrite): string {
  const digits = digitsOf({ value, decimals });
  const { plus, minus } = signsOf(style);
  const sign = isZero(digits) ? '' : value < 0 ? minus : plus;
  return `${sign}${withUnit(style, digits, unit)}`;
}

/** A level in dBm. */
export const levelText = (
  style: Style,
  { levelDbm, decimals }: { levelDbm: number; decimals: number },
): string => quantityText(style, { value: levelDbm, decimals, unit: 'dBm' });

/** A ratio in dB. */
export const dbText = (style: Style, { db, decimals }: { db: number; decimals: number }): string =>
  quantityText(style, { value: db, decimals, unit: 'dB' });

/** A percentage given as such: 5 is `5 %`. */
export const percentText = (
  style: Style,
  { percent, decimals }: { percent: number; decimals: number },
): string => quantityText(style, { value: percent, decimals, unit: 'percent' });
