import type { ReadSpec } from '../text/read/quantity.ts';
import type { Along, BorrowTextKey } from './entries.ts';

const ratio = { kind: 'halfWidthDb', min: 0, max: 20, decimals: 0 } as const;
const above = { kind: 'halfWidthDb', min: 0.001, max: 20, decimals: 3 } as const;
const volts = { kind: 'voltsDc', min: 0.001, max: 1000, decimals: 3 } as const;
const share = { kind: 'percent', min: 0, max: 50, decimals: 0 } as const;
const swr = { kind: 'number', min: 1, max: 100, decimals: 0 } as const;

/** Levels that an instrument shows, in dBm or in decibels of a scale of its own. */
export const LEVEL = { kind: 'level', min: -200, max: 100, decimals: 0 } as const satisfies ReadSpec;

/** Where readings were taken. */
export const PLACE: Readonly<Record<Along, ReadSpec>> = {
  level: LEVEL,
  frequency: { kind: 'megahertz', min: 0.001, max: 100_000, decimals: 3 },
};

/** What may be typed into the number fields. */
export const SPECS = {
  amount: above,
  factor: { kind: 'number', min: 1, max: 10, decimals: 0 },
  lenderDrift: ratio,
  resolution: ratio,
  temperature: ratio,
  mismatch: ratio,
  other: ratio,
  scatter: ratio,
  repeats: { kind: 'number', min: 2, max: 1e6, decimals: 0, whole: true },
  claimed: above,
  later: LEVEL,
  laterTemperature: ratio,
  laterMismatch: ratio,
  linearity: ratio,
  voltsIn: volts,
  voltsOut: volts,
  percent: share,
  step: { kind: 'voltsDc', min: 0, max: 1, decimals: 0 },
  load: { kind: 'ohms', min: 1, max: 1000, decimals: 0 },
  loadPercent: share,
  rated: { kind: 'power', min: 0.001, max: 1000, decimals: 3 },
  straightness: ratio,
  sourceSwr: swr,
  receiverSwr: swr,
  partSwr: swr,
} as const satisfies Readonly<Partial<Record<BorrowTextKey, ReadSpec>>>;

export type NumberKey = keyof typeof SPECS;
