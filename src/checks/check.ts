/**
 * What a published worked example is, as data. The tests run every one, and the page of checks is made from the same
 * list, so that a reader sees what a test saw.
 */

/**
 * How far the printed value can be traced.
 * `published`: seen in the document's text. `recomputed`: from exact formulas, worked out apart from this site, and not
 * found in print. `from memory`: believed to be in the document named, not seen in it. `common practice`: a rule of the
 * trade without a source.
 */
export type Status = 'published' | 'recomputed' | 'from memory' | 'common practice';

/** A print that is known to differ from the exact value. */
export interface KnownDifference {
  readonly exact: string;
  readonly because: string;
  /** A misprint or a last digit cut off: nothing in it for whoever measures. */
  readonly slip?: true;
}

/** One number of a check: as the source prints it, and how this site computes it. */
export interface Figure {
  /** Which quantity it is, in words or by the source's own symbol. */
  readonly what: string;
  /** The value exactly as printed, without its unit; `< 2.5` where the source gives a bound. */
  readonly printed: string;
  /** Unit of both values; empty for a pure number. */
  readonly unit: string;
  /** This site's value in that unit, by call of the computation and never typed. */
  readonly compute: () => number;
  /** How far apart the two may lie, where half a unit of the last printed digit is not the right measure; with the reason. */
  readonly tolerance?: { readonly within: number; readonly because: string };
  /** Where print and exact value are known to differ: the exact one, and why. A test asserts that they do. */
  readonly differs?: KnownDifference;
}

/** One worked example, table row or rule. */
export interface Check {
  /** Unique over all checks. */
  readonly id: string;
  /** Clause, table or formula of the source; empty where the source has none. */
  readonly clause: string;
  /** What agrees, as a sentence that a test can carry. */
  readonly title: string;
  readonly status: Status;
  /** What the example starts from, as far as the title does not say it. */
  readonly given?: string;
  readonly figures: readonly Figure[];
  /** What is worth knowing beside the numbers. */
  readonly note?: string;
  /** Where it can be tried: a lesson's page and a state of its figure, as they stand in an address. */
  readonly tried?: { readonly path: string; readonly state: string };
  /** Checks with one heading in a row are shown as one grid: a row for each check, a column for each kind of figure. */
  readonly grid?: { readonly heading: string; readonly row: string };
}

/** A document or table, with the checks taken from it. */
export interface CheckSource {
  readonly id: string;
  /** Short name, a heading. */
  readonly name: string;
  /** The document in full, as one would cite it. */
  readonly citation: string;
  readonly checks: readonly Check[];
}

/** Sources that share a page. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  /** One sentence: what this chapter tries. */
  readonly about: string;
  readonly sources: readonly CheckSource[];
}
