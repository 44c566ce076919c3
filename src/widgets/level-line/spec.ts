import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import { MOST_TILES } from '../../figures/tile-line.layout.ts';

/** What a tile is: a level, a level that is taken away, or a gain (negative for a loss). */
export type TileKind = 'level' | 'less' | 'gain';

/** Least and greatest number on a tile, in dBm or dB. */
export const VALUE = { min: -60, max: 60, step: 0.1, decimals: 1 } as const;

const tile = {
  kind: {
    type: 'choice',
    key: 'k',
    label: 'Kind',
    choices: { level: 'l', less: 'm', gain: 'g' },
    default: 'level',
  },
  value: { type: 'number', key: 'x', label: 'Number', kind: 'number', ...VALUE, default: 0 },
} as const;

export type TileValue = StateOf<typeof tile>;

/** The hidden transmitter through two pads: a level and two losses. */
const PREPARED: readonly TileValue[] = [
  { kind: 'level', value: 27 },
  { kind: 'gain', value: -20 },
  { kind: 'gain', value: -6 },
];

const fields = {
  tiles: { type: 'list', key: 't', label: 'Tiles', of: tile, maxLength: MOST_TILES, default: PREPARED },
} as const;

/** What an address says about the line: its tiles in order. */
export const lineSpec = { version: 1, fields } as const satisfies AddressSpec;
