import type { PercentOf, Source, StatementUnit } from '#compute';
import type { LinkKind, PowerKind } from './sheet.ts';

/** How a reader says what a link may be wrong by: the forms of a statement, limits split by their shape. */
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
] as const;
export type EntryForm = (typeof ENTRY_FORMS)[number];

/** How a reader states the specification: around a nominal level, between two limits, or with one limit. */
export const SPECIFICATION_FORMS = ['around', 'between', 'atMost', 'atLeast'] as const;
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
  readonly unit: StatementUnit;
  readonly percentOf: PercentOf;
  readonly source: Source;
  /** Rated power; empty where none is stated. */
  readonly rated: string;
  /** Cause shared with other links; empty for none. */
  readonly cause: string;
}

/** A whole sheet as it stands in the form. */
export interface SheetEntries {
  readonly title: string;
  readonly power: PowerKind;
  readonly plane: string;
  readonly conditions: string;
  readonly specification: SpecificationForm;
  readonly nominal: string;
  readonly tolerance: string;
  readonly lowest: string;
  readonly highest: string;
  readonly rule: RuleKind;
  /** Guard band as a multiple of U. */
  readonly multiplier: string;
  /** Required probability of conformity, in percent. */
  readonly required: string;
  /** One or several levels, a column. */
  readonly readings: string;
  /** Standard deviation of one reading, known from earlier; empty where none is. */
  readonly scatter: string;
  /** Number of earlier readings that the scatter comes from. */
  readonly repeats: string;
  readonly damage: string;
  readonly links: readonly LinkEntries[];
}

/** Keys of a sheet whose value is free text or a number as typed. */
export type SheetTextKey = Exclude<keyof SheetEntries, 'power' | 'specification' | 'rule' | 'links'>;
/** Keys of a link whose value is free text or a number as typed. */
export type LinkTextKey = Exclude<
  keyof LinkEntries,
  'id' | 'kind' | 'form' | 'unit' | 'percentOf' | 'source'
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
});
