import type { PercentOf, Source } from '#compute';
import type { LinkUnit } from './method.ts';
import type { LinkKind } from './sheet.ts';
import type { TypedKey } from './typed-key.ts';

/**
 * How a reader says what a link may be wrong by: the forms of a statement, limits split by their shape; a certificate's table of
 * corrections; a sum of terms as data sheets have it; two standing-wave ratios, for a mismatch.
 */
export const ENTRY_FORMS = [
  'rectangular',
  'triangular',
  'arcsine',
  'trapezoid',
  'uncertainLimits',
  'asymmetric',
  'expanded',
  'coverage',
  'corrections',
  'standard',
  'readings',
  'displayStep',
  'halfWithin',
  'terms',
  'swr',
] as const;
export type EntryForm = (typeof ENTRY_FORMS)[number];

/** What a table of corrections goes by. */
export const TABLED_BY = ['frequency', 'level'] as const;
export type TabledBy = (typeof TABLED_BY)[number];

/** What of an instrument a link stands for: its statement, or its drift since the calibration. */
export const INSTRUMENT_PARTS = ['statement', 'drift'] as const;
export type InstrumentPart = (typeof INSTRUMENT_PARTS)[number];

/**
 * One link as it stands in the form: everything typed is kept as text, letter by letter, whether it can be used or not. Texts
 * that the chosen form does not need are kept too, so that trying another form loses nothing.
 */
export interface LinkEntries {
  /** Unique within the sheet; never typed. */
  readonly id: string;
  readonly label: string;
  readonly kind: LinkKind;
  readonly loss: string;
  readonly form: EntryForm;
  /** Half-width, U, u, s or step, as the form says. */
  readonly amount: string;
  readonly lower: string;
  readonly upper: string;
  /** Coverage factor k. */
  readonly factor: string;
  /** Coverage probability in percent. */
  readonly probability: string;
  /** Degrees of freedom; empty where the uncertainty is taken as known. */
  readonly freedom: string;
  /** Number of readings. */
  readonly count: string;
  /** Top of a trapezoid as a share of its base. */
  readonly top: string;
  /** What the limits themselves are known to. */
  readonly doubt: string;
  readonly unit: LinkUnit;
  readonly percentOf: PercentOf;
  readonly source: Source;
  /** Rated power; empty where none is stated. */
  readonly rated: string;
  /** Cause shared with other links; empty for none. */
  readonly cause: string;
  /** Whether the shared cause moves this link the same way as the others or against them. */
  readonly direction: 'with' | 'against';
  /** To what percentage a judged statement is itself known; empty where it is taken as known. */
  readonly reliability: string;
  /** Standing-wave ratios of source and load, for a mismatch. */
  readonly sourceSwr: string;
  readonly loadSwr: string;
  /** Terms of a limit: percent of reading, percent of full scale and full scale, digits and the step of one, a floor. */
  readonly ofReading: string;
  readonly ofScale: string;
  readonly fullScale: string;
  readonly digits: string;
  readonly step: string;
  readonly floor: string;
  /** Percent of reading once per kelvin outside a range of temperatures, and the temperature of the day. */
  readonly perKelvin: string;
  readonly coldest: string;
  readonly warmest: string;
  readonly temperature: string;
  /** Percent of reading once per year since calibration, and the years. */
  readonly perYear: string;
  readonly years: string;
  /** Corrections line by line: frequency in MHz or level in dBm of the reading, what to add, U. */
  readonly table: string;
  readonly by: TabledBy;
  /** Id of the instrument that this was taken from, and which part of it this is; empty where it was typed here. */
  readonly instrument: string;
  readonly part: InstrumentPart;
  /** Day on which that instrument was calibrated, as 2026-05-09, and months after which it should be again. */
  readonly calibrated: string;
  readonly interval: string;
  /** Amount that a better part would have, for what it would help; empty for none. */
  readonly better: string;
  /** Left out for a what-if. */
  readonly off: boolean;
  /** As the method brought it: nobody has looked into a data sheet yet. Gone with the first change of the link. */
  readonly assumed: boolean;
}

/** Keys of a link whose value is free text or a number as typed. */
export type LinkTextKey = TypedKey<
  LinkEntries,
  | 'id'
  | 'kind'
  | 'form'
  | 'unit'
  | 'percentOf'
  | 'source'
  | 'direction'
  | 'by'
  | 'instrument'
  | 'part'
  | 'off'
  | 'assumed'
>;

/** No table of corrections, and taken from no instrument. */
const noInstrument = () => ({
  table: '',
  by: 'frequency' as const,
  instrument: '',
  part: 'statement' as const,
  calibrated: '',
  interval: '',
});

/** Terms of a limit that nobody has stated; that limits hold from 18 to 28 degrees Celsius is common practice. */
export const BLANK_TERMS = {
  ofReading: '',
  ofScale: '',
  fullScale: '',
  digits: '',
  step: '',
  floor: '',
  perKelvin: '',
  coldest: '18',
  warmest: '28',
  perYear: '',
} as const;

/** A link that nobody has said anything about yet. */
export const blankLink = (id: string): LinkEntries => ({
  id,
  label: '',
  kind: 'other',
  loss: '0',
  form: 'rectangular',
  amount: '',
  lower: '',
  upper: '',
  factor: '2',
  probability: '95',
  freedom: '',
  count: '',
  top: '0.5',
  doubt: '',
  unit: 'dB',
  percentOf: 'reading',
  source: 'specification',
  rated: '',
  cause: '',
  direction: 'with',
  reliability: '',
  sourceSwr: '',
  loadSwr: '',
  ...BLANK_TERMS,
  temperature: '',
  years: '',
  ...noInstrument(),
  better: '',
  off: false,
  assumed: false,
});
