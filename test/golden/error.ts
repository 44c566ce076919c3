/** A row of golden values: what went in, and the answers as decimal text. */
export interface GoldenRow {
  readonly inputs: readonly number[];
  readonly [answer: string]: readonly number[] | string;
}

/** One answer of a row as a number. @throws RangeError if the row has none of that name. */
export function answerOf(row: GoldenRow, name = 'value'): number {
  const text = row[name];
  if (typeof text !== 'string')
    throw new RangeError(`answerOf: row must have ${name}, got ${Object.keys(row)}`);
  return Number(text);
}

/** |got/wanted - 1|; 0 where both are the same. */
export function relativeError(got: number, wanted: number): number {
  return got === wanted ? 0 : Math.abs(got / wanted - 1);
}

/** Rows whose error is above the tolerance, with both values: empty when all is well. */
export function offenders(
  rows: readonly GoldenRow[],
  tolerance: number,
  error: (row: GoldenRow) => number,
): string[] {
  return rows.filter((row) => !(error(row) <= tolerance)).map((row) => `${row.inputs}: error ${error(row)}`);
}
