import type { PercentOf, PowerDelivery, PowerKind, Source } from '#compute';
import type { EntryForm, RuleKind, SheetTextKey } from '../../sheet/entries.ts';
import type { LinkKind } from '../../sheet/sheet.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';

/** More links than this no chain has; the button that adds one then rests. */
export const MOST_LINKS = 200;
/** More points than this nobody measures by hand. */
export const MOST_POINTS = 50;
/** More readings than this in one column belong into a spreadsheet first. */
export const MOST_READINGS = 20_000;
/** Longest title, plane, conditions or note of the record, and longest name of a link or point, in characters. */
export const LONGEST_TEXT = 200;
export const LONGEST_LABEL = 60;
/** Longest note of several lines, and longest table of corrections, in characters: an address carries no more. */
export const LONGEST_NOTE = 1000;
export const LONGEST_TABLE = 1000;
/** Above and below this the level at the transmitter is a slip of the pen, in dBm. */
export const LEVEL_LIMIT_DBM = 120;
/** What all limits of a chain may come to together, in dB: a factor of a million million to either side says nothing. */
export const WIDEST_CHAIN_DB = 120;
/** Readings of one power that lie farther apart than this, in dB, are not readings of one power. */
export const WIDEST_READINGS_DB = 10;

/** Frequencies are kept in hertz and typed in megahertz. */
export const HZ_PER_MHZ = 1e6;
/** Nobody states a frequency in megahertz to more decimals than this: that is one hertz. */
export const FREQUENCY_DECIMALS = 6;

/** A level that somebody may type. */
export const LEVEL = { kind: 'level', min: -LEVEL_LIMIT_DBM, max: LEVEL_LIMIT_DBM, decimals: 0 } as const;

/** What may be typed into the number fields that every method has. */
export const SHEET_SPECS = {
  multiplier: { kind: 'number', min: 0.1, max: 5, decimals: 1 },
  required: { kind: 'percent', min: 51, max: 99.9, decimals: 1 },
  scatter: { kind: 'halfWidthDb', min: 0, max: 10, decimals: 0 },
  repeats: { kind: 'number', min: 2, max: 1000, decimals: 0, whole: true },
  damage: LEVEL,
} as const satisfies Partial<Record<SheetTextKey, ReadSpec>>;

/** Which text a rule needs. */
export const RULE_KEYS: Readonly<Record<RuleKind, readonly ('multiplier' | 'required')[]>> = {
  simple: [],
  guardBand: ['multiplier'],
  probability: ['required'],
};

export const POWER_KINDS = ['carrier', 'peakEnvelope', 'mean'] as const satisfies readonly PowerKind[];
export const DELIVERIES = [
  'intoIdeal',
  'delivered',
  'net',
  'incident',
] as const satisfies readonly PowerDelivery[];
export const KEYINGS = ['keyDown', 'steadyCarrier', 'stringOfDits', 'parisWord', 'twoEqualTones'] as const;
export const SOURCES = [
  'specification',
  'certificate',
  'measured',
  'borrowed',
  'judged',
] as const satisfies readonly Source[];
export const PERCENT_OF = ['reading', 'trueValue'] as const satisfies readonly PercentOf[];

/** What a link of a kind begins with when it is added. */
export const STARTS: Readonly<Record<LinkKind, { readonly form: EntryForm; readonly source: Source }>> = {
  comparison: { form: 'expanded', source: 'certificate' },
  meter: { form: 'rectangular', source: 'specification' },
  mismatch: { form: 'arcsine', source: 'judged' },
  pad: { form: 'rectangular', source: 'specification' },
  cable: { form: 'rectangular', source: 'specification' },
  amplifier: { form: 'rectangular', source: 'specification' },
  transmitter: { form: 'rectangular', source: 'judged' },
  other: { form: 'rectangular', source: 'judged' },
};
