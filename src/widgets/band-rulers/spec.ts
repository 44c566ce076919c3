import type { AddressSpec, StateOf } from '../../address/field-spec.ts';

const fields = {
  level: {
    type: 'number',
    key: 'l',
    label: 'Level in the middle',
    kind: 'level',
    min: 0,
    max: 30,
    step: 0.1,
    decimals: 1,
    default: 27,
  },
  even: {
    type: 'choice',
    key: 'ev',
    label: 'The band is even in',
    choices: { decibels: 'd', watts: 'w', volts: 'v' },
    default: 'decibels',
  },
  /** Used where the band is even in decibels. Up to 3 dB: more would claim a negative power where somebody mirrors it. */
  halfDb: {
    type: 'number',
    key: 'd',
    label: 'Half of the band',
    kind: 'halfWidthDb',
    min: 0,
    max: 3,
    step: 0.05,
    decimals: 2,
    default: 1,
  },
  /** Used where it is even in watts or volts: percent of the middle. */
  halfPercent: {
    type: 'number',
    key: 'p',
    label: 'Half of the band, in percent',
    kind: 'percent',
    min: 0,
    max: 40,
    step: 0.1,
    decimals: 1,
    default: 10,
  },
  claim: {
    type: 'choice',
    key: 'cl',
    label: 'Show beside it',
    choices: { none: '0', samePercent: '1', tenPercent: '10', squared: 's', mirrored: 'm' },
    default: 'none',
  },
} as const;

/** What an address says about one band on three rulers: its middle, in which unit it is even, how wide it is, and a mistake. */
export const bandRulersSpec = { version: 1, fields } as const satisfies AddressSpec;

export type BandRulersFields = typeof fields;
export type BandRulersState = StateOf<BandRulersFields>;
