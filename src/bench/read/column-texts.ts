import type { PointEntries } from '../../sheet/entries.ts';
import { COLUMNS_OF, type ColumnName, type MethodKind } from '../../sheet/method.ts';
import { sideBySide } from '../../text/read/column.ts';

/** The texts of the columns that a method asks for, or how many stand side by side where that cannot be told apart. */
export type ColumnTexts =
  | { readonly clear: true; readonly texts: readonly (readonly [ColumnName, string])[] }
  | { readonly clear: false; readonly count: number };

const COUNTING = /^\d+\.?$/;

/**
 * The text of each column. All of them may be pasted at once into the first, side by side, as long as the others are empty; a
 * first column that counts the lines is left out, as `readColumn` does.
 */
export function columnTexts(point: PointEntries, method: MethodKind): ColumnTexts {
  const names = COLUMNS_OF[method];
  const [main, ...others] = names;
  const asTyped = { clear: true, texts: names.map((name) => [name, point[name]] as const) } as const;
  const pasted = main && sideBySide(point[main]);
  if (pasted === undefined) return asTyped;
  const counts = pasted[0]
    ?.split('\n')
    .every((cell, index) => COUNTING.test(cell) && Number.parseInt(cell, 10) === index + 1);
  const own = counts ? pasted.slice(1) : pasted;
  if (own.length === 1) return asTyped;
  if (own.length !== names.length || others.some((name) => point[name].trim() !== ''))
    return isOneRow(pasted) ? asTyped : { clear: false, count: pasted.length };
  return { clear: true, texts: names.map((name, index) => [name, own[index] ?? ''] as const) };
}

/** One line of cells is a row of readings. */
const isOneRow = ([first]: readonly string[]): boolean => first !== undefined && !first.includes('\n');
