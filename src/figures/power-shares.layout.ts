import { coordinate, linearScale } from './linear-scale.ts';

/** Measures in units of the view box: at 320 pixels one unit is about one pixel. */
export const SHARES = {
  width: 300,
  axis: [1, 299],
  rowPitch: 76,
  labelY: 16,
  barY: 24,
  barHeight: 18,
  partY: 60,
} as const;

/** A whole and what becomes of it; powers in watts, words by the caller. */
export interface ShareRow {
  readonly id: string;
  readonly label: string;
  readonly first: { readonly powerW: number; readonly label: string };
  readonly second: { readonly powerW: number; readonly label: string };
}

export interface ShareDrawing {
  readonly row: ShareRow;
  readonly y: number;
  readonly first: { readonly x: number; readonly width: number };
  readonly second: { readonly x: number; readonly width: number };
}

/** Every bar is as long as its whole: what counts is how it is divided. @throws RangeError unless each whole is above zero. */
export function powerSharesLayout(rows: readonly ShareRow[]): {
  height: number;
  rows: readonly ShareDrawing[];
} {
  return {
    height: rows.length * SHARES.rowPitch,
    rows: rows.map((row, index) => {
      const { first, second } = row;
      const scale = linearScale({ domain: [0, first.powerW + second.powerW], range: SHARES.axis });
      const middle = coordinate(scale(first.powerW));
      const [left, right] = SHARES.axis;
      return {
        row,
        y: index * SHARES.rowPitch,
        first: { x: left, width: coordinate(middle - left) },
        second: { x: middle, width: coordinate(right - middle) },
      };
    }),
  };
}
