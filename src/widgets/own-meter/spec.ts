import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { MeterUse, Treatment } from '../../sheet/own-meter.ts';

const TREATMENT_CODES: Readonly<Record<Treatment, string>> = {
  asRead: 'r',
  corrected: 'c',
  adjusted: 'a',
};

const fields = {
  reading: {
    type: 'number',
    key: 're',
    label: 'The meter shows',
    kind: 'level',
    min: -20,
    max: 10,
    step: 0.1,
    decimals: 1,
    default: -13,
  },
  months: {
    type: 'number',
    key: 'mo',
    label: 'Months since its calibration',
    kind: 'number',
    min: 0,
    max: 48,
    step: 1,
    decimals: 0,
    whole: true,
    default: 6,
  },
  treatment: {
    type: 'choice',
    key: 'tr',
    label: 'The table of corrections',
    choices: TREATMENT_CODES,
    default: 'asRead',
  },
  permissible: {
    type: 'number',
    key: 'pe',
    label: 'Maximum permissible error',
    kind: 'halfWidthDb',
    min: 0.1,
    max: 1,
    step: 0.05,
    decimals: 2,
    default: 0.4,
  },
} as const;

/** What an address says about the meter: its reading, the age of its table, what is done with it, and the limit. */
export const meterSpec = { version: 1, fields } as const satisfies AddressSpec;

export type MeterFields = typeof fields;
export type MeterState = StateOf<MeterFields>;

/** The use of the meter in a state. */
export const useOf = ({ reading, months, treatment, permissible }: MeterState): MeterUse => ({
  readingDbm: reading,
  months,
  treatment,
  permissibleDb: permissible,
});
