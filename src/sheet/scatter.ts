import { type Influence, mean, type PowerDelivery, type Statement, standardDeviation } from '#compute';
import { powerInLine } from './levels.ts';
import { READINGS_ID, repeatabilityOf } from './meter-scatter.ts';
import { type ColumnName, type LinkUnit, type MethodReading, NO_READINGS } from './method.ts';
import type { Sheet } from './sheet.ts';

export { READINGS_ID };

/** Id of the input that stands for the scatter of a column. */
export const scatterId = (column: ColumnName): string =>
  column === 'readings' ? READINGS_ID : `${READINGS_ID}.${column}`;

/** Decibels per unit of natural logarithm: of a power, and of a voltage that makes one by its square. */
const DB_PER_LN = { power: 10 / Math.LN10, volts: 20 / Math.LN10 } as const;

/**
 * How many dB one unit of a column's scatter makes, by the slope at its mean: good to second order. The shape of few readings has
 * tails too long to be turned into decibels point by point, since they reach below nothing.
 */
function dbPerUnit({ setup, columns }: MethodReading, column: ColumnName, delivery: PowerDelivery): number {
  const middle = mean(columns[column]);
  switch (setup.method) {
    case 'padsIntoMeter':
      return 1;
    case 'oscilloscope':
      return DB_PER_LN.volts / middle;
    case 'peakDetector':
      return DB_PER_LN.volts / (middle + setup.diodeDropV);
    case 'inLine':
      return DB_PER_LN.power / powerInLine(mean(columns.readings), columns, delivery);
    case 'dcSubstitution':
      return DB_PER_LN.power / middle;
  }
}

/**
 * Scatter of the mean reading: from the readings themselves if there are two or more (GUM 4.2), else from the stated
 * repeatability of one, else nothing.
 */
export function scatterOf(sheet: Sheet): Influence<LinkUnit>[] {
  const reading = readingOf(sheet);
  const { delivery = 'intoIdeal' } = sheet.measurand;
  const columns = Object.entries(reading.columns) as [ColumnName, readonly number[]][];
  const own = columns.flatMap(([column, values]): Influence<LinkUnit>[] => {
    if (values.length < 2 || (column === 'reflected' && delivery === 'incident')) return [];
    const deviation = standardDeviation(values) * dbPerUnit(reading, column, delivery);
    if (deviation === 0) return [];
    const statement: Statement = { form: 'readings', standardDeviation: deviation, count: values.length };
    return [{ id: scatterId(column), statement, unit: 'dB' }];
  });
  return reading.columns.readings.length === 1 ? [...repeatabilityOf(sheet), ...own] : own;
}

/** What was read and with what; a sheet without a method is one by pads into a meter. */
export const readingOf = ({ method, readings }: Pick<Sheet, 'method' | 'readings'>): MethodReading =>
  method ?? { setup: { method: 'padsIntoMeter', shows: 'mean' }, columns: { ...NO_READINGS, readings } };
