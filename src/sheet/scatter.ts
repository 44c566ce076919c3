import { type Influence, mean, netPower, powerW, type Statement, standardDeviation } from '#compute';
import type { ColumnName, LinkUnit, MethodReading } from './method.ts';
import type { Sheet } from './sheet.ts';

/** Id of the input that stands for the scatter of the main readings; of another column `readings.` and its name. */
export const READINGS_ID = 'readings';

/** Id of the input that stands for the scatter of a column. */
export const scatterId = (column: ColumnName): string =>
  column === 'readings' ? READINGS_ID : `${READINGS_ID}.${column}`;

/** Unit in which the scatter of a column counts, by method: that of the readings where the method understands it. */
function scatterUnit({ setup }: MethodReading, column: ColumnName): LinkUnit {
  switch (setup.method) {
    case 'padsIntoMeter':
      return 'dB';
    case 'oscilloscope':
      return 'voltsPeakToPeak';
    case 'peakDetector':
      return 'volts';
    case 'inLine':
      return 'percentOfPower';
    case 'dcSubstitution':
      return column === 'volts'
        ? 'dcVolts'
        : column === 'amperes'
          ? 'dcAmperes'
          : column === 'riseDc'
            ? 'kelvinDc'
            : 'kelvinRf';
  }
}

/** Watts of an in-line meter in percent of the power that is meant; every other column counts in its own unit. */
function scatterFactor({ setup, columns }: MethodReading, net: boolean): number {
  if (setup.method !== 'inLine') return 1;
  const forward = powerW(mean(columns.readings));
  return 100 / (net ? netPower({ forward, reflected: powerW(mean(columns.reflected)) }) : forward);
}

/**
 * Scatter of the mean reading: from the readings themselves if there are two or more (GUM 4.2), else from the stated
 * repeatability of one, else nothing, which `sheetNotices` tells.
 */
export function scatterOf(sheet: Sheet): Influence<LinkUnit>[] {
  const reading = sheet.method ?? asMeter(sheet);
  const net = sheet.measurand.delivery !== 'incident';
  const columns = Object.entries(reading.columns) as [ColumnName, readonly number[]][];
  const own = columns.flatMap(([column, values]): Influence<LinkUnit>[] => {
    if (values.length < 2 || (column === 'reflected' && !net)) return [];
    const deviation = standardDeviation(values) * scatterFactor(reading, net);
    if (deviation === 0) return [];
    const statement: Statement = { form: 'readings', standardDeviation: deviation, count: values.length };
    return [{ id: scatterId(column), statement, unit: scatterUnit(reading, column) }];
  });
  return reading.columns.readings.length === 1 ? [...repeatabilityOf(sheet), ...own] : own;
}

function repeatabilityOf({ repeatability }: Sheet): Influence<LinkUnit>[] {
  if (repeatability === undefined) return [];
  const { standardDeviationDb: standardUncertainty, degreesOfFreedom } = repeatability;
  return [
    {
      id: READINGS_ID,
      statement: { form: 'standard', standardUncertainty, degreesOfFreedom },
      unit: 'dB',
    },
  ];
}

/** A sheet without a method is one by pads into a meter. */
export const asMeter = ({ readings }: Pick<Sheet, 'readings'>): MethodReading => ({
  setup: { method: 'padsIntoMeter', shows: 'mean' },
  columns: { readings, reflected: [], riseDc: [], volts: [], amperes: [] },
});
