import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import type { Decimal } from '../../text/style.ts';
import { entriesOf } from '../entries/entries-of.ts';
import { type PointResult, pointResult } from '../results/point-result.ts';
import { checkSentences } from '../validity/check-export.ts';
import { namelessEntries, namelessMeasurement } from './nameless.ts';

/** What stands on the bench when something is taken along. */
export interface Standing {
  readonly entries: SheetEntries;
  /** Of the last entries that were all usable. */
  readonly measurement: Measurement;
  readonly shown: PointResult;
  /** Version of the site that worked it out. */
  readonly version: string;
  /** Whether the entries can all be used. */
  readonly usable: boolean;
}

/** The same as it goes out: with names or without. */
export interface Taken extends Standing {
  /** What an address beside the numbers carries: the entries that they came from. */
  readonly linked: SheetEntries;
}

/** What goes out of what stands there. */
export function takenOf(standing: Standing, nameless: boolean): Taken {
  if (!nameless) return { ...standing, linked: linkedOf(standing) };
  const measurement = namelessMeasurement(standing.measurement);
  const without = {
    ...standing,
    measurement,
    entries: namelessEntries(standing.entries),
    shown: pointResult(measurement, standing.shown.point.id),
  };
  return { ...without, linked: namelessEntries(linkedOf(standing)) };
}

const linkedOf = ({ entries, measurement, usable }: Standing): SheetEntries =>
  usable ? entries : entriesOf(measurement);

/** What the validity checks of what goes out say. */
export const takenChecks = (
  { entries, measurement, shown }: Taken,
  decimal?: Decimal,
): Promise<readonly string[]> => checkSentences(entries, measurement, shown, decimal);
