import { sheetAt } from './at-point.ts';
import type { Measurement } from './measurement.ts';
import type { Sheet } from './sheet.ts';
import { outcomeOf, type SheetOutcome } from './to-model.ts';

/** The sheet of a point, and what its method makes of it. */
export interface OutcomeAt {
  readonly sheet: Sheet;
  readonly outcome: SheetOutcome;
}

const known = new WeakMap<Measurement, Map<string, OutcomeAt>>();

/**
 * The sheet of one point of a measurement and its model, reckoned once for each measurement: it is asked for as the entries are read, as
 * they are computed, and in the next frame of a drag. Measurements are never changed in place.
 * @throws RangeError as `sheetAt` and `outcomeOf`.
 */
export function outcomeAt(measurement: Measurement, pointId: string): OutcomeAt {
  const byPoint = known.get(measurement) ?? new Map<string, OutcomeAt>();
  known.set(measurement, byPoint);
  const before = byPoint.get(pointId);
  if (before) return before;
  const sheet = sheetAt(measurement, pointId);
  const found = { sheet, outcome: outcomeOf(sheet) };
  byPoint.set(pointId, found);
  return found;
}
