/** Where a stroke goes, and what it is for. */
export interface Stroke {
  readonly path: string;
  readonly as: 'axis' | 'mark' | 'limit' | 'span' | 'line';
}

export interface Lettering {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly as: 'label' | 'tick';
}

/** Where a finger or pointer finds a place. */
export interface Target {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A figure with places, ready to draw in its own units: a width of 300, which a phone has. */
export interface PlaceDrawing {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly letters: readonly Lettering[];
  readonly targets: readonly Target[];
}

export const WIDTH = 300;
/** From the edge to the ends of an axis. */
export const EDGE = 24;
export const FINGER = 44;

export const round = (value: number): number => Math.round(100 * value) / 100;
export const along = ({ from, to }: { from: number; to: number }, value: number): number =>
  round(EDGE + ((WIDTH - 2 * EDGE) * (value - from)) / (to - from));
