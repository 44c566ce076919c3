import type { Interval } from '#compute';
import type { Tick } from './level-axis.ts';
import type { LinearScale } from './linear-scale.ts';
import type { ChartFrame } from './points-chart.frame.ts';

/** A point as the chart shows it. */
export interface ChartPoint {
  readonly id: string;
  readonly label: string;
  /** Its verdict, or why it has none, in a few words. */
  readonly word: string;
  /** Absent where there is no number. */
  readonly band?: Interval & { readonly estimate: number };
  /** Ends infinite where there is no limit. */
  readonly specification: Interval;
}

export interface ChartProps {
  readonly frame: ChartFrame;
  /** In the order in which they are drawn. */
  readonly points: readonly ChartPoint[];
}

export interface ChartRow {
  readonly id: string;
  /** Cut to its room. */
  readonly label: string;
  readonly word: string;
  readonly y: number;
  readonly strip: { readonly x: number; readonly width: number } | undefined;
  readonly estimateX: number | undefined;
  /** Hatched: where a level would lie outside the specification. */
  readonly outside: readonly { readonly x: number; readonly width: number }[];
  readonly limits: readonly number[];
}

export interface ChartDrawing {
  readonly width: number;
  readonly height: number;
  readonly axisTop: number;
  readonly axisBottom: number;
  readonly rows: readonly ChartRow[];
  readonly levels: readonly Tick[];
  readonly powers: readonly Tick[];
  readonly scale: LinearScale;
}
