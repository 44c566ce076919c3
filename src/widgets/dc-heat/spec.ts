import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { HeatUse } from '../../sheet/dc-heat.ts';

const minutes = { type: 'number', kind: 'number', step: 1, decimals: 0, min: 1 } as const;
const rise = { type: 'number', kind: 'rise', step: 0.1, decimals: 1, min: 1, max: 40 } as const;

const fields = {
  waitedRf: { ...minutes, key: 'wr', label: 'Minutes waited with RF', max: 60, default: 45 },
  waitedDc: { ...minutes, key: 'wd', label: 'Minutes waited with DC', max: 60, default: 45 },
  timeConstant: { ...minutes, key: 'tc', label: 'Minutes to 63 percent of a rise', max: 20, default: 8 },
  room: {
    type: 'number',
    key: 'ro',
    label: 'Room warmer in the DC run, unnoticed',
    kind: 'kelvin',
    min: -0.9,
    max: 0.9,
    step: 0.1,
    decimals: 1,
    default: 0,
  },
  riseRf: { ...rise, key: 'rf', label: 'Rise with RF', default: 9.5 },
  riseDc: { ...rise, key: 'dc', label: 'Rise with DC', default: 9.4 },
  within: {
    type: 'number',
    key: 'th',
    label: 'A rise is known within plus or minus',
    kind: 'kelvin',
    min: 0.01,
    max: 0.5,
    step: 0.01,
    decimals: 2,
    default: 0.1,
  },
  volts: {
    type: 'number',
    key: 'vo',
    label: 'DC volts',
    kind: 'voltsDc',
    min: 0.5,
    max: 20,
    step: 0.01,
    decimals: 2,
    default: 5,
  },
  amperes: {
    type: 'number',
    key: 'am',
    label: 'DC amperes',
    kind: 'amperes',
    min: 0.01,
    max: 0.5,
    step: 0.0001,
    decimals: 4,
    default: 0.1,
  },
} as const;

/** What an address says about a load warmed by RF and by DC. */
export const heatSpec = { version: 1, fields } as const satisfies AddressSpec;

export type HeatFields = typeof fields;
export type HeatState = StateOf<HeatFields>;

/** The use of the load in a state. */
export const heatOf = (state: HeatState): HeatUse => ({
  volts: state.volts,
  amperes: state.amperes,
  riseRfK: state.riseRf,
  riseDcK: state.riseDc,
  withinK: state.within,
  timeConstant: state.timeConstant,
  waitedRf: state.waitedRf,
  waitedDc: state.waitedDc,
  roomK: state.room,
});
