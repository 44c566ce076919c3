/** Values to a bucket, where they lie evenly. */
const PER_BUCKET = 2;
/** From so many values on a bucket is sorted on its own. */
const CROWD = 24;

/** Ends between which most values lie. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Sorts rows that are nearly in order: each value moves down past the few that are larger. */
function sortNearby(values: Float64Array): void {
  for (let k = 1; k < values.length; k++) {
    const value = values[k] as number;
    let place = k;
    while (place > 0 && (values[place - 1] as number) > value) {
      values[place] = values[place - 1] as number;
      place--;
    }
    values[place] = value;
  }
}

/**
 * The values in rising order, through buckets of equal width between both ends: a few steps to a value where they lie evenly
 * there, and no worse than an ordinary sort where they crowd. Values beyond an end are right too, but slower. None may be NaN.
 */
export function spreadSorted(values: Float64Array, { from, to }: Range): Float64Array {
  const count = values.length;
  const last = Math.ceil(count / PER_BUCKET);
  const perWidth = last / (to - from);
  const bucketOf = (value: number) => Math.min(last, Math.max(0, (value - from) * perWidth)) | 0;
  const starts = new Int32Array(last + 2);
  const bucket = new Int32Array(count);
  for (let k = 0; k < count; k++) {
    const b = bucketOf(values[k] as number);
    bucket[k] = b;
    starts[b + 1] = (starts[b + 1] as number) + 1;
  }
  for (let b = 0; b < last; b++) starts[b + 1] = (starts[b + 1] as number) + (starts[b] as number);
  const sorted = new Float64Array(count);
  // Afterwards each start has moved to the next bucket's.
  for (let k = 0; k < count; k++) {
    const b = bucket[k] as number;
    const place = starts[b] as number;
    sorted[place] = values[k] as number;
    starts[b] = place + 1;
  }
  for (let b = 0, begin = 0; b <= last; b++) {
    const end = starts[b] as number;
    if (end - begin >= CROWD) sorted.subarray(begin, end).sort();
    begin = end;
  }
  sortNearby(sorted);
  return sorted;
}
