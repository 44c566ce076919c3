import type { SpendState } from './spec.ts';
import { strings } from './strings.ts';
import { boughtRows } from './words.ts';

/** What each link would buy, and how good it would have to be alone. */
export function BoughtTable({ state }: { state: SpendState }) {
  const { caption, columns } = strings.table;
  return (
    <table class="rungs">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((text, index) => (
            <th key={text} scope="col" class={index === 0 ? undefined : 'number'}>
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {boughtRows(state).map(({ link, cells }) => (
          <tr key={link} class={link === state.link ? 'looked-at' : undefined}>
            <th scope="row">{strings.link[link]}</th>
            {cells.map((cell, index) => (
              <td key={columns[index + 1]} class="number" data-label={columns[index + 1]}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
