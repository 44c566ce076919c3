import type { Waveform } from '#compute';
import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Trace } from '../../sheet/trace.ts';
import type { TraceSlip } from '../../sheet/trace-slips.ts';

/** The slip that is looked at, or none. */
export type ShownSlip = TraceSlip | 'none';

const WAVES: Readonly<Record<Waveform, string>> = { sine: 's', square: 'q', triangle: 't' };
const SLIPS: Readonly<Record<ShownSlip, string>> = {
  none: '0',
  wholeAsPeak: 'pp',
  wholeAsRms: 'pr',
  peakAsRms: 'vr',
  sineForAll: 'sf',
  averageMeter: 'am',
  assumedLoad: 'al',
  probe: 'pb',
  tenLog: 'tl',
};

const fields = {
  peakToPeak: {
    type: 'number',
    key: 'pp',
    label: 'Trough to crest',
    kind: 'volts',
    min: 0.1,
    max: 100,
    step: 0.1,
    decimals: 1,
    default: 14.1,
  },
  load: {
    type: 'number',
    key: 'r',
    label: 'Load',
    kind: 'ohms',
    min: 10,
    max: 200,
    step: 0.1,
    decimals: 1,
    default: 50,
  },
  wave: { type: 'choice', key: 'w', label: 'Shape', choices: WAVES, default: 'sine' },
  slip: { type: 'choice', key: 'sl', label: 'Slip to look at', choices: SLIPS, default: 'none' },
} as const;

/** What an address says about the trace: volts, load, shape, and the slip that is looked at. */
export const traceSpec = { version: 1, fields } as const satisfies AddressSpec;

export type TraceFields = typeof fields;
export type TraceState = StateOf<TraceFields>;

/** The trace of a state. */
export const traceOf = ({ peakToPeak, load, wave }: TraceState): Trace => ({
  peakToPeakV: peakToPeak,
  loadOhm: load,
  wave,
});
