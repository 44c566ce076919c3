import { mean, standardDeviation } from '#compute';
import type { ColumnName, MethodKind } from '../../sheet/method.ts';
import { decimalsFor } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import { kindOf } from '../../text/read/kind.ts';
import type { UnitName } from '../../text/units.ts';
import { columnValues } from '../read/column-values.ts';
import { columnSpec } from '../read/point-spec.ts';
import { outlierIn } from '../words/outlier-words.ts';
import { scatterUnit } from '../words/reading-words.ts';
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

/** The sentence on the reading of a column that stands too far off, if one does. */
export function columnOutlier({ method, column, text }: TypedColumn): string | undefined {
  const spec = columnSpec(method, column);
  const { values, problem } = columnValues(text, spec);
  return problem === undefined ? outlierIn('shown', { values, unit: kindOf(spec.kind).base }) : undefined;
}

/**
 * How a column was understood: how many readings, their mean and scatter; of one level the watts. Undefined where nothing is to be
 * said, or one of the lines cannot be used.
 */
export function columnSummary({ method, column, text }: TypedColumn): string | undefined {
  const spec = columnSpec(method, column);
  const { values, problem } = columnValues(text, spec);
  if (problem !== undefined || values.length === 0) return undefined;
  return values.length === 1 ? readAs(text, spec) : summaryOf(values, kindOf(spec.kind).base);
}

function summaryOf(values: readonly number[], unit: UnitName): string {
  const scatter = standardDeviation(values);
  const decimals = scatter > 0 ? decimalsFor(scatter) : EQUAL_DECIMALS;
  const shown = (value: number, its: UnitName): string =>
    quantityText('shown', { value, decimals, unit: its });
  return strings.counted({
    count: String(values.length),
    mean: shown(mean(values), unit),
    scatter: shown(scatter, scatterUnit(unit)),
  });
}
