import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Borrowed } from '../../sheet/borrowed.ts';

/** What was calibrated: the club's meter by a lent one, or the thermometer of the GUM's example. */
export type Item = 'meter' | 'thermometer';

const ITEM_CODES: Readonly<Record<Item, string>> = { meter: 'm', thermometer: 't' };
const SHARED_CODES: Readonly<Record<Borrowed['shared'], string>> = { whole: 'w', averaged: 'a' };

const fields = {
  item: { type: 'choice', key: 'it', label: 'Calibrated', choices: ITEM_CODES, default: 'meter' },
  reading: {
    type: 'number',
    key: 're',
    label: 'Our meter shows, later',
    kind: 'level',
    min: -15,
    max: 20,
    step: 0.1,
    decimals: 1,
    default: 5.2,
  },
  lender: {
    type: 'number',
    key: 'le',
    label: 'Limits of the lent meter',
    kind: 'halfWidthDb',
    min: 0,
    max: 1,
    step: 0.01,
    decimals: 2,
    default: 0.2,
  },
  months: {
    type: 'number',
    key: 'mo',
    label: 'Months since the comparison',
    kind: 'number',
    min: 0,
    max: 48,
    step: 1,
    decimals: 0,
    whole: true,
    default: 0,
  },
  shared: {
    type: 'choice',
    key: 'sh',
    label: 'The lender’s part is',
    choices: SHARED_CODES,
    default: 'whole',
  },
  temperature: {
    type: 'number',
    key: 'te',
    label: 'Temperature shown',
    kind: 'celsius',
    min: 20,
    max: 32,
    step: 0.1,
    decimals: 1,
    default: 30,
  },
  origin: {
    type: 'number',
    key: 'or',
    label: 'The line’s height is taken at',
    kind: 'celsius',
    min: 15,
    max: 30,
    step: 0.0001,
    decimals: 4,
    default: 20,
  },
} as const;

/** What an address says about a line of corrections. */
export const borrowedSpec = { version: 1, fields } as const satisfies AddressSpec;

export type BorrowedFields = typeof fields;
export type BorrowedState = StateOf<BorrowedFields>;

/** The corrected reading of a state. */
export const borrowedOf = ({ reading, lender, months, shared }: BorrowedState): Borrowed => ({
  readingDbm: reading,
  lender,
  months,
  shared,
});

/** The field that the knob in the figure moves. */
export const pulledField = (item: Item): 'reading' | 'temperature' =>
  item === 'meter' ? 'reading' : 'temperature';

/** Names of the fields that a state shows. */
export const shownFields = (item: Item): readonly (keyof BorrowedFields)[] =>
  item === 'meter' ? ['reading', 'lender', 'months', 'shared', 'item'] : ['temperature', 'origin', 'item'];
