import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { DetectorUse, DropFrom } from '../../sheet/detector.ts';

const DROP_CODES: Readonly<Record<DropFrom, string>> = { fixed: 'f', curve: 'c' };

const fields = {
  detected: {
    type: 'number',
    key: 'de',
    label: 'The voltmeter shows',
    kind: 'voltsDc',
    min: 0.1,
    max: 20,
    step: 0.01,
    decimals: 2,
    default: 6.53,
  },
  drop: {
    type: 'number',
    key: 'dr',
    label: 'Drop of the diode, added back',
    kind: 'voltsDc',
    min: 0,
    max: 2,
    step: 0.05,
    decimals: 2,
    default: 0.55,
  },
  known: {
    type: 'number',
    key: 'kn',
    label: 'The drop is known to',
    kind: 'volts',
    min: 0.01,
    max: 0.5,
    step: 0.01,
    decimals: 2,
    default: 0.1,
  },
  from: { type: 'choice', key: 'fr', label: 'The drop is', choices: DROP_CODES, default: 'fixed' },
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
  harmonics: {
    type: 'number',
    key: 'ha',
    label: 'Harmonics, against the carrier at most',
    kind: 'gain',
    min: -60,
    max: -10,
    step: 1,
    decimals: 0,
    default: -30,
  },
} as const;

/** What an address says about the detector: DC volts, the diode's drop and how well it is known, load and harmonics. */
export const detectorSpec = { version: 1, fields } as const satisfies AddressSpec;

export type DetectorFields = typeof fields;
export type DetectorState = StateOf<DetectorFields>;

/** The use of the detector in a state. */
export const useOf = (state: DetectorState): DetectorUse => ({
  detectedV: state.detected,
  dropV: state.drop,
  dropKnownV: state.known,
  dropFrom: state.from,
  loadOhm: state.load,
  harmonicsDbc: state.harmonics,
});
