import { mean, standardDeviation } from '#compute';
import type { ColumnName, MethodKind } from '../sheet/method.ts';
import { decimalsFor } from '../text/place.ts';
import { quantityText } from '../text/quantity-text.ts';
import { readColumn } from '../text/read/column.ts';
import type { UnitName } from '../text/units.ts';
import { columnSpec } from './point-spec.ts';
import { pointStrings as strings } from './point-strings.ts';
import { readAs } from './read-as.ts';

/** Decimals of a mean whose readings are all equal. */
const EQUAL_DECIMALS = 3;

/** A column as it stands in the form. */
export interface TypedColumn {
  readonly method: MethodKind;
  readonly column: ColumnName;
  readonly text: string;
}

/** The numbers of a column in its own unit; none as long as one of its lines cannot be used. */
export function columnValues({ method, column, text }: TypedColumn): readonly number[] {
  const { values, problems } = readColumn(text, columnSpec(method, column));
  return problems.length > 0 ? [] : values.map(({ value }) => value);
}

/**
 * How a column was understood: how many readings, their mean and scatter; of one level the watts. Undefined where nothing is to be
 * said, or one of the lines cannot be used.
 */
export function columnSummary(column: TypedColumn): string | undefined {
  const { values, problems } = readColumn(column.text, columnSpec(column.method, column.column));
  const [first] = values;
  if (problems.length > 0 || first === undefined) return undefined;
  if (values.length === 1) return readAs(column.text, columnSpec(column.method, column.column));
  return summaryOf(
    values.map(({ value }) => value),
    first.unit,
  );
}

function summaryOf(values: readonly number[], unit: UnitName): string {
  const scatter = standardDeviation(values);
  const decimals = scatter > 0 ? decimalsFor(scatter) : EQUAL_DECIMALS;
  const shown = (value: number, its: UnitName): string =>
    quantityText('shown', { value, decimals, unit: its });
  return strings.counted({
    count: String(values.length),
    mean: shown(mean(values), unit),
    // the scatter of levels is a ratio
    scatter: shown(scatter, unit === 'dBm' ? 'dB' : unit),
  });
}
