import { NumbersTable } from '../parts/NumbersTable.tsx';
import { strings } from './strings.ts';
import { placeRows } from './words.ts';

/** What the readings gave, level by level, before anything of the lender is counted. */
export function PlacesTable() {
  const rows = placeRows().map(([at, ...cells]) => ({ id: at, name: at, cells }));
  return <NumbersTable {...strings.table} rows={rows} />;
}
