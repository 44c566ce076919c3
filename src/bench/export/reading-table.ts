import type { Row } from '../../exchange/csv.ts';
import { sheetAt } from '../../sheet/at-point.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { type Decimal, styleWith } from '../../text/style.ts';
import { unitText } from '../../text/units.ts';
import { HZ_PER_MHZ } from '../read/spec.ts';
import { pointLabel } from '../words/point-order.ts';
import { columnsRead } from '../words/reading-words.ts';
import { tableStrings as strings } from './table-strings.ts';

/** The raw readings of every point for a spreadsheet: a row a reading, bare numbers in the unit of the column's heading. */
export function readingRows(measurement: Measurement, decimal: Decimal = 'point'): readonly Row[] {
  const { points } = measurement;
  const columnsAt = points.map(({ id }) => columnsRead(sheetAt(measurement, id)));
  // every point is read by the same method; a column that one point has no use for is empty there
  const columns = [...new Map(columnsAt.flat().map((read) => [read.column, read])).values()];
  const head = [
    strings.point,
    strings.frequency,
    strings.number,
    ...columns.map(({ name, unit }) => strings.withUnit(name, unitText('unicode', unit, ''))),
  ];
  const rows = points.flatMap((point, index) => {
    const label = pointLabel(styleWith('unicode', decimal), point, index);
    const frequency = point.frequencyHz === undefined ? '' : point.frequencyHz / HZ_PER_MHZ;
    const count = (columnsAt[index] ?? []).reduce((most, { values }) => Math.max(most, values.length), 0);
    return Array.from({ length: count }, (_, row) => [
      label,
      frequency,
      row + 1,
      ...columns.map(({ column }) => point.columns[column][row] ?? ''),
    ]);
  });
  return [head, ...rows];
}
