import type { SheetEntries } from '../../sheet/entries.ts';
import { breathe } from '../../widgets/parts/breathe.ts';
import { demonstrationEntries } from '../entries/fresh.ts';
import { readMeasurement } from '../read/read-measurement.ts';
import type { BenchState } from './state.types.ts';

/** What the bench opens with: the club's demonstration transmitter. */
export function demonstration(): BenchState {
  const entries = demonstrationEntries();
  const { measurement } = readMeasurement(entries);
  if (measurement === undefined)
    throw new RangeError('demonstration: every entry must be usable, got one that is not');
  return {
    entries,
    sheet: 0,
    sheets: 0,
    problems: [],
    measurement,
    measured: 0,
    point: firstPoint(entries),
    before: undefined,
    lastPath: undefined,
    held: undefined,
    past: [],
    future: [],
    addressProblems: [],
    showLimits: true,
    showCurve: false,
  };
}

/**
 * The same in turns, between which the page answers. What takes long is that a browser meets the code for the first time: it meets that of
 * a sheet without links and points before that of the rest.
 */
export async function demonstrationInTurns(): Promise<BenchState> {
  const { points, links, ...scope } = demonstrationEntries();
  for (const part of [
    { points: [], links: [] },
    { points, links: [] },
    { points: points.slice(0, 1), links },
  ]) {
    await breathe();
    readMeasurement({ ...scope, ...part });
  }
  await breathe();
  return demonstration();
}

/** Id of the first point of a sheet; nothing where there is none. */
export const firstPoint = ({ points }: SheetEntries): string => points[0]?.id ?? '';
