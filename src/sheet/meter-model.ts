import { gainDb, levelDbm, mean, padsIntoMeter, rangeError, type SumModel } from '#compute';
import { influenceOf, inUnits, METER_UNITS } from './influence-of.ts';
import { meterScatterOf } from './meter-scatter.ts';
import type { Sheet } from './sheet.ts';

/** Whether a sheet needs more than `meterModel` knows: another method, keying, the exact shape of a mismatch. */
const needsMore = ({ method, measurand: { keying = 'keyDown' }, links }: Sheet): boolean =>
  method !== undefined || keying !== 'keyDown' || links.some(({ reflections }) => reflections !== undefined);

/**
 * The model of a prepared sheet, one of pads and cable into a meter with the key down: what `toModel` gives for it, without the sums
 * of every other method, which most pages need not fetch.
 * @throws RangeError for any other sheet, and as `toModel`.
 */
export function meterModel(sheet: Sheet): SumModel {
  if (needsMore(sheet))
    throw rangeError({
      where: 'meterModel',
      wish: 'sheet must be a prepared one, by pads into a meter',
      got: sheet.title,
    });
  const outcome = padsIntoMeter({
    reading: levelDbm(mean(sheet.readings)),
    corrections: [],
    gains: [gainDb(0)],
    influences: inUnits([...sheet.links.map(influenceOf), ...meterScatterOf(sheet)], METER_UNITS),
  });
  if (!outcome.inRange || outcome.model.kind !== 'sum')
    throw rangeError({ where: 'meterModel', wish: 'pads into a meter must give a sum', got: sheet.title });
  const { model } = outcome;
  return { ...model, constant: model.constant + sheet.links.reduce((sum, { lossDb }) => sum + lossDb, 0) };
}
