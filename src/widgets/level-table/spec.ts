import type { AddressSpec, StateOf } from '../../address/field-spec.ts';

const fields = {
  resistance: {
    type: 'number',
    key: 'r',
    label: 'Resistance',
    kind: 'ohms',
    min: 1,
    max: 10_000,
    step: 1,
    decimals: 1,
    default: 50,
  },
} as const;

/** What an address says about the table of levels: across which resistance its volts are meant. */
export const levelTableSpec = { version: 1, fields } as const satisfies AddressSpec;

export type LevelTableState = StateOf<typeof fields>;
