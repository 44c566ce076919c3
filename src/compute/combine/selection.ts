import { rangeError } from '../quantity.ts';

/** The smallest values in rising order, and the largest in rising order. */
export interface Tails {
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

/** Values looked at to guess where a tail begins. */
const PROBES = 4096;
/** The guess is put this many standard deviations of its own too far in, so that it rarely has to be repeated. */
const MARGIN = 4;

function guess(probes: Float64Array, part: number, widening: number): number {
  const spread = Math.sqrt((part * (1 - part)) / probes.length);
  const reach = Math.ceil((part + widening * MARGIN * spread) * probes.length);
  return probes[Math.min(probes.length - 1, reach)] as number;
}

/** The `count` smallest of the values times `sign`, in rising order: one pass gathers them, then only they are sorted. */
function smallest(values: Float64Array, count: number, sign: 1 | -1): Float64Array {
  const stride = Math.max(1, Math.floor(values.length / PROBES));
  const probes = Float64Array.from(
    { length: Math.ceil(values.length / stride) },
    (_, k) => sign * (values[k * stride] as number),
  ).sort();
  const gathered = new Float64Array(values.length);
  for (let widening = 1; ; widening *= 4) {
    const edge = guess(probes, count / values.length, widening);
    const all = edge === probes[probes.length - 1];
    let size = 0;
    for (let k = 0; k < values.length; k++) {
      const value = sign * (values[k] as number);
      if (value <= edge || all) gathered[size++] = value;
    }
    if (size >= count) return gathered.subarray(0, size).sort().slice(0, count);
  }
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
