import type { CheckKey } from '../../sheet/check-keys.ts';
import { type MethodKind, type MethodSetup, shownBy } from '../../sheet/method.ts';

/**
 * Checks of a measurement's validity: one more known pad, the reading without signal, connectors off and on again, drift with
 * warm-up or key-down time, waiting until a temperature is steady, harmonics.
 */
const CHECK_KINDS = ['step', 'floor', 'reconnection', 'drift', 'steady', 'harmonics'] as const;
export type CheckKind = (typeof CHECK_KINDS)[number];

/**
 * Which checks are offered for a method; why, `checkStrings.why` says for each. An in-line meter cannot be shown another pad of the
 * same power, and what a warm load shows of drift is its own.
 */
export const CHECKS_OF = {
  padsIntoMeter: ['step', 'floor', 'reconnection', 'drift', 'harmonics'],
  oscilloscope: ['step', 'floor', 'reconnection', 'drift', 'harmonics'],
  peakDetector: ['step', 'floor', 'reconnection', 'drift', 'harmonics'],
  inLine: ['floor', 'reconnection', 'drift', 'harmonics'],
  dcSubstitution: ['steady', 'floor', 'reconnection', 'harmonics'],
} as const satisfies Readonly<Record<MethodKind, readonly CheckKind[]>>;

/** What is typed for a check, in the order in which it is read. A steady temperature is told by the same columns as a drift. */
export const CHECK_FIELDS: Readonly<Record<CheckKind, readonly CheckKey[]>> = {
  step: ['stepWithout', 'stepWith', 'stepPad', 'stepAllowed'],
  floor: ['off', 'offAllowed'],
  reconnection: ['reconnections', 'reconnectionsAllowed'],
  drift: ['warmUpMinutes', 'warmUpLevels', 'warmUpAllowed'],
  steady: ['warmUpMinutes', 'warmUpLevels', 'warmUpAllowed'],
  harmonics: ['secondHarmonic', 'thirdHarmonic', 'harmonicsAllowed'],
};

/** What stands there without a signal adds as power (noise; heat; watts of a scale) or as volts (hum, an offset). */
export const FLOOR_ADDS: Readonly<Record<MethodKind, 'powers' | 'volts'>> = {
  padsIntoMeter: 'powers',
  oscilloscope: 'volts',
  peakDetector: 'volts',
  inLine: 'powers',
  dcSubstitution: 'powers',
};

/**
 * Whether an instrument is moved by the power of harmonics or by their volts at the crest. The detectors of an in-line meter are
 * diodes, whatever its scale says (common practice).
 */
export function respondsTo(setup: MethodSetup): 'mean' | 'peak' {
  if (setup.method === 'inLine') return 'peak';
  return shownBy(setup) === 'mean' ? 'mean' : 'peak';
}
