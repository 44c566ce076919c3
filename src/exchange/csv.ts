import { dsvFormat } from 'd3';
import { cleanText } from '../text/clean.ts';
import type { Decimal } from '../text/style.ts';

/** A cell: a number, written so that a spreadsheet takes it for one, or words. */
export type Cell = number | string;
export type Row = readonly Cell[];

/** Where a comma parts a number, cells are parted by semicolons: what spreadsheets of such places expect (common practice). */
const SEPARATORS: Readonly<Record<Decimal, string>> = { point: ',', comma: ';' };

/** Without it a spreadsheet may take UTF-8 for an older encoding (common practice; RFC 4180 leaves the encoding open). */
const BYTE_ORDER_MARK = '\ufeff';
const LINE_END = '\r\n';

/**
 * What a spreadsheet may take for a formula, to work it out or to fetch something: a text that begins with one of these signs, or
 * with its wide form (common practice among those who guard against it).
 */
const FORMULA = /^[=+\-@\uff1d\uff0b\uff0d\uff20]/;

/** Rows as CSV (RFC 4180) that opens right in a spreadsheet: plain minus, decimal sign by choice, and no text taken for a formula. */
export function csvText(rows: readonly Row[], decimal: Decimal): string {
  const table = dsvFormat(SEPARATORS[decimal]);
  const cell = (value: Cell): string =>
    typeof value === 'number'
      ? numberCell(value, decimal)
      : wordsCell(value, (text) => table.formatValue(text));
  const lines = rows.map((row) => row.map(cell).join(SEPARATORS[decimal]));
  return `${BYTE_ORDER_MARK}${lines.map((line) => `${line}${LINE_END}`).join('')}`;
}

/** The shortest digits that give the same number again, unquoted; nothing for what is no number. */
function numberCell(value: number, decimal: Decimal): string {
  if (!Number.isFinite(value)) return '';
  const text = String(value).replace('e+', 'e');
  return decimal === 'comma' ? text.replace('.', ',') : text;
}

/** Words in one line; where they look like a formula, in quotation marks with an apostrophe in front, which makes a text of them. */
function wordsCell(words: string, formatted: (text: string) => string): string {
  const clean = cleanText(words).trim();
  return FORMULA.test(clean) ? `"'${clean.replaceAll('"', '""')}"` : formatted(clean);
}
