/** One sheet as it stands in the form. */
export interface RowEntries {
  /** Unique within the page; never typed. */
  readonly id: string;
  /** Address of a sheet on the bench, or what stands after `#` in it. */
  readonly address: string;
  /** Number of its point, from 1; empty for the first. */
  readonly point: string;
}

/** Everything that stands in the form. */
export interface CompareEntries {
  /** At least two. */
  readonly rows: readonly RowEntries[];
  /** Names of links that are one and the same thing wherever they occur. */
  readonly same: readonly string[];
  /** Names of causes that are not the same thing in one sheet and in another. */
  readonly apart: readonly string[];
}

/** Fewest and most sheets side by side. */
export const FEWEST_ROWS = 2;
export const MOST_ROWS = 8;

/** A form without anything in it. */
export const blankCompare = (): CompareEntries => ({
  rows: [1, 2].map((number) => ({ id: `sheet${number}`, address: '', point: '' })),
  same: [],
  apart: [],
});
