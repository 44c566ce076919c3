import type { PowerW, TransferRound } from '#compute';
import type { Along, LenderForm } from './entries.ts';

/** What the reader calls things: none of it is computed with. */
export interface Notes {
  /** Own instrument, or the pad or cable. */
  readonly name: string;
  readonly lender: string;
  readonly date: string;
  readonly conditions: string;
}

/** One place with its rounds. */
export interface CheckedPlace {
  readonly id: string;
  /** Level in dBm that one's own instrument shows there, or frequency in MHz. */
  readonly at: number;
  readonly rounds: readonly TransferRound[];
}

/** Limits to either side in dB; 0 where nothing was said. */
export interface Influences {
  readonly resolution: number;
  readonly temperature: number;
  readonly mismatch: number;
  readonly other: number;
}

/** A reading to be corrected, and what makes it uncertain besides. Limits in dB. */
export interface LaterReading {
  readonly reading: number;
  /** Frequency in MHz, or the reading itself. */
  readonly at: number;
  readonly temperature: number;
  readonly mismatch: number;
  readonly linearity: number;
}

export interface CheckedAlternation {
  readonly kind: 'alternation';
  readonly notes: Notes;
  readonly along: Along;
  readonly lender: {
    readonly form: LenderForm;
    readonly amount: number;
    readonly factor: number;
    readonly drift: number;
  };
  readonly influences: Influences;
  /** Scatter of one round known from earlier. */
  readonly earlier: { readonly standardDeviation: number; readonly degreesOfFreedom: number } | undefined;
  /** Limits that the data sheet of one's own instrument claims. */
  readonly claimed: number | undefined;
  /** Ascending, no two alike, at least one. */
  readonly places: readonly CheckedPlace[];
  readonly later: LaterReading | undefined;
}

export interface CheckedDc {
  readonly kind: 'dc';
  readonly notes: Notes;
  readonly voltsIn: number;
  readonly voltsOut: number;
  readonly percent: number;
  readonly stepVolts: number;
  readonly oneMeter: boolean;
  readonly loadOhms: number;
  readonly loadPercent: number;
  readonly rated: PowerW | undefined;
}

export interface CheckedSwap {
  readonly kind: 'swap';
  readonly notes: Notes;
  readonly without: readonly number[];
  readonly with: readonly number[];
  readonly earlier: CheckedAlternation['earlier'];
  readonly straightness: number;
  /** Standing-wave ratios, 1 where nothing was said. */
  readonly sourceSwr: number;
  readonly receiverSwr: number;
  readonly partSwr: number;
}

/** Entries that can be computed with. */
export type Checked = CheckedAlternation | CheckedDc | CheckedSwap;
