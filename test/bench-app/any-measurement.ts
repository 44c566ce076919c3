import type fc from 'fast-check';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { type PointResult, pointResult } from '../../src/bench/results/point-result.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { usableEntries } from './any-entries.ts';

/** A sheet as typed and as read, with the results of all its points. */
export interface Computed {
  readonly entries: SheetEntries;
  readonly measurement: Measurement;
  readonly results: readonly PointResult[];
}

/** Any usable sheet of any method, computed: in range or not. */
export const anyComputed: fc.Arbitrary<Computed> = usableEntries.map((entries) => {
  const { measurement } = readMeasurement(entries);
  if (measurement === undefined) throw new Error('anyComputed: usable entries must give a measurement');
  return {
    entries,
    measurement,
    results: measurement.points.map(({ id }) => pointResult(measurement, id)),
  };
});

/** Results that have a number. */
export const numberedOf = ({ results }: Computed) =>
  results.flatMap((result) => (result.inRange ? [result] : []));
