import type { AddressSpec, StateOf } from '../../address/field-spec.ts';

const READING = { kind: 'level', min: 0, max: 20, step: 0.1, decimals: 1 } as const;

const fields = {
  first: { type: 'number', key: 'a', label: 'First reading', ...READING, default: 10 },
  second: { type: 'number', key: 'b', label: 'Second reading', ...READING, default: 10 },
  third: { type: 'number', key: 'c', label: 'Third reading', ...READING, default: 13 },
} as const;

/** What an address says about three readings and their two means. */
export const meansSpec = { version: 1, fields } as const satisfies AddressSpec;

export type MeansState = StateOf<typeof fields>;
