import type { Model } from '../model.ts';
import type { SeededRandom } from '../random.ts';
import type { SampleIntervals } from './sample-intervals.ts';

/** When to stop: after so many trials, or once the results have settled to so many digits of the uncertainty (JCGM 101, 7.9). */
export type StopRule =
  | { readonly kind: 'trials'; readonly trials: number }
  | {
      readonly kind: 'settled';
      readonly significantDigits: 1 | 2;
      /** 20 million if absent. */
      readonly mostTrials?: number;
      /** Part of the tolerance to settle to: 1 if absent; 1/5 where propagation is to be validated (8.2). */
      readonly part?: number;
    };

export interface SimulationRequest {
  readonly model: Model;
  readonly coverageProbability: number;
  readonly random: SeededRandom;
  readonly stop: StopRule;
  /** Values kept at once, a million if absent; of more trials, blocks are averaged. Takes 8 bytes each. */
  readonly mostKept?: number;
}

/** How far a simulation has come; `wanted` is unknown where the results themselves decide. */
export interface SimulationProgress {
  readonly trials: number;
  readonly wanted: number | undefined;
}

/** Result of a simulation; all in the unit of the model. */
export interface Simulated extends SampleIntervals {
  /** Undefined where an input has no mean. */
  readonly mean: number | undefined;
  /** Undefined where an input has no standard deviation. */
  readonly standardDeviation: number | undefined;
  readonly trials: number;
  readonly blocks: number;
  /** What it was to settle to (half a unit of the last digit, or the part asked for); undefined with a fixed number of trials. */
  readonly tolerance: number | undefined;
  /** False if the most trials allowed were not enough to settle; true for a fixed number. */
  readonly settled: boolean;
  /** Points for drawing. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}
