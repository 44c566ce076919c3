import type { PrintTable } from '../../tables/print-table.ts';

export interface TableGridProps {
  readonly table: PrintTable;
  readonly caption?: string;
  /** Name of the part that scrolls where the table is wider than the screen. */
  readonly label: string;
}

/** A table to print: heads with their units, the first column naming the rows. */
export function TableGrid({ table: { columns, rows }, caption, label }: TableGridProps) {
  return (
    <section class="scroll" aria-label={label} tabIndex={0}>
      <table class="print-table">
        {caption !== undefined && <caption>{caption}</caption>}
        <thead>
          <tr>
            {columns.map(({ what, unit }, index) => (
              <th key={String(index)} scope="col">
                {what}
                {unit !== undefined && `, ${unit}`}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, index) => (
                <td key={String(index)}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
