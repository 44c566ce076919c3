import { numberText } from './quantity-text.ts';

/** Enough to check a pocket calculator against. */
const DIGITS = 7;
/** Beyond these a number is written with a power of ten. */
const SMALL = 1e-4;
const LARGE = 1e9;

/**
 * A number to seven significant digits, zeros at its end left out, as the formula sheet writes results and what its fields begin with:
 * `0.30103`, `-20`, `1.602177e-19`.
 */
export function pocketText(value: number): string {
  if (value === 0) return '0';
  if (!Number.isFinite(value)) return value > 0 ? '∞' : '−∞';
  const size = Math.abs(value);
  if (size < SMALL || size >= LARGE)
    return value
      .toExponential(DIGITS - 1)
      .replace(/\.?0+e/, 'e')
      .replace('e+', 'e');
  const decimals = Math.max(0, DIGITS - 1 - Math.floor(Math.log10(size)));
  const text = numberText('ascii', { value, decimals });
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
