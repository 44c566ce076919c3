import type { ReadSpec } from '../text/read/quantity.ts';

/** What every field has: its key in an address and its name in the reader's words. */
interface Named {
  /** One to three small letters, unique among its neighbours; `v` is the version's. */
  readonly key: string;
  /** "Second pad": beside the control, in tables and in sentences. */
  readonly label: string;
}

/** A number in the own unit of its kind (`kind`, `min`, `max`, `decimals`), moved by `step`. */
export interface NumberSpec extends Named, ReadSpec {
  readonly type: 'number';
  readonly step: number;
  readonly default: number;
}

/** A number that may be absent. */
export interface MaybeSpec extends Named, ReadSpec {
  readonly type: 'maybe';
  readonly step: number;
  readonly default: number | undefined;
}

/** One of several codes; each has a short form of small letters and digits for the address. */
export interface ChoiceSpec<Code extends string = string> extends Named {
  readonly type: 'choice';
  readonly choices: Readonly<Record<Code, string>>;
  readonly default: NoInfer<Code>;
}

/** The reader's own words, or a number as it was typed, whether it can be read or not. */
export interface TextSpec extends Named {
  readonly type: 'text';
  /** Longest text, in UTF-16 units. */
  readonly maxLength: number;
  /** Whether the text may have several lines. */
  readonly lines?: boolean;
  readonly default: string;
}

export type ScalarSpec = NumberSpec | MaybeSpec | ChoiceSpec | TextSpec;
export type Scalars = Readonly<Record<string, ScalarSpec>>;

/** A list of records, all of one make. */
export interface ListSpec<Of extends Scalars = Scalars> extends Named {
  readonly type: 'list';
  readonly of: Of;
  /** Most records, 999 at the utmost. */
  readonly maxLength: number;
  readonly default: readonly StateOf<Of>[];
}

export type FieldSpec = ScalarSpec | ListSpec;
/** Fields by the name of the state's property. */
export type Fields = Readonly<Record<string, FieldSpec>>;

type ValueOf<Spec> = Spec extends { readonly type: 'number' }
  ? number
  : Spec extends { readonly type: 'maybe' }
    ? number | undefined
    : Spec extends { readonly type: 'choice'; readonly choices: Readonly<Record<infer Code, string>> }
      ? Code
      : Spec extends { readonly type: 'text' }
        ? string
        : Spec extends { readonly type: 'list'; readonly of: infer Of }
          ? readonly { readonly [Name in keyof Of]: ValueOf<Of[Name]> }[]
          : never;

/** The state that fields describe. */
export type StateOf<Of extends Fields> = { readonly [Name in keyof Of]: ValueOf<Of[Name]> };

/** Older keys and values brought to the next version. */
export type Migration = (pairs: ReadonlyMap<string, string>) => ReadonlyMap<string, string>;

/** Everything that an address says about one widget, example or sheet. */
export interface AddressSpec<Of extends Fields = Fields> {
  /** 1 to 9: one digit, so that an address cut short is not taken for another version. Raise it when a default changes. */
  readonly version: number;
  readonly fields: Of;
  /** By old version, the step to the version after it. */
  readonly older?: Readonly<Record<number, Migration>>;
  /** Unfolds a packed address; kinds without it have none. An address that lost its version was cut short. */
  readonly unfold?: (code: string, isCut: boolean) => Unfolded;
}

/** Key of a packed address: all pairs but the version in one value. No field has it. */
export const PACKED_KEY = 'zip';

/** The text of pairs that a packed address stands for, or why it gives none. */
export type Unfolded = { readonly text: string } | { readonly problem: string };

/** The state in which nothing has been changed. */
export function defaultState<Of extends Fields>(fields: Of): StateOf<Of> {
  const entries = Object.entries(fields).map(([name, field]) => [name, field.default]);
  // The defaults are typed field by field; Object.fromEntries forgets which belongs to which.
  return Object.fromEntries(entries) as StateOf<Of>;
}
