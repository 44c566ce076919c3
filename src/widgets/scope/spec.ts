import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { GainOf, ScopeEnd, ScopeUse } from '../../sheet/scope.ts';

const END_CODES: Readonly<Record<ScopeEnd, string>> = { load: 'l', open: 'o', twoLoads: 't' };
const GAIN_CODES: Readonly<Record<GainOf, string>> = { reading: 'r', fullScale: 'f' };

const megahertz = (
  key: string,
  label: string,
  of: { min: number; step: number; decimals: number; default: number },
) => ({ type: 'number', key, label, kind: 'megahertz', max: 500, ...of }) as const;

const fields = {
  peakToPeak: {
    type: 'number',
    key: 'pp',
    label: 'Trace, trough to crest',
    kind: 'volts',
    min: 0.1,
    max: 100,
    step: 0.1,
    decimals: 1,
    default: 14.2,
  },
  load: {
    type: 'number',
    key: 'r',
    label: 'Load, as measured',
    kind: 'ohms',
    min: 10,
    max: 200,
    step: 0.1,
    decimals: 1,
    default: 49.8,
  },
  end: { type: 'choice', key: 'e', label: 'The line ends in', choices: END_CODES, default: 'load' },
  frequency: megahertz('f', 'Frequency', { min: 0.1, step: 0.01, decimals: 2, default: 3.58 }),
  scope: megahertz('b', 'Bandwidth of the oscilloscope', { min: 5, step: 1, decimals: 0, default: 100 }),
  probe: megahertz('p', 'Bandwidth of the probe', { min: 2, step: 1, decimals: 0, default: 150 }),
  gain: {
    type: 'number',
    key: 'g',
    label: 'Limits of the gain',
    kind: 'percent',
    min: 0.5,
    max: 10,
    step: 0.5,
    decimals: 1,
    default: 3,
  },
  gainOf: { type: 'choice', key: 'o', label: 'They are of', choices: GAIN_CODES, default: 'reading' },
  screen: {
    type: 'number',
    key: 's',
    label: 'Screen, bottom to top',
    kind: 'volts',
    min: 0.1,
    max: 200,
    step: 0.1,
    decimals: 1,
    default: 16,
  },
} as const;

/** What an address says about the oscilloscope: trace, load and how the line ends, frequency and bandwidths, gain and screen. */
export const scopeSpec = { version: 1, fields } as const satisfies AddressSpec;

export type ScopeFields = typeof fields;
export type ScopeState = StateOf<ScopeFields>;

const HZ_PER_MHZ = 1e6;

/** The use of the oscilloscope in a state. */
export const useOf = (state: ScopeState): ScopeUse => ({
  peakToPeakV: state.peakToPeak,
  loadOhm: state.load,
  frequencyHz: state.frequency * HZ_PER_MHZ,
  scopeHz: state.scope * HZ_PER_MHZ,
  probeHz: state.probe * HZ_PER_MHZ,
  gainPercent: state.gain,
  gainOf: state.gainOf,
  screenV: state.screen,
  end: state.end,
});
