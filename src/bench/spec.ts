import type { PercentOf, PowerKind, Source, StatementUnit } from '#compute';
import type { EntryForm, LinkTextKey, RuleKind, SheetTextKey, SpecificationForm } from '../sheet/entries.ts';
import type { LinkKind } from '../sheet/sheet.ts';
import type { ReadSpec } from '../text/read/quantity.ts';

/** More links than this no chain has; the button that adds one then rests. */
export const MOST_LINKS = 200;
/** More readings than this belong into a spreadsheet first. */
export const MOST_READINGS = 1000;
/** Longest title, plane or conditions, and longest name of a link, in characters. */
export const LONGEST_TEXT = 200;
export const LONGEST_LABEL = 60;
/** Above and below this the level at the transmitter is a slip of the pen, in dBm. */
export const LEVEL_LIMIT_DBM = 120;
/** What all limits of a chain may come to together, in dB: a factor of a million million to either side says nothing. */
export const WIDEST_CHAIN_DB = 120;
/** Readings of one power that lie farther apart than this, in dB, are not readings of one power. */
export const WIDEST_READINGS_DB = 10;

const LEVEL = { kind: 'level', min: -LEVEL_LIMIT_DBM, max: LEVEL_LIMIT_DBM, decimals: 0 } as const;
const POSITIVE_DB = { kind: 'halfWidthDb', min: 0, max: 20, decimals: 0 } as const;
const POSITIVE_PERCENT = { kind: 'percent', min: 0, max: 90, decimals: 0 } as const;

/** What may be typed into the sheet's number fields. */
export const SHEET_SPECS = {
  nominal: LEVEL,
  tolerance: { kind: 'halfWidthDb', min: 0.01, max: 60, decimals: 2 },
  lowest: LEVEL,
  highest: LEVEL,
  multiplier: { kind: 'number', min: 0.1, max: 5, decimals: 1 },
  required: { kind: 'percent', min: 51, max: 99.9, decimals: 1 },
  readings: LEVEL,
  scatter: { ...POSITIVE_DB, max: 10 },
  repeats: { kind: 'number', min: 2, max: 1000, decimals: 0, whole: true },
  damage: LEVEL,
} as const satisfies Partial<Record<SheetTextKey, ReadSpec>>;

/** What may be typed into a link's number fields other than those that follow its unit. */
export const LINK_SPECS = {
  loss: { kind: 'gain', min: -60, max: 120, decimals: 0 },
  factor: { kind: 'number', min: 1, max: 10, decimals: 0 },
  probability: { kind: 'percent', min: 50, max: 99.99, decimals: 2 },
  freedom: { kind: 'number', min: 1, max: 1e6, decimals: 0 },
  count: { kind: 'number', min: 2, max: 1e6, decimals: 0, whole: true },
  top: { kind: 'number', min: 0, max: 1, decimals: 0 },
  rated: { kind: 'power', min: 0.001, max: 100_000, decimals: 3 },
} as const satisfies Partial<Record<LinkTextKey, ReadSpec>>;

/** Half-widths and uncertainties of a link, by its unit. */
export const amountSpec = (unit: StatementUnit): ReadSpec => (unit === 'dB' ? POSITIVE_DB : POSITIVE_PERCENT);

/** Ends of lopsided limits, by the link's unit. */
export const endSpec = (unit: StatementUnit): ReadSpec =>
  unit === 'dB'
    ? { kind: 'gain', min: -20, max: 20, decimals: 0 }
    : { kind: 'percent', min: -90, max: 90, decimals: 0 };

/** Which texts a form of statement needs beside each other, in the order in which they are typed. */
export const FORM_KEYS: Readonly<Record<EntryForm, readonly LinkTextKey[]>> = {
  rectangular: ['amount'],
  triangular: ['amount'],
  arcsine: ['amount'],
  trapezoid: ['amount', 'top'],
  uncertainLimits: ['amount', 'doubt'],
  asymmetric: ['lower', 'upper'],
  expanded: ['amount', 'factor', 'freedom'],
  coverage: ['amount', 'probability', 'freedom'],
  standard: ['amount', 'freedom'],
  readings: ['amount', 'count'],
  displayStep: ['amount'],
  halfWithin: ['amount'],
};

/** Which texts a form of specification needs. */
export const SPECIFICATION_KEYS: Readonly<Record<SpecificationForm, readonly SheetTextKey[]>> = {
  around: ['nominal', 'tolerance'],
  between: ['lowest', 'highest'],
  atMost: ['highest'],
  atLeast: ['lowest'],
};

/** Which text a rule needs. */
export const RULE_KEYS: Readonly<Record<RuleKind, readonly SheetTextKey[]>> = {
  simple: [],
  guardBand: ['multiplier'],
  probability: ['required'],
};

export const POWER_KINDS = ['carrier', 'peakEnvelope', 'mean'] as const satisfies readonly PowerKind[];
export const SOURCES = [
  'specification',
  'certificate',
  'measured',
  'borrowed',
  'judged',
] as const satisfies readonly Source[];
export const UNITS = ['dB', 'percentOfPower', 'percentOfVolts'] as const satisfies readonly StatementUnit[];
export const PERCENT_OF = ['reading', 'trueValue'] as const satisfies readonly PercentOf[];

/** What a link of a kind begins with when it is added. */
export const STARTS: Readonly<Record<LinkKind, { readonly form: EntryForm; readonly source: Source }>> = {
  comparison: { form: 'expanded', source: 'certificate' },
  meter: { form: 'rectangular', source: 'specification' },
  mismatch: { form: 'arcsine', source: 'judged' },
  pad: { form: 'rectangular', source: 'specification' },
  cable: { form: 'rectangular', source: 'specification' },
  amplifier: { form: 'rectangular', source: 'specification' },
  other: { form: 'rectangular', source: 'judged' },
};
