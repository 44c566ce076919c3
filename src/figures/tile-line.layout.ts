import { coordinate } from './linear-scale.ts';
import type { BandFrame } from './reading-band.frame.ts';

/** Most tiles that a line has room for. */
export const MOST_TILES = 6;

/** One tile, ready to draw; words are made by the caller. */
export interface Tile {
  /** Stays with the tile wherever it goes. */
  readonly id: string;
  readonly word: string;
  readonly number: string;
  readonly unit: string;
  /** A level stands on a base; a gain points onwards. */
  readonly shape: 'level' | 'gain';
  /** What the line comes to up to here, as number and unit; nothing said where it means nothing. */
  readonly running: { readonly number: string; readonly unit: string } | undefined;
}

export interface TileLineProps {
  readonly frame: BandFrame;
  readonly tiles: readonly Tile[];
  /** Said where the line means nothing. */
  readonly nothing: string;
}

/** Measures in units of the figure's own view box. */
export interface TileMeasures {
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  readonly tileWidth: number;
  readonly tileHeight: number;
  readonly top: number;
  /** From the top of a tile: baselines of its word, number and unit. */
  readonly rows: readonly [number, number, number];
  /** Baselines of what the line comes to, number and unit. */
  readonly running: readonly [number, number];
}

const MEASURES: Readonly<Record<BandFrame, TileMeasures>> = {
  wide: {
    width: 880,
    height: 176,
    pitch: 146,
    tileWidth: 126,
    tileHeight: 84,
    top: 8,
    rows: [24, 49, 72],
    running: [140, 162],
  },
  narrow: {
    width: 300,
    height: 150,
    pitch: 50,
    tileWidth: 46,
    tileHeight: 70,
    top: 6,
    rows: [19, 40, 60],
    running: [117, 136],
  },
  stage: {
    width: 1000,
    height: 280,
    pitch: 166,
    tileWidth: 148,
    tileHeight: 132,
    top: 8,
    rows: [38, 78, 118],
    running: [218, 258],
  },
};

export const tileMeasuresOf = (frame: BandFrame): TileMeasures => MEASURES[frame];

export interface TileDrawing {
  readonly tile: Tile;
  /** Left edge and middle. */
  readonly x: number;
  readonly middle: number;
  readonly outline: string;
}

/** Coordinates of the tiles, from left to right. */
export function tileLineLayout({ frame, tiles }: Pick<TileLineProps, 'frame' | 'tiles'>): {
  readonly measures: TileMeasures;
  readonly tiles: readonly TileDrawing[];
} {
  const measures = tileMeasuresOf(frame);
  const { pitch, tileWidth } = measures;
  return {
    measures,
    tiles: tiles.map((tile, index) => {
      const x = coordinate(index * pitch + (pitch - tileWidth) / 2);
      return { tile, x, middle: coordinate(x + tileWidth / 2), outline: outlineOf(tile.shape, x, measures) };
    }),
  };
}

/** The place in the line that a coordinate falls into, from 0 to `count - 1`. @throws RangeError unless x is finite and count > 0. */
export function slotAt({ x, frame, count }: { x: number; frame: BandFrame; count: number }): number {
  if (!(Number.isFinite(x) && count > 0))
    throw new RangeError(`slotAt: x must be finite and count > 0, got ${x}, ${count}`);
  return Math.min(count - 1, Math.max(0, Math.floor(x / tileMeasuresOf(frame).pitch)));
}

/** A level is a box; a gain has a point on its right and a notch on its left, so that shape tells them apart. */
function outlineOf(shape: Tile['shape'], x: number, { tileWidth, tileHeight, top }: TileMeasures): string {
  const bottom = top + tileHeight;
  if (shape === 'level') return `M${x} ${top}h${tileWidth}V${bottom}h${-tileWidth}z`;
  const point = tileHeight / 12;
  const half = tileHeight / 2;
  return `M${x} ${top}h${tileWidth - point}l${point} ${half}l${-point} ${half}h${point - tileWidth}l${point} ${-half}z`;
}
