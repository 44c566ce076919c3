/** The value in the middle of a list, or the mean of the two. @throws RangeError for an empty list. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]];
  if (low === undefined || high === undefined)
    throw new RangeError(`median: values must not be empty, got ${values.length}`);
  return (low + high) / 2;
}
