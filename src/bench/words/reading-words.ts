import { mean, standardDeviation } from '#compute';
import { COLUMNS_OF, type ColumnName, type MethodKind } from '../../sheet/method.ts';
import { readingOf } from '../../sheet/scatter.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { decimalsFor, fewestDecimals } from '../../text/place.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import { type Style, signsOf } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import { readingStrings as strings } from './reading-strings.ts';

/** A reading is listed with no more decimals than this. */
const MOST_DECIMALS = 6;
/** A reading that was turned from another unit has no last decimal: it is listed with so many digits. */
const MOST_DIGITS = 6;
/** Raw readings up to this many are listed one by one on the page. */
export const LISTED_ON_PAGE = 12;
/** The same in the copied text, which is the record. */
export const LISTED_IN_TEXT = 100;

const UNITS: Readonly<Record<MethodKind, Readonly<Partial<Record<ColumnName, UnitName>>>>> = {
  padsIntoMeter: { readings: 'dBm' },
  oscilloscope: { readings: 'Vpp' },
  peakDetector: { readings: 'V' },
  inLine: { readings: 'W', reflected: 'W' },
  dcSubstitution: { readings: 'K', riseDc: 'K', volts: 'V', amperes: 'A' },
};

/** A column of readings that the method asks for, with its unit. */
export interface ReadColumn {
  readonly column: ColumnName;
  readonly name: string;
  readonly values: readonly number[];
  readonly unit: UnitName;
}

/** The columns that count in a sheet, in the method's order; a reflected power only where it is taken off. */
export function columnsRead(sheet: Sheet): readonly ReadColumn[] {
  const { setup, columns } = readingOf(sheet);
  const { method } = setup;
  return COLUMNS_OF[method]
    .filter((column) => columns[column].length > 0)
    .map((column) => ({
      column,
      name: strings.columns[method][column] ?? column,
      values: columns[column],
      unit: UNITS[method][column] ?? 'none',
    }));
}

/** Unit of the scatter of readings: that of levels is a ratio. */
export const scatterUnit = (unit: UnitName): UnitName => (unit === 'dBm' ? 'dB' : unit);

/** As many decimals as were typed; for what was turned from another unit no more digits than any display has. */
function rawDecimals(value: number): number {
  const fewest = fewestDecimals(value, MOST_DECIMALS);
  if (fewest < MOST_DECIMALS || Number(value.toFixed(MOST_DECIMALS)) === value) return fewest;
  const before = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(MOST_DECIMALS, Math.max(0, MOST_DIGITS - before));
}

/** A raw reading as it was typed, with its unit. */
export const rawText = (style: Style, value: number, unit: UnitName): string =>
  quantityText(style, { value, decimals: rawDecimals(value), unit });

/** Readings in one sentence a column: listed up to `listed`, else their number, mean, scatter and ends. */
export const readingSentences = (style: Style, sheet: Sheet, listed: number): readonly string[] =>
  columnsRead(sheet).map((column) => sentenceOf(style, column, listed));

function sentenceOf(style: Style, { name, values, unit }: ReadColumn, listed: number): string {
  const [first = 0] = values;
  if (values.length === 1) return strings.one({ name, value: rawText(style, first, unit) });
  const s = standardDeviation(values);
  const places = s > 0 ? decimalsFor(s) : MOST_DECIMALS;
  const middle = mean(values);
  const sums = {
    name,
    mean: quantityText(style, {
      value: middle,
      decimals: Math.max(0, Math.min(places, fewestDecimals(middle, MOST_DECIMALS))),
      unit,
    }),
    scatter: quantityText(style, {
      value: s,
      decimals: s > 0 ? places : 0,
      unit: scatterUnit(unit),
    }),
  };
  if (values.length > listed)
    return strings.many({
      ...sums,
      count: values.length,
      least: rawText(style, leastOf(values), unit),
      most: rawText(style, mostOf(values), unit),
    });
  const decimals = Math.max(...values.map(rawDecimals));
  const list = values.map((value) => numberText(style, { value, decimals }));
  return strings.few({ ...sums, list: list.join(signsOf(style).decimal === ',' ? '; ' : ', ') });
}

// Thousands of arguments to Math.min would overflow the stack.
const leastOf = (values: readonly number[]): number =>
  values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
const mostOf = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
