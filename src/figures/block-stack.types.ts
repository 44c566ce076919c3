import type { Interval } from '#compute';

export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Bar {
  readonly x: number;
  readonly width: number;
}

/** One side of the comparison. Lengths of blocks in millimetres, ends in micrometres beyond the common nominal length. */
export interface BlockLane {
  readonly id: 'stack' | 'single';
  readonly label: string;
  /** Where it ends, as text. */
  readonly number: string;
  readonly detail: string;
  readonly lengthsMm: readonly number[];
  /** Where it ends, and where it would end at 20 degrees. */
  readonly end: number;
  readonly cold: number;
  /** Where it ended before the last change. */
  readonly ghost?: number | undefined;
}

/** Stack less single block, in micrometres: what is there, and what somebody claims. */
export interface BlockClaim {
  readonly label: string;
  readonly number: string;
  readonly detail: string;
  readonly there: number;
  readonly strip: Interval;
  readonly limits: Interval & { readonly open: boolean };
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** One lane, ready to draw. */
export interface LaneDrawing {
  readonly lane: BlockLane;
  readonly y: number;
  /** Bars of the blocks to scale, and where films lie between them. */
  readonly blocks: readonly Bar[];
  readonly films: readonly number[];
  /** The magnified end: what would be there at 20 degrees, and what warmth adds or cold takes away. */
  readonly solid: Bar;
  readonly warm: Bar;
  readonly grown: boolean;
  readonly endX: number;
  readonly ghostX: number | undefined;
}

/** The claim, ready to draw. */
export interface ClaimDrawing {
  readonly claim: BlockClaim;
  readonly y: number;
  readonly strip: Bar;
  readonly marks: string;
  readonly reach: string;
  readonly curve: { readonly line: string; readonly area: string } | undefined;
  readonly there: Place;
}
