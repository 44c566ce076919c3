import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import { COMBINATIONS, type Combination, type SharedPair } from '../../sheet/shared-cause.ts';
import type { ImpedanceOutput } from '../../sheet/simultaneous.ts';

/** What is worked out: something made of two values in dB, or one of the three results of GUM H.2. */
export type SharedCase = Combination | ImpedanceOutput;

const CASE_CODES: Readonly<Record<SharedCase, string>> = {
  sum: 's',
  difference: 'd',
  mean: 'm',
  R: 'r',
  X: 'x',
  Z: 'z',
};

const limit = { type: 'number', kind: 'halfWidthDb', min: 0, max: 1, step: 0.05, decimals: 2 } as const;

const fields = {
  of: { type: 'choice', key: 'of', label: 'What is made of them', choices: CASE_CODES, default: 'sum' },
  own: { ...limit, key: 'ow', label: 'Each may be wrong by itself', default: 0.2 },
  shared: { ...limit, key: 'sh', label: 'Both are wrong alike', default: 0.4 },
  counted: {
    type: 'number',
    key: 'co',
    label: 'Of the correlations is counted',
    kind: 'percent',
    min: 0,
    max: 100,
    step: 5,
    decimals: 0,
    default: 100,
  },
} as const;

/** What an address says about two values with a common cause, or about the readings of GUM H.2. */
export const sharedSpec = { version: 1, fields } as const satisfies AddressSpec;

export type SharedFields = typeof fields;
export type SharedState = StateOf<SharedFields>;

const isCombination = (of: SharedCase): of is Combination => COMBINATIONS.some((one) => one === of);

/** What a state is about: two values in dB, or one result of three readings in ohm. */
export type SharedSubject =
  | { readonly kind: 'pair'; readonly pair: SharedPair }
  | { readonly kind: 'impedance'; readonly output: ImpedanceOutput; readonly counted: number };

/** The subject of a state. */
export function subjectOf({ of, own, shared, counted }: SharedState): SharedSubject {
  return isCombination(of)
    ? { kind: 'pair', pair: { combined: of, ownDb: own, sharedDb: shared } }
    : { kind: 'impedance', output: of, counted: counted / 100 };
}

/** Names of the fields that a state can be set by. */
export const shownFields = (state: SharedState): readonly (keyof SharedFields)[] =>
  subjectOf(state).kind === 'pair' ? ['of', 'own', 'shared'] : ['of', 'counted'];
