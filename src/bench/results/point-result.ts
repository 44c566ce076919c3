import type { Caution, OutOfRange, UpperPowers } from '#compute';
import { rangeError } from '#compute';
import type { Measurement, Point } from '../../sheet/measurement.ts';
import { outcomeAt } from '../../sheet/outcome-at.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { sheetCautions, upperPowersOf } from './cautions.ts';
import { type BenchResult, resultOfModel } from './result.ts';

/** What the bench shows of one point: its numbers, or the reason why the method gives none. */
export type PointResult =
  | {
      readonly inRange: true;
      readonly point: Point;
      readonly sheet: Sheet;
      readonly result: BenchResult;
    }
  | {
      readonly inRange: false;
      readonly point: Point;
      readonly sheet: Sheet;
      readonly reason: OutOfRange;
      /** What the chain may suffer at the specification's upper limit; none where there is no such limit. */
      readonly cautions: readonly Caution[];
      readonly upper: UpperPowers | undefined;
    };

/** A point that the method gives numbers for. */
export type NumberedPoint = Extract<PointResult, { inRange: true }>;

/**
 * Everything that is shown of one point of a measurement. Pure and synchronous.
 * @throws RangeError for a point that the measurement has not, and as `outcomeOf`.
 */
export function pointResult(measurement: Measurement, pointId: string): PointResult {
  const point = measurement.points.find(({ id }) => id === pointId);
  if (point === undefined)
    throw rangeError({ where: 'pointResult', wish: 'point must be one of the measurement', got: pointId });
  const { sheet, outcome } = outcomeAt(measurement, pointId);
  if (outcome.inRange) return { inRange: true, point, sheet, result: resultOfModel(sheet, outcome.model) };
  const upper = upperPowersOf(sheet, undefined);
  const cautions = upper === undefined ? [] : sheetCautions(sheet, upper);
  return { inRange: false, point, sheet, reason: outcome.reason, cautions, upper };
}
