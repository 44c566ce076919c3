import { cleanText, quoted } from '../clean.ts';
import type { UnitName } from '../units.ts';
import type { DecimalMark } from './decimal.ts';
import { kindOf } from './kind.ts';
import { normalise } from './normalise.ts';
import { type PlainNumber, plainReader } from './plain-number.ts';
import { type Read, type ReadSpec, readQuantity, type Surroundings } from './quantity.ts';
import { unitOf } from './spelling.ts';

/** Where a number or a fault was found; lines count from 1. */
export interface ColumnRead {
  readonly values: readonly { readonly line: number; readonly value: number; readonly unit: UnitName }[];
  readonly problems: readonly { readonly line: number; readonly text: string; readonly problem: string }[];
  /** The heading, where the first line is one; its unit counts for numbers that have none. */
  readonly heading: string | undefined;
  /** Whether a first column 1, 2, 3 ... was left out as line numbers. */
  readonly numbered: boolean;
  /** Whether some numbers have a unit other than the one that is taken where none is, and some have none. */
  readonly mixed: boolean;
}

interface Line {
  readonly line: number;
  readonly text: string;
}

interface Row extends Line {
  readonly cells: readonly string[];
  /** Where the line is a plain number: what it is. */
  readonly plain?: PlainNumber;
}

const good = (reads: readonly Read[]): boolean => reads.every((read) => read.ok);

/** Cells of one line: by tabs or semicolons; else one number if it reads as one; else by commas or spaces. */
function cellsOf(text: string, spec: ReadSpec, around: Surroundings): readonly string[] {
  const split = (at: RegExp) =>
    text
      .split(at)
      .map((cell) => cell.trim())
      .filter((cell) => cell !== '');
  if (/[\t;]/.test(text)) return split(/[\t;]/);
  if (readQuantity(text, spec, around).ok) return [text];
  const ways = [split(/,\s+/), split(/,/), split(/,?\s+/)].filter((cells) => cells.length > 1);
  return ways.find((cells) => good(cells.map((cell) => readQuantity(cell, spec, around)))) ?? [text];
}

/** How a column or table marks decimals, if one of its numbers leaves no doubt. */
export function markOf(lines: readonly string[]): DecimalMark | undefined {
  const sure = (sign: DecimalMark): boolean => {
    const pattern = new RegExp(`(^|[^\\d.,])\\d+\\${sign}(\\d{1,2}|\\d{4,})(?![\\d.,])`);
    return lines.some((line) => line.includes(sign) && pattern.test(line));
  };
  const [points, commas] = [sure('.'), sure(',')];
  return points === commas ? undefined : points ? '.' : ',';
}

/** The unit at the end of a heading: `Level / dBm`, `Power (mW)`, `Power in mW`. */
export function headingUnit(heading: string): UnitName | undefined {
  const word = /(?:[([/]|\bin)\s*([^\s()[\]/]+)\s*[)\]]?$/u.exec(normalise(heading))?.[1];
  return word === undefined ? undefined : unitOf(word);
}

/** Words, not a number with its unit; digits of a full width are digits. */
export const isHeading = (text: string): boolean =>
  /\p{L}/u.test(text) && !/^[\s"'(]*[-+\u00b1]?[\d.,]/u.test(normalise(text));

/** Whether the rows are pairs whose first cells count 1, 2, 3 ... */
function isNumbered(rows: readonly Row[]): boolean {
  return (
    rows.length > 1 &&
    rows.every(({ cells }, index) => cells.length === 2 && cells[0]?.replace('.', '') === String(index + 1))
  );
}

export function rowsOf(text: string): readonly Line[] {
  return text
    .split(/\r\n|\r|\n/)
    .map((line, index) => ({ line: index + 1, text: line }))
    .filter((row) => /^[\d+-]/.test(row.text) || cleanText(row.text).trim() !== '');
}

type Value = ColumnRead['values'][number];

/** The unit that stands at a number; `none` where it has none. */
const unitAt = (cell: string): UnitName | undefined =>
  unitOf(/[\d.,](?:e[+-]?\d+)?\s*([^\d.,\s][^\d]*)?$/iu.exec(normalise(cell))?.[1] ?? '');

/**
 * Reads pasted readings: one or several to a line, set apart by line ends, tabs, semicolons, commas or spaces, with decimal
 * point or comma, with or without units, under a heading or not. Lines that are none are told with their number; the good
 * ones stay. Never throws.
 */
export function readColumn(text: string, spec: ReadSpec): ColumnRead {
  const lines = rowsOf(text);
  const first = lines[0];
  const heading = first !== undefined && isHeading(first.text) ? cleanText(first.text).trim() : undefined;
  const data = heading === undefined ? lines : lines.slice(1);
  const unit = heading === undefined ? undefined : headingUnit(heading);
  const { base, units } = kindOf(spec.kind);
  const around: Surroundings = {
    mark: markOf(data.map((row) => row.text)),
    unit: unit !== undefined && units[unit] !== undefined ? unit : undefined,
  };
  const plainly = plainReader(spec, around);
  const rows = data.map((row): Row => {
    const plain = plainly(row.text);
    return plain ? { ...row, cells: [row.text], plain } : { ...row, cells: cellsOf(row.text, spec, around) };
  });
  const numbered = isNumbered(rows);
  const values: Value[] = [];
  const problems: ColumnRead['problems'][number][] = [];
  let [bare, foreign] = [false, false];
  const note = (typed: UnitName | undefined): void => {
    bare ||= typed === 'none';
    foreign ||= typed !== 'none' && typed !== (around.unit ?? base);
  };
  for (const { line, cells, plain } of rows) {
    if (plain) {
      values.push({ line, value: plain.value, unit: base });
      note(plain.typed);
      continue;
    }
    for (const cell of numbered ? cells.slice(1) : cells) {
      const read = readQuantity(cell, spec, around);
      if (read.ok) {
        values.push({ line, value: read.value, unit: read.unit });
        note(unitAt(cell));
      } else problems.push({ line, text: cell, problem: `Line ${line}, ${quoted(cell)}: ${read.problem}` });
    }
  }
  return { values, problems, heading, numbered, mixed: bare && foreign };
}

/**
 * The texts of columns that were pasted side by side, with tabs or semicolons between them: as many as every line has cells;
 * undefined unless there are two or more of them on two lines or more, or on one line with tabs.
 */
export function sideBySide(text: string): readonly string[] | undefined {
  if (!/[\t;]/.test(text)) return undefined;
  const rows = rowsOf(text).map((row) => row.text.split(/[\t;]/));
  const count = rows[0]?.length ?? 0;
  if (count < 2 || rows.some((cells) => cells.length !== count)) return undefined;
  if (rows.length < 2 && !text.includes('\t')) return undefined;
  return Array.from({ length: count }, (_, column) =>
    rows.map((cells) => cells[column]?.trim() ?? '').join('\n'),
  );
}
