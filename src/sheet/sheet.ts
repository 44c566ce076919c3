import type {
  LevelDbm,
  PercentOf,
  PowerW,
  Rule,
  Source,
  Specification,
  Statement,
  StatementUnit,
} from '#compute';

/** Kind of a rung or link; decides which cautions apply (a pad takes heat) and how it is drawn. */
export type LinkKind = 'comparison' | 'meter' | 'mismatch' | 'pad' | 'cable' | 'amplifier' | 'other';

export const LINK_KINDS = [
  'comparison',
  'meter',
  'mismatch',
  'pad',
  'cable',
  'amplifier',
  'other',
] as const satisfies readonly LinkKind[];

/** One link between the definition of the watt and the transmitter: what it takes away, and what it may be wrong by. */
export interface Link {
  /** Unique within the sheet; survives reordering. */
  readonly id: string;
  /** The reader's own words. */
  readonly label: string;
  readonly kind: LinkKind;
  /** Loss in dB, added back to the reading; 0 for a comparison, negative for an amplifier. */
  readonly lossDb: number;
  /** What the reader's document states about this link; its deviation is added to the reading (a correction, VIM 2.53). */
  readonly statement: Statement;
  readonly unit: StatementUnit;
  readonly percentOf: PercentOf;
  readonly source: Source;
  /** Name of a cause shared with other links: they then move together. */
  readonly cause?: string;
  /** Mean power the part may take for as long as one likes, in watts. */
  readonly ratedPowerW?: PowerW;
}

/** Which power is meant (ITU Radio Regulations 1.157 to 1.159). */
export type PowerKind = 'mean' | 'pep' | 'carrier';

/** Exactly what is to be known, with its conditions (VIM 2.3). */
export interface Measurand {
  readonly power: PowerKind;
  /** Where: "at the antenna socket". */
  readonly plane: string;
  readonly conditions: string;
}

/** Experimental standard deviation of one reading, known from earlier repeats. */
export interface Repeatability {
  readonly standardDeviationDb: number;
  readonly degreesOfFreedom: number;
}

/**
 * A measurement by pads and cable into a power meter, as the reader states it: the input of everything that computes.
 * Only a fully valid sheet exists; what is still being typed is kept as fields.
 */
export interface Sheet {
  readonly version: 1;
  readonly title: string;
  readonly measurand: Measurand;
  readonly specification: Specification;
  readonly rule: Rule;
  /** Indications of the meter in dBm, at least one. */
  readonly readings: readonly LevelDbm[];
  readonly repeatability?: Repeatability;
  /** Level that the meter's input stands without harm. */
  readonly damageLevelDbm?: LevelDbm;
  /** From the definition down to the transmitter, the order in which the band widens. */
  readonly links: readonly Link[];
}
