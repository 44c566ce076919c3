import type { SetupEntries, SheetTextKey } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { LEVEL } from './spec.ts';

const BANDWIDTH = { kind: 'megahertz', min: 0.001, max: 100_000, decimals: 3 } as const;
const SCALE = { kind: 'power', min: 1e-6, max: 100_000, decimals: 6 } as const;
const OF_SCALE = { kind: 'percent', min: 0, max: 50, decimals: 0 } as const;
const STOOD = { kind: 'volts', min: 0.001, max: 100_000, decimals: 3 } as const;

/** What may be typed into the number fields that a method asks for once. */
export const SETUP_SPECS = {
  load: { kind: 'ohms', min: 1, max: 100_000, decimals: 0 },
  scopeBandwidth: BANDWIDTH,
  probeBandwidth: BANDWIDTH,
  drop: { kind: 'voltsDc', min: 0, max: 100, decimals: 0 },
  forwardScale: SCALE,
  forwardPercent: OF_SCALE,
  reflectedScale: SCALE,
  reflectedPercent: OF_SCALE,
  floor: LEVEL,
  largest: LEVEL,
  largestPeak: STOOD,
  largestReverse: STOOD,
} as const satisfies Partial<Record<SheetTextKey, ReadSpec>>;

export type SetupSpecKey = keyof typeof SETUP_SPECS;

export type SetupKey = Exclude<keyof SetupEntries, 'method'>;

/** What each method asks for: in sight, and folded away. */
export const SETUP_FIELDS: Readonly<Record<MethodKind, readonly [readonly SetupKey[], readonly SetupKey[]]>> =
  {
    padsIntoMeter: [['damage'], ['shows', 'floor', 'largest']],
    oscilloscope: [['load', 'terminated', 'scopeBandwidth', 'probeBandwidth', 'largestPeak'], []],
    peakDetector: [['load', 'drop', 'largestReverse'], ['curve']],
    inLine: [
      ['forwardScale', 'forwardPercent', 'reflectedScale', 'reflectedPercent'],
      ['shows', 'damage'],
    ],
    dcSubstitution: [['load'], []],
  };
