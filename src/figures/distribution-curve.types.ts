import type { Interval } from '#compute';
import type { CurveFrame } from './distribution-curve.frame.ts';
import type { Tick } from './level-axis.ts';
import type { LinearScale } from './linear-scale.ts';

export interface CurveProps {
  readonly frame: CurveFrame;
  /** Points of the density, x ascending, in dBm. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
  /** The interval that decided, and the estimate in it. */
  readonly interval: Interval;
  readonly estimate: number;
  /** Ends infinite where there is no limit. */
  readonly specification: Interval;
  /** Words of the two kinds of areas. */
  readonly names: { readonly inside: string; readonly outside: string };
}

/** An area under the curve on one side of the limits, or between them. */
export interface CurveArea {
  readonly inside: boolean;
  readonly path: string;
  /** Middle of the zone on the axis, where its word stands if it has room. */
  readonly wordX: number;
  readonly named: boolean;
}

/** A limit: drawn as a line where `x` is on the axis, else told at the end of the axis that it lies beyond. */
export interface CurveLimit {
  readonly value: number;
  readonly x: number;
  readonly beyond: 'left' | 'right' | undefined;
  /** Whether its number stands a line lower, clear of the other's. */
  readonly lowered: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface CurveDrawing {
  readonly width: number;
  readonly height: number;
  readonly line: string;
  readonly areas: readonly CurveArea[];
  readonly limits: readonly CurveLimit[];
  readonly strip: { readonly x: number; readonly width: number };
  readonly estimateX: number;
  readonly ticks: readonly Tick[];
  readonly scale: LinearScale;
}
