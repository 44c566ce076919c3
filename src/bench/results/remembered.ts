import type { Measurement, StatedLink } from '../../sheet/measurement.ts';
import { type PointResult, pointResult } from './point-result.ts';

/** Results kept: those of a sheet with many points, before and after a change or two. */
const MOST_KEPT = 200;

/** Computes a point's result, or remembers it from the last time that nothing it hangs on was different. */
export interface Remembered {
  /** The result if it is remembered. */
  known(measurement: Measurement, pointId: string): PointResult | undefined;
  of(measurement: Measurement, pointId: string): PointResult;
}

/** What of a sheet the results of all its points hang on, and by point the keys that were asked for. */
interface Keys {
  readonly common: string;
  readonly byPoint: Map<string, string>;
}

const keys = new WeakMap<Measurement, Keys>();

/**
 * What the result of a point hangs on: the point itself and everything of the sheet but the other points and the record. Made once for each
 * measurement: the figure asks in every frame that it is pulled, and a text as long as a sheet is slow to be looked up the first time.
 */
function keyOf(measurement: Measurement, pointId: string): string {
  const { common, byPoint } = keys.get(measurement) ?? newKeys(measurement);
  const kept = byPoint.get(pointId);
  if (kept !== undefined) return kept;
  const point = measurement.points.find(({ id }) => id === pointId);
  const key = `${common}${JSON.stringify(point)}${measurement.points.length > 1}`;
  byPoint.set(pointId, key);
  return key;
}

function newKeys(measurement: Measurement): Keys {
  const { points: _, record: __, links, ...rest } = measurement;
  const common = [JSON.stringify(rest), ...links.map(textOf)].join();
  const made: Keys = { common, byPoint: new Map() };
  keys.set(measurement, made);
  return made;
}

const texts = new WeakMap<StatedLink, string>();

/** A link as text: one that was not touched is the same object as before. */
function textOf(link: StatedLink): string {
  const known = texts.get(link) ?? JSON.stringify(link);
  texts.set(link, known);
  return known;
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
