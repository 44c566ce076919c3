import {
  mean,
  type PowerDelivery,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  rangeError,
  readCorrectionTable,
} from '#compute';
import { readingLevels } from './levels.ts';
import type { StatedLink, TabledStatement } from './measurement.ts';
import type { MethodReading } from './method.ts';
import type { Link } from './sheet.ts';

/** Units of a correction that a chain in decibels can add, with the way to dB. */
const TO_DB = {
  dB: (db: number) => db,
  percentOfPower: percentOfPowerToDb,
  percentOfVolts: percentOfVoltsToDb,
};
export type CorrectedUnit = keyof typeof TO_DB;

/** Whether a correction in this unit can be added to a chain in decibels, whatever was read. */
export const isCorrected = (unit: string): unit is CorrectedUnit => Object.hasOwn(TO_DB, unit);

/** A correction in dB. @throws RangeError for percentages that leave nothing. */
export const correctionInDb = (unit: CorrectedUnit, correction: number): number => TO_DB[unit](correction);

/**
 * Where in a table a point stands: its frequency in Hz, or the mean of what its readings say in dBm, without corrections. Undefined
 * where the frequency is not known.
 */
export const placeIn = (
  { by }: Pick<TabledStatement, 'by'>,
  reading: MethodReading,
  delivery: PowerDelivery,
): number | undefined => (by === 'frequency' ? reading.frequencyHz : mean(readingLevels(reading, delivery)));

/** A link that a table corrects, as it is at one point: the correction is added to its loss, U is what may be wrong with that. */
export function correctedLink(
  { stated, ...link }: Omit<StatedLink, 'stated'> & { readonly stated: TabledStatement },
  reading: MethodReading,
  delivery: PowerDelivery,
): Link {
  const at = placeIn(stated, reading, delivery);
  if (at === undefined)
    throw rangeError({ where: 'correctedLink', wish: 'point must have a frequency', got: link.label });
  if (!isCorrected(link.unit))
    throw rangeError({ where: 'correctedLink', wish: 'unit must be dB or percent', got: link.unit });
  const { correction, expanded } = readCorrectionTable({ points: stated.points, at });
  const { coverageFactor, degreesOfFreedom } = stated;
  const correctionDb = correctionInDb(link.unit, correction);
  return {
    ...link,
    lossDb: link.lossDb + correctionDb,
    correctionDb,
    statement: {
      form: 'expanded',
      expanded,
      coverageFactor,
      ...(degreesOfFreedom !== undefined && { degreesOfFreedom }),
    },
  };
}
