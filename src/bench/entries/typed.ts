import { numberText } from '../../text/quantity-text.ts';

/** Enough decimals for every value that somebody types; a reading converted from milliwatts may need them all. */
const MOST_DECIMALS = 10;

/** A value as somebody would type it, with as many decimals as it takes to read it back the same. */
export function typed(value: number): string {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++)
    if (Number(value.toFixed(decimals)) === value) return numberText('ascii', { value, decimals });
  return numberText('ascii', { value, decimals: MOST_DECIMALS });
}

/** The same for a value that may be missing; empty where it is. */
export const typedMaybe = (value: number | undefined): string => (value === undefined ? '' : typed(value));

/** A value that may be missing with its unit behind it: `27 dBm`; empty where it is. */
export const typedWith = (value: number | undefined, unit: string): string =>
  value === undefined ? '' : `${typed(value)} ${unit}`;

/** A sum or product of typed numbers without the noise of the last bit: 27 - 1.3 is 25.7. */
export const tidy = (value: number): number => Number(value.toFixed(MOST_DECIMALS));
