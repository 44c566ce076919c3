import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { PadsLine } from '../../sheet/pads-line.ts';

const swr = { type: 'number', kind: 'number', step: 0.05, decimals: 2, min: 1 } as const;
const tenths = { type: 'number', step: 0.1, decimals: 1 } as const;

const fields = {
  reading: {
    ...tenths,
    key: 're',
    label: 'The meter shows',
    kind: 'level',
    min: -40,
    max: 25,
    default: 7,
  },
  moved: {
    ...tenths,
    key: 'mo',
    label: 'A further 10 decibel pad takes off',
    kind: 'loss',
    min: 5,
    max: 15,
    default: 10,
  },
  pad: {
    type: 'number',
    key: 'pa',
    label: 'Pad (0: none)',
    kind: 'loss',
    min: 0,
    max: 30,
    step: 1,
    decimals: 0,
    default: 20,
  },
  within: {
    type: 'number',
    key: 'wi',
    label: 'The pad is known within plus or minus',
    kind: 'halfWidthDb',
    min: 0,
    max: 1.5,
    step: 0.05,
    decimals: 2,
    default: 0.5,
  },
  padSwr: { ...swr, key: 'sp', label: 'SWR of the pad, either end', max: 1.5, default: 1.15 },
  source: { ...swr, key: 'so', label: 'SWR of the transmitter, judged', max: 5, default: 1.5 },
  meter: { ...swr, key: 'sm', label: 'SWR of the meter', max: 2, default: 1.2 },
} as const;

/** What an address says about a line through a pad into a meter. */
export const padsSpec = { version: 1, fields } as const satisfies AddressSpec;

export type PadsFields = typeof fields;
export type PadsState = StateOf<PadsFields>;

/** The line of a state. */
export const padsLineOf = ({ reading, moved, pad, within, padSwr, source, meter }: PadsState): PadsLine => ({
  readingDbm: reading,
  movedDb: moved,
  padDb: pad,
  padWithinDb: within,
  padSwr,
  sourceSwr: source,
  meterSwr: meter,
});
