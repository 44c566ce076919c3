import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Spendable, Spending } from '../../sheet/spend.ts';

const LINK_CODES: Readonly<Record<Spendable, string>> = {
  meter: 'm',
  mismatch: 'i',
  pad: 'p',
  coax: 'c',
  readings: 'r',
};

const half = { type: 'number', kind: 'halfWidthDb', min: 0, max: 1, step: 0.01, decimals: 2 } as const;

const fields = {
  link: { type: 'choice', key: 'li', label: 'Spend on', choices: LINK_CODES, default: 'pad' },
  level: {
    type: 'number',
    key: 're',
    label: 'Measured level',
    kind: 'level',
    min: 26,
    max: 28.45,
    step: 0.05,
    decimals: 2,
    default: 27.9,
  },
  meter: { ...half, key: 'me', label: 'The meter that was lent, limits', default: 0.25 },
  mismatch: { ...half, key: 'mi', label: 'Mismatch, U-shaped limits', default: 0.16 },
  pad: { ...half, key: 'pa', label: 'The pad, limits', default: 0.5 },
  coax: { ...half, key: 'co', label: 'The thin coax, limits', default: 0.05 },
  scatter: { ...half, key: 'sc', label: 'Scatter of one reading (s)', min: 0.01, max: 0.5, default: 0.15 },
  count: {
    type: 'number',
    key: 'n',
    label: 'Number of readings',
    kind: 'number',
    min: 1,
    max: 30,
    step: 1,
    decimals: 0,
    whole: true,
    default: 4,
  },
} as const;

/** What an address says about a chain that is to be made better. */
export const spendSpec = { version: 1, fields } as const satisfies AddressSpec;

export type SpendFields = typeof fields;
export type SpendState = StateOf<SpendFields>;

/** The chain of a state. */
export const spendingOf = ({ level, link: _, ...links }: SpendState): Spending => ({
  levelDbm: level,
  ...links,
});

/** The field that spending on a link moves. */
export const fieldOf = (link: Spendable): Exclude<Spendable, 'readings'> | 'count' =>
  link === 'readings' ? 'count' : link;
