import { suspectOf } from '#compute';
import type { Sheet } from '../../sheet/sheet.ts';
import { numberText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { columnsRead, type ReadColumn, rawText } from './reading-words.ts';
import { resultStrings as strings } from './result-strings.ts';

/** Fewer readings than this give no outlier to point at. */
const LEAST_READINGS = 3;

/** A sentence for each column whose furthest reading stands too far off; it says that nothing is removed. */
export function outlierWords(style: Style, sheet: Sheet): readonly string[] {
  const columns = columnsRead(sheet);
  return columns.flatMap((column) => {
    const sentence = outlierIn(style, column);
    if (sentence === undefined) return [];
    return [columns.length === 1 ? sentence : strings.outlierIn({ column: column.name, sentence })];
  });
}

/** The same of one column; undefined where no reading stands off. */
export function outlierIn(
  style: Style,
  { values, unit }: Pick<ReadColumn, 'values' | 'unit'>,
): string | undefined {
  if (values.length < LEAST_READINGS) return undefined;
  const suspect = suspectOf({ values });
  if (!suspect?.suspicious) return undefined;
  const distance = (value: number): string => numberText(style, { value, decimals: 2 });
  return strings.outlier({
    which: suspect.index + 1,
    value: rawText(style, suspect.value, unit),
    distance: distance(suspect.statistic),
    count: values.length,
    critical: distance(suspect.critical),
  });
}
