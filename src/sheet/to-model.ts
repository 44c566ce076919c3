import { componentOf, type Input, mean, type SumModel, standardDeviation } from '#compute';
import type { Link, Sheet } from './sheet.ts';

/** Id of the input that stands for the scatter of the readings. */
export const READINGS_ID = 'readings';

/**
 * The model of a sheet, in decibels: level at the transmitter = mean reading + every loss + every link's deviation.
 * Inputs stand in the order of the links, the scatter of the readings last.
 *
 * @throws RangeError if the sheet has no reading or a statement is forbidden (limits of -100 % or more).
 */
export function toModel(sheet: Sheet): SumModel {
  const inputs = [...sheet.links.map(linkInput), ...scatter(sheet)];
  const lossDb = sheet.links.reduce((sum, link) => sum + link.lossDb, 0);
  return { kind: 'sum', constant: mean(sheet.readings) + lossDb, inputs, sensitivities: inputs.map(() => 1) };
}

const linkInput = ({ id, statement, unit, percentOf, cause }: Link): Input =>
  componentOf({ id, statement, unit, percentOf, ...(cause !== undefined && { cause }) });

/**
 * Scatter of the mean reading: from the readings themselves if there are two or more (GUM 4.2), else from the stated
 * repeatability of one, else nothing, which `sheetNotices` tells.
 */
function scatter({ readings, repeatability }: Sheet): Input[] {
  if (readings.length >= 2) {
    const statement = {
      form: 'readings',
      standardDeviation: standardDeviation(readings),
      count: readings.length,
    } as const;
    return statement.standardDeviation > 0
      ? [componentOf({ id: READINGS_ID, statement, unit: 'dB', percentOf: 'reading' })]
      : [];
  }
  if (repeatability === undefined) return [];
  const { standardDeviationDb: standardUncertainty, degreesOfFreedom } = repeatability;
  const statement = { form: 'standard', standardUncertainty, degreesOfFreedom } as const;
  return [componentOf({ id: READINGS_ID, statement, unit: 'dB', percentOf: 'reading' })];
}
