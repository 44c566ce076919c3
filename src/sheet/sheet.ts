import type {
  Envelope,
  LevelDbm,
  PercentOf,
  PowerDelivery,
  PowerKind,
  PowerW,
  Rule,
  Source,
  Specification,
  Statement,
} from '#compute';
import type { LinkUnit, MethodReading } from './method.ts';

/**
 * Kind of a rung or link; decides which cautions apply (a pad takes heat) and how it is drawn. `transmitter` is the spread of what
 * is measured (supply, heat, time), apart from the measurement's own uncertainty.
 */
export type LinkKind =
  | 'comparison'
  | 'meter'
  | 'mismatch'
  | 'pad'
  | 'cable'
  | 'amplifier'
  | 'transmitter'
  | 'other';

export const LINK_KINDS = [
  'comparison',
  'meter',
  'mismatch',
  'pad',
  'cable',
  'amplifier',
  'transmitter',
  'other',
] as const satisfies readonly LinkKind[];

/** One link between the definition of the watt and the transmitter: what it takes away, and what it may be wrong by. */
export interface Link {
  /** Unique within the sheet; survives reordering. */
  readonly id: string;
  /** The reader's own words. */
  readonly label: string;
  /** The same for listeners, where it has symbols that are said in words. */
  readonly said?: string;
  readonly kind: LinkKind;
  /** Loss in dB, added back to the reading; 0 for a comparison, negative for an amplifier. */
  readonly lossDb: number;
  /** What the reader's document states about this link; its deviation is added to the reading (a correction, VIM 2.53). */
  readonly statement: Statement;
  readonly unit: LinkUnit;
  readonly percentOf: PercentOf;
  readonly source: Source;
  /** Name of a cause shared with other links: they then move together, or against each other where `sensitivity` is -1. */
  readonly cause?: string;
  readonly sensitivity?: 1 | -1;
  /** Fraction to which a judged statement is itself known. */
  readonly reliability?: number;
  /** Mismatch of these two reflection magnitudes: its exact shape then stands for the statement, which says its limits. */
  readonly reflections?: { readonly source: number; readonly load: number };
  /** Mean power the part may take for as long as one likes, in watts. */
  readonly ratedPowerW?: PowerW;
  /** How much of `lossDb` a table of corrections brought at this reading. */
  readonly correctionDb?: number;
}

/** Exactly what is to be known, with its conditions (VIM 2.3). */
export interface Measurand {
  readonly power: PowerKind;
  /** What an ideal load would take if not said. */
  readonly delivery?: PowerDelivery;
  /** Held down if not said. */
  readonly keying?: 'keyDown' | Envelope;
  /** Where: "at the antenna socket". */
  readonly plane: string;
  /** Frequency, supply, temperature, warm-up, in the reader's own words. */
  readonly conditions: string;
}

/** Experimental standard deviation of one reading, known from earlier repeats. */
export interface Repeatability {
  readonly standardDeviationDb: number;
  readonly degreesOfFreedom: number;
}

/**
 * A measurement of one power at one point, as the reader states it: the input of everything that computes. Without `method` it is
 * one by pads and cable into a power meter. Only a fully valid sheet exists; what is still being typed is kept as fields.
 */
export interface Sheet {
  readonly version: 1;
  readonly title: string;
  readonly measurand: Measurand;
  readonly specification: Specification;
  readonly rule: Rule;
  /** Indications of the instrument as levels in dBm, at least one: what each alone would say of the power at its input. */
  readonly readings: readonly LevelDbm[];
  /** By which other method, and what was read in its own units. */
  readonly method?: MethodReading;
  readonly repeatability?: Repeatability;
  /** Level that the meter's input stands without harm. */
  readonly damageLevelDbm?: LevelDbm;
  /** From the definition down to the transmitter, the order in which the band widens. */
  readonly links: readonly Link[];
}
