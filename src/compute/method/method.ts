import { componentOf } from '../component.ts';
import type { Input, Model } from '../model.ts';
import type { LevelDbm, PowerW } from '../quantity.ts';
import type { PercentOf, Statement } from '../statement.ts';

/** The space in which a model's output lives and propagates: a level in dBm, or watts. */
export type MethodSpace = 'dBm' | 'W';

/** Why a method gives no number, as a code with the numbers that decided. */
export type OutOfRange =
  /** An oscilloscope set to high impedance with no load beside it. */
  | { readonly code: 'noTermination' }
  /** Frequency over combined bandwidth, and the largest share at which the method still holds. */
  | { readonly code: 'aboveBandwidth'; readonly ratio: number; readonly largest: number }
  /** A peak detector so low that a fixed diode drop does not describe it. */
  | { readonly code: 'belowDetector'; readonly power: PowerW; readonly least: PowerW }
  /** An error stated in percent of full scale that is more than a third of the reading. */
  | { readonly code: 'fullScaleError'; readonly error: PowerW; readonly reading: PowerW }
  /** A meter below its floor or above its largest level. */
  | { readonly code: 'belowFloor' | 'aboveLargest'; readonly reading: LevelDbm; readonly limit: LevelDbm };

/** What a method makes of readings and statements: a model to be evaluated, or the reason why there is none. */
export type MethodOutcome =
  | { readonly inRange: true; readonly space: MethodSpace; readonly model: Model }
  | { readonly inRange: false; readonly reason: OutOfRange };

/** One influence on a reading: what is stated about it, in a unit that the method understands. */
export interface Influence<Unit extends string> {
  readonly id: string;
  /** Of a correction: its deviation is added to the result. */
  readonly statement: Statement;
  readonly unit: Unit;
  readonly percentOf?: PercentOf;
  /** Name of a cause shared with other influences. */
  readonly cause?: string;
  /** Fraction to which a judged statement is itself known. */
  readonly reliability?: number;
  /** -1 where the shared cause acts the other way round; 1 if not said. */
  readonly sensitivity?: 1 | -1;
}

/** Units of an influence that any power in dB can bear. */
export type RelativeUnit = 'dB' | 'percentOfPower' | 'percentOfVolts' | 'percentOfResistance';

/** An error of full scale may be up to this share of the reading (common practice). */
export const LARGEST_SHARE = 1 / 3;

/** Two numbers closer than this share of each other, or of 1 where they are smaller, are taken as equal: what differs is rounding. */
const EDGE = 1e-9;

/** Whether a value lies above a limit by more than rounding; on the limit itself a method still holds. */
export function clearlyAbove(value: number, limit: number): boolean {
  return value - limit > EDGE * Math.max(1, Math.abs(limit));
}

/** Refuses a number, with the reason. */
export const outOfRange = (reason: OutOfRange): MethodOutcome => ({ inRange: false, reason });

/** An influence already in a unit of powers, as an input in dB. */
export function relativeInput({ sensitivity: _, ...influence }: Influence<RelativeUnit>): Input {
  return componentOf(influence);
}

/** Influences in dB about an estimate, as a sum. */
export function sumInDbm(level: LevelDbm, influences: readonly Influence<RelativeUnit>[]): MethodOutcome {
  return {
    inRange: true,
    space: 'dBm',
    model: {
      kind: 'sum',
      constant: level,
      inputs: influences.map(relativeInput),
      sensitivities: influences.map((influence) => influence.sensitivity ?? 1),
    },
  };
}
