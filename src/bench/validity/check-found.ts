import type { StepCheck } from '#compute';
import type { CheckKey } from '../../sheet/check-keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import type { CheckKind } from './check-kinds.ts';

/** What a check found, as numbers: decibels and minutes. */
export type CheckFinding =
  | {
      readonly check: 'step';
      readonly stepDb: number;
      readonly movedDb: number;
      readonly outcome: StepCheck['outcome'];
    }
  | {
      readonly check: 'floor';
      readonly adds: 'powers' | 'volts';
      /** Infinite where nothing at all is shown without a signal. */
      readonly marginDb: number;
      /** Infinite at or below the floor. */
      readonly noiseDb: number;
    }
  | {
      readonly check: 'reconnection';
      readonly count: number;
      readonly enough: boolean;
      readonly standardDeviationDb: number;
      readonly largestDb: number;
    }
  | {
      readonly check: 'drift' | 'steady';
      readonly minutes: number;
      readonly totalDb: number;
      /** Expanded uncertainty of the drift itself. */
      readonly expandedDb: number;
    }
  | {
      readonly check: 'harmonics';
      readonly responds: 'mean' | 'peak';
      readonly lowerDb: number;
      readonly upperDb: number;
    };

/**
 * Where a check stands: nothing typed; begun, with what is missing or wrong; or made, with what it found and whether that is within
 * what was allowed. `unclear` says neither: too few readings, or so scattered ones that a drift may hide in them.
 */
export type CheckOutcome =
  | { readonly check: CheckKind; readonly status: 'notMade' }
  | {
      readonly check: CheckKind;
      readonly status: 'begun';
      readonly missing: readonly CheckKey[];
      readonly problems: readonly EntryProblem[];
    }
  | {
      readonly check: CheckKind;
      readonly status: 'passed' | 'failed' | 'unclear';
      readonly allowedDb: number;
      readonly found: CheckFinding;
    };

/** A check that was made. */
export type CheckMade = Extract<CheckOutcome, { found: CheckFinding }>;
