import type { PowerDelivery } from '#compute';
import { mean } from '#compute';
import { type ColumnName, type Columns, type MethodKind, NO_READINGS } from '../../sheet/method.ts';
import { quoted } from '../../text/clean.ts';
import { quantityText } from '../../text/quantity-text.ts';
import { kindOf } from '../../text/read/kind.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { pointPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import { columnTexts } from './column-texts.ts';
import { columnValues } from './column-values.ts';
import { type PointContext, pointFieldLabel } from './point-context.ts';
import { columnSpec } from './point-spec.ts';
import { problemStrings } from './problem-strings.ts';
import { WIDEST_READINGS_DB } from './spec.ts';

/** The method's own name of a column. */
function columnLabel(method: MethodKind, column: ColumnName): string {
  const words: Readonly<Partial<Record<ColumnName, { readonly label: string }>>> =
    strings.point.columns[method];
  return words[column]?.label ?? strings.point.labels[column];
}

/** The readings of a point in the method's own units; what is wrong with them goes to the collector. */
export function readColumns(context: PointContext): Columns {
  const { entries, sheet, collect } = context;
  const { method, delivery } = sheet;
  const tell = (column: ColumnName, problem: string): void =>
    collect.add({
      path: pointPath(entries.id, column),
      label: pointFieldLabel(context, columnLabel(method, column)),
      problem,
    });
  const found = columnTexts(entries, method);
  if (!found.clear) {
    tell('readings', problemStrings.columnsSideBySide(found.count));
    return NO_READINGS;
  }
  const before = collect.problems.length;
  const columns: Record<ColumnName, readonly number[]> = { ...NO_READINGS };
  for (const [column, text] of found.texts) {
    const spec = columnSpec(method, column);
    const { values, problem } = columnValues(text, spec);
    const missing = values.length === 0 && !maybeEmpty(column, delivery);
    if (problem !== undefined || missing) tell(column, problem ?? noReading(spec, text));
    columns[column] = values.length === 0 && !missing ? [0] : values;
  }
  if (collect.problems.length > before) return columns;
  const [fault] = faultsOf(columns, method, delivery);
  if (fault) tell(...fault);
  return columns;
}

/** The wave towards the load hangs on no reflected power. */
const maybeEmpty = (column: ColumnName, delivery: PowerDelivery): boolean =>
  column === 'reflected' && delivery === 'incident';

/** What is said of a column without a number: empty, or with a heading and nothing below it. */
function noReading({ kind }: ReadSpec, text: string): string {
  const { example, base } = kindOf(kind);
  const shown = quantityText('shown', { ...example, unit: base });
  return text.trim() === ''
    ? problemStrings.noReading(shown)
    : problemStrings.wordsAlone(quoted(text), shown);
}

/** Smallest and largest of many values, without a list of arguments as long as they are. */
function spread(values: readonly number[]): { least: number; most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { least, most };
}

/** Whether a column says a level, a power, or something that power goes with squared. */
function apartDb(values: readonly number[], method: MethodKind, column: ColumnName): number {
  const { least, most } = spread(values);
  if (method === 'padsIntoMeter') return most - least;
  if (least <= 0) return 0;
  const squared = column === 'readings' && (method === 'oscilloscope' || method === 'peakDetector');
  return (squared ? 20 : 10) * Math.log10(most / least);
}

/** What no reading shows alone: columns of more than one power, and more coming back than goes out. */
function faultsOf(
  columns: Columns,
  method: MethodKind,
  delivery: PowerDelivery,
): (readonly [ColumnName, string])[] {
  const named = Object.entries(columns) as [ColumnName, readonly number[]][];
  const apart = named.flatMap(([column, values]): (readonly [ColumnName, string])[] =>
    column !== 'reflected' && values.length > 1 && apartDb(values, method, column) > WIDEST_READINGS_DB
      ? [[column, problemStrings.readingsApart(WIDEST_READINGS_DB)]]
      : [],
  );
  const back = method === 'inLine' && delivery !== 'incident' ? mean(columns.reflected) : 0;
  const above = back > 0 && spread(columns.readings).least <= back;
  return above ? [...apart, ['reflected', problemStrings.reflectedAbove]] : apart;
}
