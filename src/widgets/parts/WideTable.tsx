interface WideTableProps {
  readonly caption: string;
  /** Heads of the columns; the first is that of the names. */
  readonly columns: readonly string[];
  /** Names, with a text for each column but the first where there is one. */
  readonly rows: readonly {
    readonly id: string;
    readonly name: string;
    readonly cells: readonly (string | undefined)[];
  }[];
}

/** Names with numbers beside them, each row in one line: where the table is too wide it scrolls. */
export function WideTable({ caption, columns, rows }: WideTableProps) {
  const [names, ...heads] = columns;
  return (
    <section class="scroll" aria-label={caption} tabIndex={0}>
      <table class="places-table">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{names}</th>
            {heads.map((head, index) => (
              <th key={String(index)} scope="col" class="number">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, cells }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              {heads.map((_, index) => (
                <td key={String(index)} class="number">
                  {cells[index]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
