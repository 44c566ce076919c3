import { rangeError } from '../quantity.ts';
import { spreadSorted } from './spread-sort.ts';

/** The smallest values in rising order, and the largest in rising order. */
export interface Tails {
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

/** Values looked at to guess where the tails begin: so many at most, and no more than one in so many. */
const PROBES = 4096;
const ONE_IN = 16;
/** The guess is put this many standard deviations of its own too far in, so that it hardly ever fails. */
const MARGIN = 4;
/** One in so many of a tail's values lies far out, where few are spread wide. */
const FAR_OUT = 16;

/** A sorted sample of the values. */
function probesOf(values: Float64Array): Float64Array {
  const stride = Math.max(ONE_IN, Math.floor(values.length / PROBES));
  const probes = new Float64Array(Math.ceil(values.length / stride));
  for (let k = 0; k < probes.length; k++) probes[k] = values[k * stride] as number;
  return probes.sort();
}

/** Values up to `low` and from `high` on, in the order of the row; undefined if either are more than there is room for. */
function gather(
  values: Float64Array,
  { low, high, room }: { low: number; high: number; room: number },
): { lowest: Float64Array; highest: Float64Array } | undefined {
  const lowest = new Float64Array(room);
  const highest = new Float64Array(room);
  const total = values.length;
  let [below, above] = [0, 0];
  for (let k = 0; k < total; k++) {
    const value = values[k] as number;
    if (value > low && value < high) continue;
    if (value <= low) {
      if (below === room) return undefined;
      lowest[below++] = value;
    }
    if (value >= high) {
      if (above === room) return undefined;
      highest[above++] = value;
    }
  }
  return { lowest: lowest.subarray(0, below), highest: highest.subarray(0, above) };
}

/** The tails by one pass that gathers them and some more; undefined where a sample misleads about where they begin. */
function gatheredTails(values: Float64Array, count: number): Tails | undefined {
  const probes = probesOf(values);
  const last = probes.length - 1;
  const part = count / values.length;
  const spread = Math.sqrt((part * (1 - part)) / probes.length);
  const reach = Math.min(last, Math.ceil((part + MARGIN * spread) * probes.length));
  const far = Math.floor(reach / FAR_OUT);
  const [low, high] = [probes[reach] as number, probes[last - reach] as number];
  const gathered = gather(values, { low, high, room: Math.min(values.length, 3 * count + PROBES) });
  if (gathered === undefined) return undefined;
  const { lowest, highest } = gathered;
  if (lowest.length < count || highest.length < count) return undefined;
  return {
    lowest: spreadSorted(lowest, { from: probes[far] as number, to: low }).subarray(0, count),
    highest: spreadSorted(highest, { from: high, to: probes[last - far] as number }).subarray(-count),
  };
}

/**
 * The `count` smallest and largest of many values, sorted, by selection instead of a full sort. The values stay as they
 * are; none may be NaN. @throws RangeError unless 1 <= count <= number of values.
 */
export function tailsOf(values: Float64Array, count: number): Tails {
  if (!(Number.isInteger(count) && count >= 1 && count <= values.length))
    throw rangeError({ where: 'tailsOf', wish: `count must be 1 to ${values.length}`, got: count });
  const tails = gatheredTails(values, count);
  if (tails) return tails;
  // Values came in an order that misleads, or many are equal: then all are sorted.
  const sorted = values.slice().sort();
  return { lowest: sorted.subarray(0, count), highest: sorted.subarray(-count) };
}
