import { methodStrings as strings } from './method-strings.ts';
import type { PartRow } from './method-words.ts';

/** What is stated of each part of a method, and what it does to the result; the largest says so in words. */
export function PartsTable({ rows }: { rows: readonly PartRow[] }) {
  const { columns } = strings;
  return (
    <table class="rungs slips">
      <caption>{strings.table}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.part}</th>
          <th scope="col" class="number">
            {columns.stated}
          </th>
          <th scope="col" class="number">
            {columns.u}
          </th>
          <th scope="col" class="number">
            {columns.share}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, name, stated, u, share, largest }) => (
          <tr key={id} class={largest ? 'looked-at' : undefined}>
            <th scope="row">{largest ? `${name} (${strings.mark})` : name}</th>
            <td class="number" data-label={columns.stated}>
              {stated}
            </td>
            <td class="number" data-label={columns.u}>
              {u}
            </td>
            <td class="number" data-label={columns.share}>
              {share}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
