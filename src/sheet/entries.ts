import type { Envelope, PercentOf, PowerDelivery, PowerKind, Source } from '#compute';
import type { CheckKey } from './check-keys.ts';
import type { ColumnName, LinkUnit, MethodKind, ShownPower } from './method.ts';
import type { LinkKind } from './sheet.ts';

/**
 * How a reader says what a link may be wrong by: the forms of a statement, limits split by their shape; a sum of terms as data
 * sheets have it; two standing-wave ratios, for a mismatch.
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
  'standard',
  'readings',
  'displayStep',
  'halfWithin',
  'terms',
  'swr',
] as const;
export type EntryForm = (typeof ENTRY_FORMS)[number];

/**
 * How a reader states the specification: around a nominal level, evenly or not; between two limits; with one limit; or as the
 * maximum of a licence, which has words of its own.
 */
export const SPECIFICATION_FORMS = ['around', 'uneven', 'between', 'atMost', 'atLeast', 'licence'] as const;
export type SpecificationForm = (typeof SPECIFICATION_FORMS)[number];

/** How a reader wants to judge: by the measured level alone, with a guard band, or by a probability of conformity. */
export const RULE_KINDS = ['simple', 'guardBand', 'probability'] as const;
export type RuleKind = (typeof RULE_KINDS)[number];

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
  /** Amount that a better part would have, for what it would help; empty for none. */
  readonly better: string;
  /** Left out for a what-if. */
  readonly off: boolean;
  /** As the method brought it: nobody has looked into a data sheet yet. Gone with the first change of the link. */
  readonly assumed: boolean;
}

/** One point as it stands in the form. Columns that the method does not ask for keep what was typed, too. */
export interface PointEntries extends Readonly<Record<ColumnName, string>> {
  /** Unique within the sheet; never typed. */
  readonly id: string;
  readonly label: string;
  readonly frequency: string;
  readonly specification: SpecificationForm;
  readonly nominal: string;
  readonly tolerance: string;
  /** Limits above and below the nominal level where they differ, in dB. */
  readonly above: string;
  readonly below: string;
  readonly lowest: string;
  readonly highest: string;
}

/** A change of the agreed specification or rule after the first reading. */
export interface LoggedChange {
  /** Time as a text (ISO 8601), handed in. */
  readonly at: string;
  /** What was changed: `rule`, or the id of the point whose specification it was. */
  readonly what: string;
  readonly from: string;
  readonly to: string;
  /** The reader's reason; empty until one is given, which every export then says. */
  readonly reason: string;
}

/** When specification and rule were locked, and what was changed afterwards. */
export interface AgreementLog {
  /** Empty as long as there is no reading. */
  readonly lockedAt: string;
  /** Ids of the points that have been read: what is demanded there is agreed. */
  readonly read?: readonly string[];
  readonly changes: readonly LoggedChange[];
}

/** What the method asks for once, all as typed. Texts of other methods are kept, so that trying one loses nothing. */
export interface SetupEntries {
  readonly method: MethodKind;
  /** What the meter shows of a keyed signal. */
  readonly shows: ShownPower;
  /** Resistance of the load. */
  readonly load: string;
  /** Bandwidths of oscilloscope and probe. */
  readonly scopeBandwidth: string;
  readonly probeBandwidth: string;
  readonly terminated: 'yes' | 'no';
  readonly drop: string;
  readonly curve: 'yes' | 'no';
  readonly forwardScale: string;
  readonly forwardPercent: string;
  readonly reflectedScale: string;
  readonly reflectedPercent: string;
  /** Levels between which the meter is stated to hold. */
  readonly floor: string;
  readonly largest: string;
  /** Level that the instrument's input stands, its largest peak voltage, the diode's largest reverse voltage. */
  readonly damage: string;
  readonly largestPeak: string;
  readonly largestReverse: string;
}

/** Who, when, with what, in the reader's own words. */
export interface RecordEntries {
  readonly by: string;
  readonly date: string;
  readonly instruments: string;
  readonly certificates: string;
  readonly supply: string;
  readonly temperature: string;
  readonly remarks: string;
}

/** A whole sheet as it stands in the form. */
export interface SheetEntries extends SetupEntries, RecordEntries {
  readonly title: string;
  readonly power: PowerKind;
  readonly delivery: PowerDelivery;
  readonly keying: 'keyDown' | Envelope;
  readonly plane: string;
  readonly conditions: string;
  readonly rule: RuleKind;
  /** Guard band as a multiple of U. */
  readonly multiplier: string;
  /** Required probability of conformity, in percent. */
  readonly required: string;
  /** Standard deviation of one reading, known from earlier; empty where none is. */
  readonly scatter: string;
  /** Number of earlier readings that the scatter comes from. */
  readonly repeats: string;
  /** At least one. */
  readonly points: readonly PointEntries[];
  readonly links: readonly LinkEntries[];
  readonly log: AgreementLog;
  /** Readings of the validity checks, as typed. */
  readonly checks: Readonly<Record<CheckKey, string>>;
}

/** Names of the keys of `Of` whose value is free text or a number as typed, chosen ones left out. */
type TypedKey<Of, Chosen extends keyof Of> = Exclude<keyof Of, Chosen> & string;

/** Keys of a sheet whose value is free text or a number as typed. */
export type SheetTextKey = TypedKey<
  SheetEntries,
  | 'power'
  | 'delivery'
  | 'keying'
  | 'method'
  | 'shows'
  | 'terminated'
  | 'curve'
  | 'rule'
  | 'points'
  | 'links'
  | 'log'
  | 'checks'
>;
/** Keys of a point whose value is free text or a number as typed. */
export type PointTextKey = TypedKey<PointEntries, 'id' | 'specification'>;
/** Keys of a link whose value is free text or a number as typed. */
export type LinkTextKey = TypedKey<
  LinkEntries,
  'id' | 'kind' | 'form' | 'unit' | 'percentOf' | 'source' | 'direction' | 'off' | 'assumed'
>;

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
  ofReading: '',
  ofScale: '',
  fullScale: '',
  digits: '',
  step: '',
  floor: '',
  perKelvin: '',
  coldest: '18',
  warmest: '28',
  temperature: '',
  perYear: '',
  years: '',
  better: '',
  off: false,
  assumed: false,
});

/** A point that nobody has said anything about yet. */
export const blankPoint = (id: string): PointEntries => ({
  id,
  label: '',
  frequency: '',
  specification: 'around',
  nominal: '',
  tolerance: '',
  above: '',
  below: '',
  lowest: '',
  highest: '',
  readings: '',
  reflected: '',
  riseDc: '',
  volts: '',
  amperes: '',
});
