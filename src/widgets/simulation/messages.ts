import type { Interval, StopRule } from '#compute';
import type { Sheet } from '../../sheet/sheet.ts';

/** What the page asks of the worker. A sheet is plain data and travels; the model is made from it on the other side. */
export interface SimulationOrder {
  readonly sheet: Sheet;
  readonly seed: number;
  readonly stop: StopRule;
}

/** What a simulation of a sheet gives, in dBm and dB; plain numbers, the same for the same order everywhere. */
export interface SimulatedSheet {
  readonly mean: number | undefined;
  readonly standardDeviation: number | undefined;
  readonly symmetric: Interval;
  readonly trials: number;
  readonly settled: boolean;
  readonly tolerance: number | undefined;
}

/** What the worker says. */
export type SimulationNews =
  | { readonly kind: 'progress'; readonly trials: number; readonly wanted: number | undefined }
  | { readonly kind: 'done'; readonly result: SimulatedSheet }
  | { readonly kind: 'failed'; readonly message: string };
