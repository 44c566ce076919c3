import type { VerdictState } from './spec.ts';
import { strings } from './strings.ts';
import { riskNote, riskRows } from './words.ts';

/** What each rule does to a thousand such things; nothing where nobody knows how they spread. */
export function RiskTable({ state }: { state: VerdictState }) {
  const rows = riskRows(state);
  const { caption, columns } = strings.risks;
  if (rows.length === 0) return null;
  return (
    <>
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
          {rows.map(({ kind, name, cells }) => (
            <tr key={kind} class={kind === state.rule ? 'looked-at' : undefined}>
              <th scope="row">{name}</th>
              {cells.map((cell, index) => (
                <td key={columns[index + 1]} class="number" data-label={columns[index + 1]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">{riskNote(state)}</p>
    </>
  );
}
