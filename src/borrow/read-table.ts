import { MOST_PLACES, type PlaceEntries } from './entries.ts';

/** A place and its readings, before it has an id. */
export type TablePlace = Omit<PlaceEntries, 'id'>;

const cellsOf = (line: string): readonly string[] =>
  (/[\t;]/.test(line) ? line.split(/[\t;]/) : line.trim().split(/\s+/)).map((cell) => cell.trim());

const isHeading = (line: string): boolean => /\p{L}/u.test(line) && !/^\s*[-+−±]?[\d.,]/u.test(line);

/**
 * A pasted table with the place in its first column and readings in turn beside it: lines of the same place follow each other and
 * become one. Undefined for what is no such table: fewer than four columns, or an odd number.
 */
export function readTable(text: string): readonly TablePlace[] | undefined {
  const [first = '', ...rest] = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  const rows = (isHeading(first) ? rest : [first, ...rest]).map(cellsOf);
  if (rows.length === 0) return undefined;
  if (rows.some((cells) => cells.length < 4 || cells.length % 2 === 1 || cells.includes('')))
    return undefined;
  const places: TablePlace[] = [];
  for (const [at = '', ...readings] of rows) {
    const line = readings.join('; ');
    const last = places.at(-1);
    if (last?.at === at) places[places.length - 1] = { at, readings: `${last.readings}\n${line}` };
    else places.push({ at, readings: line });
  }
  return places.length > MOST_PLACES ? undefined : places;
}
