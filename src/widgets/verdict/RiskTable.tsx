import { NumbersTable } from '../parts/NumbersTable.tsx';
import type { VerdictState } from './spec.ts';
import { strings } from './strings.ts';
import { riskNote, riskRows } from './words.ts';

/** What each rule does to a thousand such things; nothing where nobody knows how they spread. */
export function RiskTable({ state }: { state: VerdictState }) {
  const { caption, columns } = strings.risks;
  const rows = riskRows(state).map(({ kind, name, cells }) => ({
    id: kind,
    name,
    cells,
    isLookedAt: kind === state.rule,
  }));
  if (rows.length === 0) return null;
  return (
    <>
      <NumbersTable caption={caption} columns={columns} rows={rows} />
      <p class="small">{riskNote(state)}</p>
    </>
  );
}
