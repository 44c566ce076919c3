import type { LevelDbm, LimitTerm, PercentOf, Specification, Statement, TabledCorrection } from '#compute';
import type { TabledBy } from './link-entries.ts';
import type { Columns, MethodSetup } from './method.ts';
import type { Link, Measurand, Repeatability, Sheet } from './sheet.ts';

/** A certificate's corrections by the frequency of a point in Hz, or by the level that its readings say in dBm; every U with this k. */
export interface TabledStatement {
  readonly form: 'corrections';
  readonly by: TabledBy;
  readonly points: readonly TabledCorrection[];
  readonly coverageFactor: number;
  readonly degreesOfFreedom?: number;
}

/**
 * What is stated about a link before a reading is known: a statement as it stands, a table of corrections, limits as a sum of terms
 * (which want the reading), or the standing-wave ratios of source and load (whose phase nobody knows).
 */
export type Stated =
  | Statement
  | TabledStatement
  | { readonly form: 'terms'; readonly terms: readonly LimitTerm[] }
  | { readonly form: 'swr'; readonly sourceSwr: number; readonly loadSwr: number };

/** A link as it is stated once for all points. */
export interface StatedLink extends Omit<Link, 'statement' | 'reflections'> {
  readonly stated: Stated;
  readonly percentOf: PercentOf;
  /** Left out for a what-if: neither its loss nor its statement count. */
  readonly off?: true;
  /** As the method brought it: nobody has looked into a data sheet yet. */
  readonly assumed?: true;
}

/** One frequency or setting at which power was measured, with what is demanded there and what was read. */
export interface Point {
  readonly id: string;
  /** What it is called: in the reader's own words, "80 m, low power". */
  readonly label: string;
  /** Nobody named it: the label is its frequency or its place, as the page writes them. */
  readonly unnamed?: true;
  readonly frequencyHz?: number;
  readonly specification: Specification;
  /** Whether the upper limit is that of a licence, which has words of its own. */
  readonly licence?: true;
  readonly columns: Columns;
}

/** Who, when, with what: what a record needs beside the numbers. All in the reader's own words, any may be empty. */
export interface RecordNotes {
  readonly by: string;
  readonly date: string;
  readonly instruments: string;
  readonly certificates: string;
  readonly supply: string;
  readonly temperature: string;
  readonly remarks: string;
}

/** A whole sheet: one transmitter, one method, one chain, and one or several points. */
export interface Measurement {
  readonly version: 2;
  readonly title: string;
  readonly measurand: Measurand;
  readonly setup: MethodSetup;
  readonly rule: Sheet['rule'];
  readonly repeatability?: Repeatability;
  /** Level that the instrument's input stands without harm. */
  readonly damageLevelDbm?: LevelDbm;
  readonly links: readonly StatedLink[];
  /** At least one. */
  readonly points: readonly Point[];
  readonly record: RecordNotes;
}
