import { rangeError } from '#compute';

/** A printed value as a number, with what its digits promise. */
export interface Printed {
  readonly value: number;
  /** Decimals printed: 2 in `6.31`, 0 in `1500`. */
  readonly decimals: number;
  /** Whether the source only says that the value lies below. */
  readonly isUpperBound: boolean;
}

/** A plain decimal number once spaces are gone. */
const PLAIN = /^(<?)(-?\d+(?:\.(\d+))?)$/;

/**
 * Reads a value as documents print it: `−3.92`, `50 000 838`, `< 2.5`. Minus U+2212 or hyphen; digits grouped by spaces of
 * any kind.
 * @throws RangeError for anything else.
 */
export function readPrinted(text: string): Printed {
  const match = PLAIN.exec(text.replace(/\s/g, '').replace('\u2212', '-'));
  if (!match)
    throw rangeError({ where: 'readPrinted', wish: 'text must be a plain decimal number', got: text });
  return {
    value: Number(match[2]),
    decimals: match[3]?.length ?? 0,
    isUpperBound: match[1] === '<',
  };
}

/** Half a unit of the last printed digit: how far the value before rounding can have been away. */
export const halfLastDigit = ({ decimals }: Printed): number => 0.5 * 10 ** -decimals;
