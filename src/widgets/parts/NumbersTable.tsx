/** A line of a table of numbers. */
export interface NumbersRow {
  readonly id: string;
  readonly name: string;
  /** A text for each column but the first. */
  readonly cells: readonly string[];
  /** Whether the figure shows this one. */
  readonly isLookedAt?: boolean;
}

interface NumbersTableProps {
  readonly caption: string;
  /** Heads of the columns; the first is that of the names. */
  readonly columns: readonly string[];
  readonly rows: readonly NumbersRow[];
  /** Whether each row stands as a block of its own on a narrow screen. */
  readonly folds?: boolean;
}

/** Names with numbers beside them, each number with the head of its column where rows are blocks. */
export function NumbersTable({ caption, columns, rows, folds = false }: NumbersTableProps) {
  const [names, ...heads] = columns;
  return (
    <table class={folds ? 'rungs slips' : 'rungs'}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{names}</th>
          {heads.map((head) => (
            <th key={head} scope="col" class="number">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, name, cells, isLookedAt }) => (
          <tr key={id} class={isLookedAt ? 'looked-at' : undefined}>
            <th scope="row">{name}</th>
            {heads.map((head, index) => (
              <td key={head} class="number" data-label={head}>
                {cells[index]}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
