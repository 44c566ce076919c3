/** Adds factor x value to each place of a row. */
export function addScaled(row: Float64Array, values: Float64Array, factor: number): void {
  const count = row.length;
  for (let k = 0; k < count; k++) row[k] = (row[k] as number) + factor * (values[k] as number);
}

/** Multiplies each place of a row. */
export function stretch(row: Float64Array, factor: number): void {
  const count = row.length;
  for (let k = 0; k < count; k++) row[k] = factor * (row[k] as number);
}
