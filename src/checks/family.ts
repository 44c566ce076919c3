import type { Check, Figure, KnownDifference, Status } from './check.ts';

/** One column of a printed table. */
export interface Column {
  readonly what: string;
  readonly unit: string;
}

/** A printed table whose rows become checks, one figure for each column. */
export interface PrintedTable<Row> {
  readonly id: string;
  /** Heading of the grid. */
  readonly heading: string;
  readonly clause: string;
  readonly status: Status;
  readonly columns: readonly Column[];
  readonly rows: readonly { readonly key: Row; readonly printed: readonly string[] }[];
  /** What the row is called in the grid. */
  readonly row: (row: Row) => string;
  /** What agrees in this row, as a sentence that a test can carry. */
  readonly title: (row: Row) => string;
  /** This site's value for one cell. */
  readonly compute: (row: Row, column: number) => number;
  /** Known differences by row and column, keyed `row/column`. */
  readonly differs?: Readonly<Record<string, KnownDifference>>;
  /** Tolerance of all cells where half the last digit is not the right measure. */
  readonly tolerance?: NonNullable<Figure['tolerance']>;
}

/** A row's key as part of an address. */
const addressPart = (key: string | number): string =>
  String(key)
    .replace('∞', 'inf')
    .replace(/[^a-z0-9.-]+/gi, '-');

/** The checks of a printed table, one for each row; an empty cell is left out. */
export function checksOfTable<Row extends string | number>(table: PrintedTable<Row>): Check[] {
  return table.rows.map(({ key, printed }) => ({
    id: `${table.id}-${addressPart(key)}`,
    clause: table.clause,
    title: table.title(key),
    status: table.status,
    grid: { heading: table.heading, row: table.row(key) },
    figures: table.columns.flatMap((column, i) => figureOf(table, { key, printed: printed[i], column, i })),
  }));
}

function figureOf<Row extends string | number>(
  table: PrintedTable<Row>,
  { key, printed, column, i }: { key: Row; printed: string | undefined; column: Column; i: number },
): Figure[] {
  if (printed === undefined || printed === '') return [];
  const differs = table.differs?.[`${key}/${i}`];
  const { tolerance } = table;
  return [
    {
      ...column,
      printed,
      compute: () => table.compute(key, i),
      ...(differs && { differs }),
      ...(tolerance && { tolerance }),
    },
  ];
}
