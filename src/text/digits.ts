import { finite, rangeError, roundToPlace } from '#compute';

/** Decimals that a double can bear for ordinary numbers; toFixed allows up to 100. */
const MOST_DECIMALS = 20;

/** From here on toFixed would answer with a power of ten. */
const TOO_LARGE = 1e21;

/**
 * The digits of |value| without a sign, rounded once to `decimals` places by the rule of `roundToPlace`. Negative
 * `decimals` round to tens, hundreds and so on: 513 with -1 is `510`.
 * @throws RangeError unless value is finite and below 1e21 and decimals is whole, from -20 to 20.
 */
export function digitsOf({ value, decimals }: { value: number; decimals: number }): string {
  const size = Math.abs(finite('digitsOf', 'value', value));
  if (size >= TOO_LARGE)
    throw rangeError({ where: 'digitsOf', wish: 'value must be below 1e21', got: value });
  if (!(Number.isInteger(decimals) && Math.abs(decimals) <= MOST_DECIMALS))
    throw rangeError({ where: 'digitsOf', wish: 'decimals must be whole, -20 to 20', got: decimals });
  return roundToPlace({ value: size, place: -decimals }).toFixed(Math.max(0, decimals));
}

/** Whether the digits are those of zero: `0.00` has no sign. */
export const isZero = (digits: string): boolean => !/[1-9]/.test(digits);
