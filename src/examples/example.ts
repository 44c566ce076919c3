import type { Result } from '#compute';
import type { Measurement } from '../sheet/measurement.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Style } from '../text/style.ts';
import type { UnitName } from '../text/units.ts';

/** A text that every style writes its own way: its numbers, signs and units. */
export type Said = (style: Style) => string;

/** Something that is given: what it is, and its value as it was stated. */
export interface Known {
  readonly what: string;
  readonly value: Said;
}

/** One step of the sum. */
export interface Step {
  /** Anchor on the page, unique in the example; never changes. */
  readonly id: string;
  readonly title: string;
  /** Formula with the example's numbers and the unit of what comes out. */
  readonly formula: Said;
  /** Why it is so, or what it costs to leave it out. */
  readonly words?: string;
}

/** What an example comes to: a name, the value, and where it is a measured one everything that was summed. */
export interface Outcome {
  readonly name: string;
  readonly value: Said;
  /** Where outcomes of one example are made in different quantities. */
  readonly space?: Exclude<Space, 'each' | 'none'>;
  readonly stated?: {
    readonly result: Result;
    readonly unit: UnitName;
    /** Names of the parts by the ids of the result's budget. */
    readonly labels: Readonly<Record<string, string>>;
  };
}

/**
 * In which quantity the sum is propagated: named on the page, since a band that is even in one is lopsided in another. `each` where every
 * outcome has its own.
 */
export type Space = 'decibels' | 'watts' | 'reflections' | 'each' | 'none';

/** What every worked example has: words and stated numbers. Every result is computed by whoever shows it. */
export interface ExampleBase {
  /** Last part of the address; never changes. */
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  /** As somebody would ask it in a club or a forum. */
  readonly question: string;
  /** Which power is wanted, where and under what conditions. */
  readonly wanted: string;
  readonly method: string;
  readonly space: Space;
  readonly known: () => readonly Known[];
  /** The sum step by step. */
  readonly steps: () => readonly Step[];
  /** The classic slip that the example guards against, in words with its numbers computed. */
  readonly mistake: () => string;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  /** Related lesson: `track/slug`. */
  readonly lesson: string;
  /** The measurement that the bench opens with, its every field open to the reader's own. */
  readonly bench?: () => Measurement;
  /** What the bench does not say of this example, or says otherwise. */
  readonly benchSays?: string;
}

/** A reading with the chain of links that it hangs on: a band that widens from link to link. */
export interface ChainExample extends ExampleBase {
  readonly kind: 'chain';
  readonly sheet: () => Sheet;
  /** A better-known version, and what it took. */
  readonly better: { readonly sheet: () => Sheet; readonly words: string };
  /** What else comes out: the same sum with other readings. */
  readonly also?: () => readonly Outcome[];
}

/** A sum of another kind: a ratio, a reason why there is no number, several verdicts. */
export interface SumExample extends ExampleBase {
  readonly kind: 'sum';
  /** At least one; the first is the answer to the question. */
  readonly outcomes: () => readonly Outcome[];
  /** What decides, and what improving it would buy. */
  readonly dominates: Said;
  readonly help: () => string;
}

export type Example = ChainExample | SumExample;
