import { type TraceState, traceOf } from './spec.ts';
import { strings } from './strings.ts';
import { slipTable } from './words.ts';

/** What every slip makes of the trace; the one that is looked at says so in words. */
export function SlipTable({ state }: { state: TraceState }) {
  const { columns } = strings;
  return (
    <table class="rungs slips">
      <caption>{strings.table}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.slip}</th>
          <th scope="col" class="number">
            {columns.says}
          </th>
          <th scope="col" class="number">
            {columns.factor}
          </th>
          <th scope="col" class="number">
            {columns.error}
          </th>
        </tr>
      </thead>
      <tbody>
        {slipTable(traceOf(state)).map(({ slip, name, says, factor, error }) => (
          <tr key={slip} class={slip === state.slip ? 'looked-at' : undefined}>
            <th scope="row">{slip === state.slip ? `${name} (${strings.looked})` : name}</th>
            <td class="number" data-label={columns.says}>
              {says}
            </td>
            <td class="number" data-label={columns.factor}>
              {factor}
            </td>
            <td class="number" data-label={columns.error}>
              {error}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
