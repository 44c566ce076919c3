import { type Influence, type Statement, standardDeviation } from '#compute';
import type { Sheet } from './sheet.ts';

/** Id of the input that stands for the scatter of the main readings. */
export const READINGS_ID = 'readings';

/** Scatter of one reading, known from earlier, where it is stated. */
export function repeatabilityOf({ repeatability }: Pick<Sheet, 'repeatability'>): Influence<'dB'>[] {
  if (repeatability === undefined) return [];
  const { standardDeviationDb: standardUncertainty, degreesOfFreedom } = repeatability;
  const statement: Statement = { form: 'standard', standardUncertainty, degreesOfFreedom };
  return [{ id: READINGS_ID, statement, unit: 'dB' }];
}

/** Scatter of the mean of readings that are levels: their own if there are two or more that differ (GUM 4.2), else the stated one. */
export function meterScatterOf(sheet: Pick<Sheet, 'readings' | 'repeatability'>): Influence<'dB'>[] {
  const { readings } = sheet;
  if (readings.length === 1) return repeatabilityOf(sheet);
  const deviation = standardDeviation(readings);
  if (deviation === 0) return [];
  const statement: Statement = { form: 'readings', standardDeviation: deviation, count: readings.length };
  return [{ id: READINGS_ID, statement, unit: 'dB' }];
}
