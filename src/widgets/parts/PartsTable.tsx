import { methodStrings as strings } from './method-strings.ts';
import type { PartRow } from './method-words.ts';
import { NumbersTable } from './NumbersTable.tsx';

/** What is stated of each part of a method, and what it does to the result; the largest says so in words. */
export function PartsTable({ rows }: { rows: readonly PartRow[] }) {
  const { part, stated, u, share } = strings.columns;
  return (
    <NumbersTable
      caption={strings.table}
      columns={[part, stated, u, share]}
      rows={rows.map((row) => ({
        id: row.id,
        name: row.largest ? `${row.name} (${strings.mark})` : row.name,
        cells: [row.stated, row.u, row.share],
        isLookedAt: row.largest,
      }))}
      folds
    />
  );
}
