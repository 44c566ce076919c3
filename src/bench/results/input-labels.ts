import { COLUMNS, COLUMNS_OF, type ColumnName } from '../../sheet/method.ts';
import { readingOf, scatterId } from '../../sheet/scatter.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { OWN_IDS } from '../../sheet/to-model.ts';
import { isolated } from '../../text/isolate.ts';
import { inputStrings as strings } from './input-strings.ts';

/** What the method brings itself. */
export type OwnId = (typeof OWN_IDS)[number];

/** Which input of its own a method brings under this id, if it is one. */
export const ownIdOf = (id: string): OwnId | undefined => OWN_IDS.find((own) => own === id);

/** Which column's scatter an input stands for, if it does. */
const columnOfScatter = (id: string): ColumnName | undefined =>
  COLUMNS.find((column) => scatterId(column) === id);

/**
 * Name of an input of a sheet's model: the reader's own words for a link, or what the method brings, or whose scatter it is. With
 * one column of readings there is no need to say which.
 */
export function inputLabel(sheet: Sheet, id: string): string {
  const link = sheet.links.find((candidate) => candidate.id === id);
  if (link !== undefined) return isolated(link.label);
  const own = ownIdOf(id);
  if (own !== undefined) return strings.own[own];
  const column = columnOfScatter(id);
  if (column === undefined) return id;
  const { method } = readingOf(sheet).setup;
  return COLUMNS_OF[method].length === 1 ? strings.scatter : strings.scatterOf[method][column];
}
