import type { Envelope, PowerDelivery, PowerKind } from '#compute';
import type { CheckKey } from './check-keys.ts';
import type { LinkEntries } from './link-entries.ts';
import type { MethodKind, ShownPower } from './method.ts';
import type { PointEntries } from './point-entries.ts';
import type { TypedKey } from './typed-key.ts';

export type { EntryForm, LinkEntries, LinkTextKey } from './link-entries.ts';
export { blankLink, ENTRY_FORMS, INSTRUMENT_PARTS, TABLED_BY } from './link-entries.ts';
export type { PointEntries, PointTextKey, SpecificationForm } from './point-entries.ts';
export { blankPoint, SPECIFICATION_FORMS } from './point-entries.ts';

/** How a reader wants to judge: by the measured level alone, with a guard band, or by a probability of conformity. */
export const RULE_KINDS = ['simple', 'guardBand', 'probability'] as const;
export type RuleKind = (typeof RULE_KINDS)[number];

/** What a logged change says where it was the rule that was changed. */
export const RULE = 'rule';

/** A change of the agreed specification or rule after the first reading. */
export interface LoggedChange {
  /** Time as a text (ISO 8601), handed in. */
  readonly at: string;
  /** What was changed: `RULE`, or the id of the point whose specification it was. */
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
