import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { InLineUse, Wanted } from '../../sheet/in-line-meter.ts';

const WANTED: Readonly<Record<Wanted, string>> = { net: 'n', incident: 'i' };
const watts = { type: 'number', kind: 'power', step: 0.01, decimals: 2 } as const;

const fields = {
  forward: { ...watts, key: 'fw', label: 'Forward', min: 0.01, max: 20, default: 0.51 },
  reflected: { ...watts, key: 're', label: 'Reflected', min: 0, max: 20, default: 0.01 },
  scale: {
    type: 'number',
    key: 'sc',
    label: 'Full scale',
    kind: 'power',
    min: 1,
    max: 100,
    step: 1,
    decimals: 0,
    default: 1,
  },
  percent: {
    type: 'number',
    key: 'pc',
    label: 'Limits, of full scale',
    kind: 'percent',
    min: 0,
    max: 10,
    step: 0.5,
    decimals: 1,
    default: 5,
  },
  directivity: {
    type: 'number',
    key: 'di',
    label: 'Directivity',
    kind: 'loss',
    min: 10,
    max: 50,
    step: 1,
    decimals: 0,
    default: 25,
  },
  wanted: { type: 'choice', key: 'wa', label: 'Wanted', choices: WANTED, default: 'net' },
} as const;

/** What an address says about a meter in the line. */
export const inLineSpec = { version: 1, fields } as const satisfies AddressSpec;

export type InLineFields = typeof fields;
export type InLineState = StateOf<InLineFields>;

/** Watts and percent below this are none: no needle and no data sheet knows them. */
const LEAST = 1e-6;
const orNone = (value: number): number => (value < LEAST ? 0 : value);

/** The use of the meter in a state. */
export const inLineOf = ({
  forward,
  reflected,
  scale,
  percent,
  directivity,
  wanted,
}: InLineState): InLineUse => ({
  forwardW: forward,
  reflectedW: orNone(reflected),
  fullScaleW: scale,
  percentOfFullScale: orNone(percent),
  directivityDb: directivity,
  wanted,
});
