import type { OutOfRange } from '#compute';
import type { decodeEntries } from '../bench/address/address.ts';
import { readMeasurement } from '../bench/read/read-measurement.ts';
import { nameOfPoint } from '../bench/words/shown-title.ts';
import type { SheetEntries } from '../sheet/entries.ts';
import type { Measurement, Point } from '../sheet/measurement.ts';
import { outOfRangeText } from '../text/out-of-range-text.ts';
import { preparedSheet } from './demonstration.ts';
import type { RowEntries } from './entries.ts';
import { strings } from './strings.ts';

/** One sheet that can be compared. */
export interface RowSheet {
  readonly id: string;
  readonly measurement: Measurement;
  readonly point: Point;
}

/** What an address came to: a sheet, or a sentence on why there is none. */
export type RowRead =
  | { readonly sheet: RowSheet; readonly problem?: undefined; readonly points: readonly string[] }
  | { readonly sheet?: undefined; readonly problem: string; readonly points: readonly string[] };

/** What stands after `#` in an address, or the text itself. */
const fragmentOf = (address: string): string => {
  const text = address.trim();
  return text.includes('#') ? text.slice(text.indexOf('#') + 1) : text;
};

/** Reads addresses; fetched when there is one to read. */
export type Decode = typeof decodeEntries;

/** Whether reading a row takes a decoder. */
export const needsDecoder = ({ address }: RowEntries): boolean =>
  address.trim() !== '' && preparedSheet(address) === undefined;

/** Reads one row; never throws, whatever was pasted. */
export function readRow(row: RowEntries, decode: Decode | undefined): RowRead {
  const { address } = row;
  if (address.trim() === '') return { problem: strings.problems.none, points: [] };
  const prepared = preparedSheet(address);
  if (prepared !== undefined) return sheetOf(row, prepared);
  if (decode === undefined) return { problem: strings.problems.reading, points: [] };
  const { entries, carried, problems: lost } = decode(fragmentOf(address));
  if (!carried) return { problem: strings.problems.noSheet, points: [] };
  if (lost[0] !== undefined) return { problem: strings.problems.damaged(lost[0]), points: [] };
  return sheetOf(row, entries);
}

function sheetOf({ id, point }: RowEntries, entries: SheetEntries): RowRead {
  const { measurement, problems } = readMeasurement(entries);
  if (measurement === undefined) {
    const [first] = problems;
    return {
      problem: strings.problems.unusable(`${first?.label ?? ''}: ${first?.problem ?? ''}`),
      points: [],
    };
  }
  const points = measurement.points.map(nameOfPoint);
  const chosen = measurement.points[point === '' ? 0 : Number(point) - 1];
  if (chosen === undefined) return { problem: strings.problems.noPoint, points };
  return { sheet: { id, measurement, point: chosen }, points };
}

/** Why a method gives no number at a point. */
export const outOfRangeProblem = (reason: OutOfRange): string =>
  strings.problems.outOfRange(outOfRangeText('shown', reason));
