import { METER, rowResult } from '../../sheet/pads-in-a-row.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText } from '../../text/quantity-text.ts';
import { type RowState, rowOf } from './spec.ts';
import { strings } from './strings.ts';
import { shareText } from './words.ts';

/** Each part with its length and its share of the variance. */
export function SharesTable({ values }: { readonly values: RowState }) {
  const { caption, columns, pad, meter } = strings.table;
  return (
    <table class="certificate">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column, index) => (
            <th key={column} scope="col" class={index === 0 ? undefined : 'number'}>
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rowResult(rowOf(values)).propagation.budget.map(({ id, standardUncertainty: u, share }, index) => (
          <tr key={id}>
            <th scope="row">{id === METER ? meter : pad(index + 1)}</th>
            <td class="number">{dbText('shown', { db: u, decimals: decimalsFor(u) })}</td>
            <td class="number">{shareText('shown', share)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
