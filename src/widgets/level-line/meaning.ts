import type { TileValue } from './spec.ts';

/** What a line of levels and gains comes to. */
export type Meaning =
  | { readonly kind: 'level'; readonly levelDbm: number }
  | { readonly kind: 'gain'; readonly gainDb: number }
  /** Nothing: so many milliwatts multiplied with each other (or, below zero, divided by). */
  | { readonly kind: 'nothing'; readonly milliwatts: number; readonly sum: number };

/** How often a tile brings in a milliwatt: adding decibels multiplies what they stand for. */
const MILLIWATTS: Readonly<Record<TileValue['kind'], number>> = { level: 1, less: -1, gain: 0 };

/**
 * What a line means, by counting milliwatts: each level brings one in, each level taken away divides one out, gains have
 * none. With one left the sum is a level, with none a ratio; with any other number it is no power and no ratio.
 */
export function meaningOf(tiles: readonly TileValue[]): Meaning {
  const milliwatts = tiles.reduce((count, { kind }) => count + MILLIWATTS[kind], 0);
  // The second sum turns a negative zero into zero.
  const sum = tiles.reduce((total, { kind, value }) => total + (kind === 'less' ? -value : value), 0) + 0;
  if (milliwatts === 1) return { kind: 'level', levelDbm: sum };
  return milliwatts === 0 ? { kind: 'gain', gainDb: sum } : { kind: 'nothing', milliwatts, sum };
}

/** What the line comes to after each tile. */
export const runningMeanings = (tiles: readonly TileValue[]): readonly Meaning[] =>
  tiles.map((_, index) => meaningOf(tiles.slice(0, index + 1)));
