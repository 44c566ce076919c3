/** A column: what it gives, and in which unit where it has one. */
export interface Column {
  readonly what: string;
  readonly unit?: string;
}

/** A table to print and pin up. Every number in it is computed. */
export interface PrintTable {
  /** Last part of its address on the page. */
  readonly id: string;
  readonly title: string;
  /** What it answers and what it takes for granted. */
  readonly words: string;
  /** Where its formula is published, or that it follows by mathematics. */
  readonly source: string;
  /** Chapter of the published checks that holds tables of the kind, printed beside computed. */
  readonly checks: string;
  readonly columns: readonly Column[];
  /** As many texts a row as there are columns; the first names the row. */
  readonly rows: readonly (readonly string[])[];
}

/** Numbers from one to another in even steps, both ends among them. */
export const steps = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) =>
    Number((from + index * step).toFixed(6)),
  );
