import { cleanText, quoted } from '../clean.ts';
import type { UnitName } from '../units.ts';
import { headingUnit, isHeading, markOf, rowsOf } from './column.ts';
import { kindOf } from './kind.ts';
import { type ReadSpec, readQuantity } from './quantity.ts';

/** Lines of a table as numbers in the own units of their columns; lines count from 1. */
export interface RowsRead {
  readonly rows: readonly { readonly line: number; readonly values: readonly number[] }[];
  /** What is wrong with a line: a sentence, or nothing but the line itself where it has another number of cells. */
  readonly problems: readonly {
    readonly line: number;
    readonly text: string;
    readonly problem: string | undefined;
  }[];
}

const STARTS_A_NUMBER = /^[-+\u2212\u00b1]?[\d.,]/u;
const SIGN = /^[-+\u2212\u00b1]$/u;

/** Cells set apart by spaces: a word that is no number belongs to the one before it, a sign alone to the one behind it. */
function byNumbers(text: string): readonly string[] {
  const cells: string[] = [];
  let sign = '';
  for (const word of text.split(/\s+/)) {
    if (SIGN.test(word)) sign = word;
    else if (STARTS_A_NUMBER.test(word) || cells.length === 0) {
      cells.push(sign + word);
      sign = '';
    } else cells.push(`${cells.pop()} ${word}`);
  }
  return cells.map((cell) => cell.replace(/,$/, ''));
}

/** Cells of one line: by tabs or semicolons; else by spaces or commas, whichever gives as many as there are columns. */
function cellsOf(text: string, count: number): readonly string[] {
  const trimmed = cleanText(text.replaceAll('\t', ';')).trim();
  if (trimmed.includes(';'))
    return trimmed
      .replace(/;+$/, '')
      .split(';')
      .map((cell) => cell.trim());
  const numbers = byNumbers(trimmed);
  const commas = trimmed.split(',').map((cell) => cell.trim());
  return numbers.length !== count && commas.length === count ? commas : numbers;
}

/** Units that the cells of a heading name. */
function unitsIn(heading: string, specs: readonly ReadSpec[]): readonly (UnitName | undefined)[] {
  const cells = heading.split(/[\t;,]/);
  return specs.map(({ kind }, index) => {
    const unit = cells.length === specs.length ? headingUnit(cells[index] ?? '') : undefined;
    return unit !== undefined && kindOf(kind).units[unit] !== undefined ? unit : undefined;
  });
}

/**
 * Reads a typed or pasted table, a line for each row: cells set apart by tabs, semicolons, spaces or commas, with decimal point or
 * comma, with or without units, under a heading or not. Lines that cannot be used are told with their number. Never throws.
 */
export function readRows(text: string, specs: readonly ReadSpec[]): RowsRead {
  const lines = rowsOf(text);
  const first = lines[0];
  const heading = first !== undefined && isHeading(first.text) ? first.text : undefined;
  const units = unitsIn(heading ?? '', specs);
  const data = heading === undefined ? lines : lines.slice(1);
  const mark = markOf(data.map((row) => row.text));
  const rows: RowsRead['rows'][number][] = [];
  const problems: RowsRead['problems'][number][] = [];
  for (const { line, text: typed } of data) {
    const cells = cellsOf(typed, specs.length);
    const tell = (problem: string | undefined): void => {
      problems.push({ line, text: quoted(typed.trim()), problem });
    };
    const reads = specs.map((spec, index) =>
      readQuantity(cells[index] ?? '', spec, { mark, unit: units[index] }),
    );
    const bad = reads.find((read) => !read.ok);
    if (cells.length !== specs.length) tell(undefined);
    else if (bad !== undefined && !bad.ok) tell(bad.problem);
    else rows.push({ line, values: reads.flatMap((read) => (read.ok ? [read.value] : [])) });
  }
  return { rows, problems };
}
