import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import { clubReadings, EVENING_DBM, type Repeated, type ScatterKnown } from '../../sheet/evening.ts';

const SCATTERS: Readonly<Record<ScatterKnown, string>> = { own: 'o', pooled: 'p' };
const club = clubReadings();

const fields = {
  count: {
    type: 'number',
    key: 'n',
    label: 'Readings taken',
    kind: 'number',
    min: 1,
    max: EVENING_DBM.length,
    step: 1,
    decimals: 0,
    whole: true,
    default: club.count,
  },
  known: { type: 'choice', key: 'kn', label: 'Scatter known from', choices: SCATTERS, default: club.known },
  limits: {
    type: 'number',
    key: 'a',
    label: 'Limits that all of them share',
    kind: 'halfWidthDb',
    min: 0,
    max: 1,
    step: 0.05,
    decimals: 2,
    default: club.limitsDb,
  },
} as const;

/** What an address says about repeated readings. */
export const readingsSpec = { version: 1, fields } as const satisfies AddressSpec;

export type ReadingsFields = typeof fields;
export type ReadingsState = StateOf<ReadingsFields>;

/** What a state stands for. */
export const repeatedOf = ({ count, known, limits }: ReadingsState): Repeated => ({
  count,
  known,
  limitsDb: limits,
});
