import { NumbersTable } from '../parts/NumbersTable.tsx';
import type { SpendState } from './spec.ts';
import { strings } from './strings.ts';
import { boughtRows } from './words.ts';

/** What each link would buy, and how good it would have to be alone. */
export function BoughtTable({ state }: { state: SpendState }) {
  const { caption, columns } = strings.table;
  const rows = boughtRows(state).map(({ link, cells }) => ({
    id: link,
    name: strings.link[link],
    cells,
    isLookedAt: link === state.link,
  }));
  return <NumbersTable caption={caption} columns={columns} rows={rows} />;
}
