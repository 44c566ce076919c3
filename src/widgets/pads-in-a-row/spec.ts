import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Between, MeterSays, PadsInARow } from '../../sheet/pads-in-a-row.ts';

/** How the figure lays the parts: their stated numbers end to end, or their standard uncertainties at right angles. */
export const LAYS = ['straight', 'angles'] as const;
export type Lay = (typeof LAYS)[number];

/** What somebody says of the row without looking further. */
export const CLAIMS = ['none', 'sum', 'root'] as const;
export type Claim = (typeof CLAIMS)[number];

const SAYS_CODES: Readonly<Record<MeterSays, string>> = { limits: 'l', certificate: 'c' };
const BETWEEN_CODES: Readonly<Record<Between, string>> = { rectangular: 'r', triangular: 't', arcsine: 'u' };
const CLAIM_CODES: Readonly<Record<Claim, string>> = { none: '0', sum: 's', root: 'r' };

const shared = {
  count: {
    type: 'number',
    key: 'n',
    label: 'Pads in a row',
    kind: 'number',
    min: 2,
    max: 8,
    step: 1,
    decimals: 0,
    whole: true,
    default: 3,
  },
  between: {
    type: 'choice',
    key: 'be',
    label: 'What is known between its limits',
    choices: BETWEEN_CODES,
    default: 'rectangular',
  },
  says: {
    type: 'choice',
    key: 'ms',
    label: 'What the meter’s paper states',
    choices: SAYS_CODES,
    default: 'limits',
  },
  claim: {
    type: 'choice',
    key: 'cl',
    label: 'What somebody says of it',
    choices: CLAIM_CODES,
    default: 'none',
  },
} as const;

const halfWidth = { type: 'number', kind: 'halfWidthDb', step: 0.05, decimals: 2 } as const;

/** Fields that begin with these sizes of pad and meter. */
const fieldsFrom = (padDb: number, meterDb: number) =>
  ({
    ...shared,
    pad: { ...halfWidth, key: 'pa', label: 'Limits of each pad', min: 0.05, max: 1, default: padDb },
    meter: {
      ...halfWidth,
      key: 'mt',
      label: 'The meter, behind plus-minus',
      min: 0,
      max: 2,
      default: meterDb,
    },
  }) as const;

/** What each lesson begins with: three pads and a good meter, or three good pads and a rough receiver. */
const SPECS = {
  straight: { version: 1, fields: fieldsFrom(0.5, 0.3) },
  angles: { version: 1, fields: fieldsFrom(0.3, 1) },
} as const satisfies Record<Lay, AddressSpec>;

/** What an address says about a row of pads; the two lessons differ in what they begin with. */
export const rowSpec = (lay: Lay) => SPECS[lay];

export type RowFields = ReturnType<typeof fieldsFrom>;
export type RowState = StateOf<RowFields>;

/** The row in a state. */
export const rowOf = ({ count, pad, between, meter, says }: RowState): PadsInARow => ({
  count,
  padDb: pad,
  between,
  meterDb: meter,
  meterSays: says,
});
