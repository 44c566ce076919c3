import type { Measurement } from '../../sheet/measurement.ts';
import { type PointResult, pointResult } from './point-result.ts';

/** Results kept: those of a sheet with many points, before and after a change or two. */
const MOST_KEPT = 200;

/** Computes a point's result, or remembers it from the last time that nothing it hangs on was different. */
export interface Remembered {
  /** The result if it is remembered. */
  known(measurement: Measurement, pointId: string): PointResult | undefined;
  of(measurement: Measurement, pointId: string): PointResult;
}

/** What the result of a point hangs on: the point itself and everything of the sheet but the other points and the record. */
function keyOf(measurement: Measurement, pointId: string): string {
  const point = measurement.points.find(({ id }) => id === pointId);
  return `${commonKeyOf(measurement)}${JSON.stringify(point)}${measurement.points.length > 1}`;
}

const commonKeys = new WeakMap<Measurement, string>();

function commonKeyOf(measurement: Measurement): string {
  const kept = commonKeys.get(measurement);
  if (kept !== undefined) return kept;
  const { points: _, record: __, ...common } = measurement;
  const key = JSON.stringify(common);
  commonKeys.set(measurement, key);
  return key;
}

/** A memory of its own, empty. */
export function remembered(): Remembered {
  const kept = new Map<string, PointResult>();
  return {
    known: (measurement, pointId) => kept.get(keyOf(measurement, pointId)),
    of(measurement, pointId) {
      const key = keyOf(measurement, pointId);
      const found = kept.get(key) ?? pointResult(measurement, pointId);
      // the latest last, so that what goes first is what was not asked for longest
      kept.delete(key);
      kept.set(key, found);
      const [oldest] = kept.keys();
      if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
      return found;
    },
  };
}
