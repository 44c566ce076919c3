import type { AddressSpec, StateOf } from '../../address/field-spec.ts';

/** Least and greatest level of one signal: two of the highest, wrongly added, still stand on the ruler. */
const LEVEL = { kind: 'level', min: 0, max: 20, step: 0.1, decimals: 1 } as const;

const fields = {
  first: { type: 'number', key: 'a', label: 'First signal', ...LEVEL, default: 17 },
  second: { type: 'number', key: 'b', label: 'Second signal', ...LEVEL, default: 17 },
  phase: {
    type: 'number',
    key: 'ph',
    label: 'Phase between them, in degrees',
    kind: 'number',
    min: 0,
    max: 180,
    step: 1,
    decimals: 0,
    default: 0,
  },
  claim: {
    type: 'choice',
    key: 'cl',
    label: 'Show beside it',
    choices: { none: '0', sumOfDbm: '1' },
    default: 'none',
  },
} as const;

/** What an address says about two signals in one load: their levels, their phase, and whether the wrong sum is shown. */
export const signalsSpec = { version: 1, fields } as const satisfies AddressSpec;

export type SignalsState = StateOf<typeof fields>;
