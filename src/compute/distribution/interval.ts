import { finite, rangeError } from '../quantity.ts';

/** Middle and half-width of a bounded interval. @throws RangeError, naming `where`, unless both ends are finite and lower < upper. */
export function middleOf(
  where: string,
  { lower, upper }: { lower: number; upper: number },
): { location: number; scale: number } {
  finite(where, 'lower', lower);
  finite(where, 'upper', upper);
  if (!(lower < upper)) throw rangeError({ where, wish: 'lower must be < upper', got: [lower, upper] });
  return { location: lower / 2 + upper / 2, scale: upper / 2 - lower / 2 };
}
