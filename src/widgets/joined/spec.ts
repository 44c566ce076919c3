import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Joining, MeterKind } from '../../sheet/joined.ts';

const METER_CODES: Readonly<Record<MeterKind, string>> = {
  digital: 'd',
  needle: 'n',
  alternating: 'a',
  probe1: '1',
  probe10: '10',
};
const WAVE_CODES: Readonly<Record<Joining['waveform'], string>> = { sine: 's', square: 'q', triangle: 't' };

const fields = {
  meter: { type: 'choice', key: 'me', label: 'What joins', choices: METER_CODES, default: 'needle' },
  source: {
    type: 'number',
    key: 'rs',
    label: 'The voltage comes from',
    kind: 'kiloohms',
    min: 0,
    max: 500,
    step: 1,
    decimals: 0,
    default: 50,
  },
  wave: { type: 'choice', key: 'wa', label: 'Waveform', choices: WAVE_CODES, default: 'sine' },
  kilohertz: {
    type: 'number',
    key: 'kh',
    label: 'Frequency',
    kind: 'kilohertz',
    min: 0.05,
    max: 2,
    step: 0.05,
    decimals: 2,
    default: 0.05,
  },
  megahertz: {
    type: 'number',
    key: 'mh',
    label: 'Frequency',
    kind: 'megahertz',
    min: 0,
    max: 40,
    step: 0.01,
    decimals: 2,
    default: 3.58,
  },
  resistance: {
    type: 'number',
    key: 'r',
    label: 'Source and load, each',
    kind: 'ohms',
    min: 25,
    max: 1000,
    step: 1,
    decimals: 0,
    default: 50,
  },
} as const;

/** What an address says about a meter and what it joins. */
export const joinedSpec = { version: 1, fields } as const satisfies AddressSpec;

export type JoinedFields = typeof fields;
export type JoinedState = StateOf<JoinedFields>;

/** What is joined in a state. */
export const joiningOf = ({
  meter,
  source,
  wave,
  kilohertz,
  megahertz,
  resistance,
}: JoinedState): Joining => ({
  meter,
  sourceKohm: source,
  waveform: wave,
  kilohertz,
  megahertz,
  resistanceOhm: resistance,
});

/** What each kind of meter is looked at over: the field of the axis along. */
export type Along = 'source' | 'kilohertz' | 'megahertz';

/** The field of the axis along. */
export function alongOf(meter: MeterKind): Along {
  if (meter === 'digital' || meter === 'needle') return 'source';
  return meter === 'alternating' ? 'kilohertz' : 'megahertz';
}

/** Names of the fields that a state can be set by. */
export function shownFields({ meter }: JoinedState): readonly (keyof JoinedFields)[] {
  const along = alongOf(meter);
  if (along === 'source') return ['meter', 'source'];
  return along === 'kilohertz' ? ['meter', 'wave', 'kilohertz'] : ['meter', 'megahertz', 'resistance'];
}
