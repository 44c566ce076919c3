import type { Decimal } from './style.ts';

/** A number with a point, no part of a version or a date. */
const NUMBER = /(^|[^\d.,])(\d+)\.(\d+)(?![\d.])/g;

/**
 * What this site puts into a field, with the reader's decimal sign: `20.5` or `20,5`, `3.58 MHz` or `3,58 MHz`. It means the same to whoever
 * reads it back: where three decimals could be thousands (`1,234`), a nought follows (`1,2340`). Not for what a reader typed, which stays as
 * it is.
 */
export function fieldText(text: string, decimal: Decimal): string {
  if (decimal === 'point') return text;
  return text.replace(
    NUMBER,
    (_, before: string, whole: string, fraction: string) =>
      `${before}${whole},${fraction}${fraction.length === 3 && whole !== '0' ? '0' : ''}`,
  );
}
