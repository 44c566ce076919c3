import { strings } from './strings.ts';
import { placeRows } from './words.ts';

/** What the readings gave, level by level, before anything of the lender is counted. */
export function PlacesTable() {
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
        {placeRows().map(([at, correction, expanded]) => (
          <tr key={at}>
            <th scope="row">{at}</th>
            <td class="number" data-label={columns[1]}>
              {correction}
            </td>
            <td class="number" data-label={columns[2]}>
              {expanded}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
