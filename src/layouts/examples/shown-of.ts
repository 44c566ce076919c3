import { type NumberedPoint, pointResult } from '../../bench/results/point-result.ts';
import { measurementOf } from '../../sheet/at-point.ts';
import type { Sheet } from '../../sheet/sheet.ts';

/** Everything that is shown of a sheet with one point. @throws RangeError for a sheet whose method gives no number. */
export function shownOf(sheet: Sheet): NumberedPoint {
  const measurement = measurementOf(sheet);
  const shown = pointResult(measurement, measurement.points[0]?.id ?? '');
  if (!shown.inRange)
    throw new RangeError(`shownOf: ${sheet.title} must be in range, got ${shown.reason.code}`);
  return shown;
}
