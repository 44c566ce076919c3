import type { Sheet } from '../sheet/sheet.ts';

/** A line of what is known, with where it comes from. */
export interface Known {
  readonly what: string;
  readonly value: string;
}

/** A worked example: words and a sheet. Every result is computed from the sheet by whoever shows it. */
export interface Example {
  /** Last part of the address; never changes. */
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  /** As somebody would ask it in a club or a forum. */
  readonly question: string;
  readonly method: string;
  readonly sheet: () => Sheet;
  /** Name of the prepared chain that the page's figure opens with. */
  readonly preset: 'two-pads';
  /** A better-known version of the same chain, and what it took. */
  readonly better: { readonly sheet: () => Sheet; readonly words: string };
  /** The classic slip that the example guards against, in words with its numbers computed. */
  readonly mistake: () => string;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  /** Related lesson: `track/slug` and its title. */
  readonly lesson: { readonly id: string; readonly title: string };
}
