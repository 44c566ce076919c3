import type { Interval } from '#compute';
import type { Tick } from './level-axis.ts';
import type { LinearScale } from './linear-scale.ts';
import type { BandFrame, BandMeasures } from './reading-band.frame.ts';

/** One rung of the chain, ready to draw. Positions are levels in dBm; words are made by the caller. */
export interface BandRow {
  readonly id: string;
  readonly label: string;
  /** What this rung adds, in words; a line end in it stands for one in the figure. */
  readonly detail: string;
  /** How wide the band is from here on, as text. */
  readonly number: string;
  /** The filled strip: expanded uncertainty. Absent where the rung is exact. */
  readonly strip?: Interval;
  /** End marks; open where a part above has no limit. */
  readonly limits?: Interval & { readonly open: boolean };
  readonly curve?: readonly { readonly x: number; readonly density: number }[];
  /** The strip before the last change. */
  readonly ghost?: Interval;
  readonly dominant: boolean;
  /** Whether the end of the strip can be dragged. */
  readonly handle: boolean;
}

export interface BandProps {
  readonly frame: BandFrame;
  readonly rows: readonly BandRow[];
  readonly centreDbm: number;
  /** Half of the axis in dB: fixed while a handle moves, so that the ground does not shift under the pointer. */
  readonly halfSpanDb: number;
  /** Specification limits; an infinite end is not drawn. */
  readonly specification?: Interval;
}

export interface Bar {
  readonly x: number;
  readonly width: number;
}

export interface Magnifier extends Bar {
  readonly factor: number;
  /** Ends of the true strip, from which the lines fan out. */
  readonly from: Bar;
}

export interface RowDrawing {
  readonly row: BandRow;
  readonly y: number;
  readonly bar?: Bar;
  readonly ghost?: Bar;
  readonly marks?: { readonly lower: number; readonly upper: number; readonly open: boolean };
  readonly magnifier?: Magnifier;
  readonly curve?: { readonly line: string; readonly area: string };
  readonly handleX?: number;
}

export interface BandDrawing {
  readonly measures: BandMeasures;
  readonly width: number;
  readonly height: number;
  readonly axisTop: number;
  readonly axisBottom: number;
  readonly centreX: number;
  readonly rows: readonly RowDrawing[];
  readonly levels: readonly Tick[];
  /** Powers in watts. */
  readonly powers: readonly Tick[];
  readonly specification: { readonly lower?: number; readonly upper?: number };
  /** Level to coordinate; its `invert` turns a pointer into a level. */
  readonly scale: LinearScale;
}
