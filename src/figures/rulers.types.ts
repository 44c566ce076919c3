import type { Interval } from '#compute';
import type { LinearScale } from './linear-scale.ts';
import type { RulersFrame, RulersMeasures } from './rulers.frame.ts';

/** A division of a ruler. */
export interface RulerTick {
  /** In the unit that the ruler is even in. */
  readonly at: number;
  /** Its number; empty for a division that is never named. */
  readonly text: string;
  /** 0 is a landmark: the longest division, and the first to be named where there is room. */
  readonly rank: number;
}

/** One ruler: even in the unit of its domain, whatever its numbers say. */
export interface Ruler {
  readonly id: string;
  readonly title: string;
  /** What is read off it now, as text. */
  readonly reading: string;
  readonly domain: Interval;
  readonly ticks: readonly RulerTick[];
  /** The reading band on this ruler. */
  readonly strip?: Interval;
  /** A band for comparison: what it was before, or what somebody takes it for. */
  readonly ghost?: Interval;
  /** The value in the middle of what the band was stated around. */
  readonly middle?: number;
  /** Whether the upper end of the strip can be dragged. */
  readonly handle?: boolean;
}

/** A line above the rulers, on the first ruler's scale: steps end to end, or one value, with words beside it. */
export interface Lane {
  readonly id: string;
  readonly label: string;
  /** Ends of the steps, from the first start to the last end; one value alone is a point. */
  readonly stops: readonly number[];
  /** Whether the point can be dragged. */
  readonly handle?: boolean;
  /** A point that is a result and not a value that was given: drawn as a diamond. */
  readonly result?: boolean;
}

/** A line across all rulers. */
export interface Needle {
  readonly at: number;
  /** Name of the handle at its foot; none for a line that only compares, which is drawn dashed. */
  readonly handle?: string;
}

export interface RulersProps {
  readonly frame: RulersFrame;
  readonly lanes: readonly Lane[];
  readonly rulers: readonly Ruler[];
  readonly needles: readonly Needle[];
}

export interface TickDrawing extends RulerTick {
  readonly x: number;
  readonly named: boolean;
}

export interface RulerDrawing {
  readonly ruler: Ruler;
  readonly y: number;
  readonly ticks: readonly TickDrawing[];
  readonly strip?: { readonly x: number; readonly width: number };
  readonly ghost?: { readonly x: number; readonly width: number };
  readonly middleX?: number;
  /** Value on this ruler to coordinate; its `invert` turns a pointer into a value. */
  readonly scale: LinearScale;
}

export interface LaneDrawing {
  readonly lane: Lane;
  readonly y: number;
  readonly xs: readonly number[];
  readonly text: { readonly x: number; readonly anchor: 'start' | 'end' };
}

export interface RulersDrawing {
  readonly measures: RulersMeasures;
  readonly width: number;
  readonly height: number;
  readonly lanes: readonly LaneDrawing[];
  readonly rulers: readonly RulerDrawing[];
  readonly needles: readonly (Needle & { readonly x: number })[];
  /** Ends of the needles. */
  readonly needleTop: number;
  readonly needleBottom: number;
}
