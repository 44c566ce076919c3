import type { PercentOf, Source } from '#compute';
import type { LinkEntries } from '../sheet/entries.ts';
import type { TypedKey } from '../sheet/typed-key.ts';

/** What a reader owns or borrows: what shows something, what power goes through, and what takes it. */
export const INSTRUMENT_KINDS = ['meter', 'pad', 'cable', 'amplifier', 'load', 'other'] as const;
export type InstrumentKind = (typeof INSTRUMENT_KINDS)[number];

/** What an instrument is stated in. Which of them a sheet can use hangs on its method. */
export const INSTRUMENT_UNITS = [
  'dB',
  'percentOfPower',
  'percentOfVolts',
  'voltsPeakToPeak',
  'dcVolts',
  'percentOfDcVolts',
  'dcAmperes',
  'percentOfDcAmperes',
  'percentOfResistance',
  'kelvin',
] as const;
export type InstrumentUnit = (typeof INSTRUMENT_UNITS)[number];

/** What is taken for true: the limits of its data sheet, or what a calibration found. Never both. */
export const BASES = ['dataSheet', 'calibration'] as const;
export type Basis = (typeof BASES)[number];

/** How a data sheet states limits. */
export const SHEET_FORMS = ['rectangular', 'asymmetric', 'terms'] as const;
export type SheetForm = (typeof SHEET_FORMS)[number];

/** What the terms of a limit are of: W, V from peak to peak, V DC. */
export const TERM_READINGS = ['power', 'voltsPeakToPeak', 'dcVolts'] as const;
export type TermReading = (typeof TERM_READINGS)[number];

/** Whether a calibration gave one correction, or one for each frequency or level. */
export const CORRECTED_BY = ['nothing', 'frequency', 'level'] as const;
export type CorrectedBy = (typeof CORRECTED_BY)[number];

/** Where a calibration comes from: a laboratory, one's own measurement, or a comparison with a lent reference. */
export const CALIBRATED_FROM = ['certificate', 'measured', 'borrowed'] as const satisfies readonly Source[];
export type CalibratedFrom = (typeof CALIBRATED_FROM)[number];

/** The texts of a sum of terms; the temperature of the day and the years since belong to a sheet. */
type TermTexts = Pick<
  LinkEntries,
  | 'ofReading'
  | 'ofScale'
  | 'fullScale'
  | 'digits'
  | 'step'
  | 'floor'
  | 'perKelvin'
  | 'coldest'
  | 'warmest'
  | 'perYear'
>;

/** What a calibration found, all as typed. */
export interface CalibrationEntries {
  readonly source: CalibratedFrom;
  /** Laboratory and number of the certificate, or who lent what, with the lender's own statement. */
  readonly from: string;
  readonly by: CorrectedBy;
  /** What is to be added to a reading (VIM 2.53), in the unit of the instrument; for a pad or cable: true less nominal loss. */
  readonly correction: string;
  /** Expanded uncertainty U of that correction. */
  readonly uncertainty: string;
  /** Or line by line: frequency or level, correction, U. */
  readonly table: string;
  /** Coverage factor k of every U. */
  readonly factor: string;
  /** Degrees of freedom; empty where the uncertainty is taken as known. */
  readonly freedom: string;
  /** The day of the calibration, as 2026-05-09. */
  readonly calibrated: string;
}

/**
 * One instrument, pad, cable or load as it stands in its form and is kept: everything typed is text, whether it can be used or not, and
 * texts that the present choices do not need stay.
 */
export interface InstrumentEntries extends TermTexts, CalibrationEntries {
  readonly kind: InstrumentKind;
  /** The reader's own name for it. */
  readonly label: string;
  /** Its number or mark. */
  readonly serial: string;
  /** Nominal loss in dB: added back to the reading; negative for an amplifier. */
  readonly loss: string;
  /** Measured resistance of a load. */
  readonly resistance: string;
  /** Mean power it takes for as long as one likes; empty where nothing is stated. */
  readonly rated: string;
  readonly basis: Basis;
  readonly unit: InstrumentUnit;
  readonly percentOf: PercentOf;
  readonly form: SheetForm;
  /** Half-width of even limits. */
  readonly amount: string;
  readonly lower: string;
  readonly upper: string;
  readonly reads: TermReading;
  /** Drift within plus or minus this in a year since the calibration, in the instrument's unit; empty for none. */
  readonly drift: string;
  /** Months after which the reader wants a calibration, or a look at the data sheet, again; empty for never. */
  readonly interval: string;
  readonly notes: string;
}

/** Keys of an instrument whose value is free text or a number as typed. */
export type InstrumentTextKey = TypedKey<
  InstrumentEntries,
  'kind' | 'basis' | 'unit' | 'percentOf' | 'form' | 'reads' | 'source' | 'by'
>;
