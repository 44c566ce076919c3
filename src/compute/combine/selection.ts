import { rangeError } from '../quantity.ts';

/** The smallest values in rising order, and the largest in rising order. */
export interface Tails {
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

/** Values looked at to guess where a tail begins. */
const PROBES = 4096;
/** The guess is put this many standard deviations of its own too far in, so that it hardly ever fails. */
const MARGIN = 4;

function guess(probes: Float64Array, part: number): number {
  const spread = Math.sqrt((part * (1 - part)) / probes.length);
  const reach = Math.ceil((part + MARGIN * spread) * probes.length);
  return probes[Math.min(probes.length - 1, reach)] as number;
}

/** Gathers the values times `sign` up to an edge; undefined if they are not as many as wanted, or more than there is room for. */
function gather(
  values: Float64Array,
  { sign, edge, count }: { sign: 1 | -1; edge: number; count: number },
): Float64Array | undefined {
  const total = values.length;
  const room = Math.min(total, 3 * count + PROBES);
  const gathered = new Float64Array(room);
  let size = 0;
  for (let k = 0; k < total; k++) {
    const value = sign * (values[k] as number);
    if (value > edge) continue;
    if (size === room) return undefined;
    gathered[size++] = value;
  }
  return size < count ? undefined : gathered.subarray(0, size).sort().slice(0, count);
}

/** The `count` smallest of the values times `sign`, in rising order: one pass gathers them, then only they are sorted. */
function smallest(values: Float64Array, count: number, sign: 1 | -1): Float64Array {
  const stride = Math.max(1, Math.floor(values.length / PROBES));
  const probes = Float64Array.from(
    { length: Math.ceil(values.length / stride) },
    (_, k) => sign * (values[k * stride] as number),
  ).sort();
  const edge = guess(probes, count / values.length);
  // The guess fails where values come in an order that misleads it, or many are equal: then all are sorted.
  return (
    gather(values, { sign, edge, count }) ??
    values
      .map((value) => sign * value)
      .sort()
      .slice(0, count)
  );
}

/**
 * The `count` smallest and largest of many values, sorted, by selection instead of a full sort. The values stay as they
 * are; none may be NaN. @throws RangeError unless 1 <= count <= number of values.
 */
export function tailsOf(values: Float64Array, count: number): Tails {
  if (!(Number.isInteger(count) && count >= 1 && count <= values.length))
    throw rangeError({ where: 'tailsOf', wish: `count must be 1 to ${values.length}`, got: count });
  const highest = smallest(values, count, -1).map((value) => -value);
  return { lowest: smallest(values, count, 1), highest: highest.reverse() };
}
