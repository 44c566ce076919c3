/** Which sign marks decimals where a number alone leaves it open. */
export type DecimalMark = '.' | ',';

export type DecimalRead =
  | { readonly ok: true; readonly value: number; readonly mark: DecimalMark | undefined }
  | { readonly ok: false; readonly reason: 'ambiguous' | 'not-one-number' };

const NOT_ONE: DecimalRead = { ok: false, reason: 'not-one-number' };

/** Digits in groups of three, split by one sign throughout: 1 234 567. */
const grouped = (text: string, sign: string): boolean =>
  /^[1-9]\d{0,2}$/.test(text.split(sign)[0] ?? '') &&
  text
    .split(sign)
    .slice(1)
    .every((group) => /^\d{3}$/.test(group));

function numberOf(whole: string, decimals: string, mark: DecimalMark | undefined): DecimalRead {
  if (whole === '' && decimals === '') return NOT_ONE;
  return /^\d*$/.test(whole + decimals)
    ? { ok: true, value: Number(`${whole || '0'}.${decimals || '0'}`), mark }
    : NOT_ONE;
}

/** The whole part with its grouping signs taken out, or undefined where they group nothing. */
function ungrouped(whole: string): string | undefined {
  const sign = [' ', "'", '.', ','].find((candidate) => whole.includes(candidate));
  if (sign === undefined) return whole;
  return grouped(whole, sign) ? whole.replaceAll(sign, '') : undefined;
}

/** Splits at the last mark and takes what stands before it for a grouped whole part. */
function splitAt(text: string, mark: DecimalMark): DecimalRead {
  const at = text.lastIndexOf(mark);
  const whole = ungrouped(text.slice(0, at));
  return whole === undefined ? NOT_ONE : numberOf(whole, text.slice(at + 1), mark);
}

/**
 * Reads digits with decimal point or comma and with thousands set off by spaces, points, commas or apostrophes.
 * One comma before exactly three digits (1,234) may mean either: `ambiguous`, unless `mark` says how the text around
 * it writes decimals. One point is always a decimal point unless `mark` is a comma.
 */
export function readDecimal(text: string, mark?: DecimalMark): DecimalRead {
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (points > 0 && commas > 0)
    return splitAt(text, text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',');
  const sign = points > 0 ? '.' : ',';
  const count = points + commas;
  if (count === 1 && grouped(text, sign)) {
    if (mark === undefined && sign === ',') return { ok: false, reason: 'ambiguous' };
    if (mark === undefined || mark === sign) return splitAt(text, sign);
  } else if (count === 1) return splitAt(text, sign);
  const whole = ungrouped(text);
  return whole === undefined ? NOT_ONE : numberOf(whole, '', undefined);
}
