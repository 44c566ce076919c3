import { NumbersTable } from '../parts/NumbersTable.tsx';
import { type TraceState, traceOf } from './spec.ts';
import { strings } from './strings.ts';
import { slipTable } from './words.ts';

/** What every slip makes of the trace; the one that is looked at says so in words. */
export function SlipTable({ state }: { state: TraceState }) {
  const { columns } = strings;
  const rows = slipTable(traceOf(state)).map(({ slip, name, says, factor, error }) => ({
    id: slip,
    name: slip === state.slip ? `${name} (${strings.looked})` : name,
    cells: [says, factor, error],
    isLookedAt: slip === state.slip,
  }));
  return (
    <NumbersTable
      caption={strings.table}
      columns={[columns.slip, columns.says, columns.factor, columns.error]}
      rows={rows}
      folds
    />
  );
}
