import type { Interval, StopRule } from '#compute';
import type { Measurement } from '../../sheet/measurement.ts';
import type { Sheet } from '../../sheet/sheet.ts';

/**
 * What is simulated: a sheet, or one point of a measurement. Both are plain data and travel; the model, shared causes and exact
 * shapes included, is made from them on the other side.
 */
export type Simulable =
  | { readonly sheet: Sheet }
  | { readonly measurement: Measurement; readonly point: string };

/** What the page asks of the worker. */
export type SimulationOrder = Simulable & { readonly seed: number; readonly stop: StopRule };

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
