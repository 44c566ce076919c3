import type { PowerKind } from '#compute';
import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Delivery, Keyed, Plane, ShownKeying } from '../../sheet/keyed.ts';
import type { KeyedSlip } from '../../sheet/keyed-slips.ts';

export type ShownKeyedSlip = KeyedSlip | 'none';

const KEYING: Readonly<Record<ShownKeying, string>> = {
  keyDown: 'd',
  stringOfDits: 's',
  parisWord: 'p',
  twoEqualTones: 't',
};
const KIND: Readonly<Record<PowerKind, string>> = { mean: 'm', peakEnvelope: 'p', carrier: 'c' };
const PLANE: Readonly<Record<Plane, string>> = { socket: 's', load: 'l' };
const DELIVERY: Readonly<Record<Delivery, string>> = { incident: 'i', delivered: 'd' };
const SLIPS: Readonly<Record<ShownKeyedSlip, string>> = {
  none: '0',
  meanAsPeak: 'mp',
  peakAsMean: 'pm',
  twiceTheMean: 'tm',
  forwardAtSocket: 'fs',
  peakOverMean: 'po',
};

const fields = {
  keying: { type: 'choice', key: 'k', label: 'Keyed with', choices: KEYING, default: 'parisWord' },
  peak: {
    type: 'number',
    key: 'p',
    label: 'Peak envelope power',
    kind: 'power',
    min: 0.05,
    max: 5,
    step: 0.01,
    decimals: 2,
    default: 0.5,
  },
  kind: { type: 'choice', key: 'm', label: 'Power that is meant', choices: KIND, default: 'mean' },
  plane: { type: 'choice', key: 'pl', label: 'Where', choices: PLANE, default: 'socket' },
  delivery: { type: 'choice', key: 'de', label: 'Which wave', choices: DELIVERY, default: 'incident' },
  coax: {
    type: 'number',
    key: 'co',
    label: 'Coax to the load',
    kind: 'loss',
    min: 0,
    max: 6,
    step: 0.1,
    decimals: 1,
    default: 0.5,
  },
  swr: {
    type: 'number',
    key: 'sw',
    label: 'SWR of the load',
    kind: 'number',
    min: 1,
    max: 5,
    step: 0.05,
    decimals: 2,
    default: 1.5,
  },
  volts: {
    type: 'number',
    key: 'u',
    label: 'Supply, volts',
    kind: 'volts',
    min: 1,
    max: 30,
    step: 0.1,
    decimals: 1,
    default: 12,
  },
  amperes: {
    type: 'number',
    key: 'i',
    label: 'Supply, key down',
    kind: 'amperes',
    min: 0.005,
    max: 2,
    step: 0.005,
    decimals: 3,
    default: 0.12,
  },
  slip: { type: 'choice', key: 'sl', label: 'Slip to look at', choices: SLIPS, default: 'none' },
} as const;

/** What an address says about the keyed transmitter: its keying and power, which power is meant, its coax, load and supply. */
export const keyedSpec = { version: 1, fields } as const satisfies AddressSpec;

export type KeyedFields = typeof fields;
export type KeyedState = StateOf<KeyedFields>;

/** The transmitter of a state. */
export const keyedOf = ({ peak, keying, volts, amperes, coax, swr }: KeyedState): Keyed => ({
  peakW: peak,
  keying,
  supplyV: volts,
  supplyA: amperes,
  coaxDb: coax,
  swr,
});
