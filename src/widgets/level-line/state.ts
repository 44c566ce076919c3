import { MOST_TILES } from '../../figures/tile-line.layout.ts';
import { lineSpec, type TileKind, type TileValue, VALUE } from './spec.ts';

/** A tile with a name that stays with it wherever it goes. */
export interface PlacedTile extends TileValue {
  readonly id: string;
}

export interface LineState {
  readonly tiles: readonly PlacedTile[];
  /** While a tile is held: the line to return to on cancel. */
  readonly held: readonly PlacedTile[] | undefined;
  readonly touched: boolean;
}

export type LineAction =
  | { readonly type: 'value'; readonly id: string; readonly value: number }
  | { readonly type: 'kind'; readonly id: string; readonly kind: TileKind }
  /** Takes a tile to a place in the line, counted from 0. */
  | { readonly type: 'move'; readonly id: string; readonly to: number }
  | { readonly type: 'add'; readonly kind: TileKind }
  | { readonly type: 'remove'; readonly id: string }
  | { readonly type: 'grasp' }
  | { readonly type: 'pull'; readonly id: string; readonly to: number }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  | { readonly type: 'reset' }
  /** A line that an address brought: one that was changed before it was read stays as it was changed. */
  | { readonly type: 'open'; readonly tiles: readonly TileValue[] };

/** What a tile that is added says first: a level as the club's second transmitter has it, or a short pad. */
const FIRST_VALUE: Readonly<Record<TileKind, number>> = { level: 17, less: 17, gain: -10 };

export const lineOf = (tiles: readonly TileValue[]): LineState => ({
  tiles: tiles
    .slice(0, MOST_TILES)
    .map((tile, index) => ({ ...tile, value: onGrid(tile.value), id: `t${index}` })),
  held: undefined,
  touched: false,
});

export const preparedLine = (): LineState => lineOf(lineSpec.fields.tiles.default);

/** The nearest number on the grid; 0 for what is none. */
function onGrid(value: number): number {
  if (Number.isNaN(value)) return 0;
  const within = Math.min(VALUE.max, Math.max(VALUE.min, value));
  return Math.round(within * 10) / 10 + 0;
}

/** Total and pure: an unknown tile or a full line leaves everything as it is, an impossible number becomes the nearest. */
export function reduceLine(state: LineState, action: LineAction): LineState {
  switch (action.type) {
    case 'value':
      return changed(state, action.id, (tile) => ({ ...tile, value: onGrid(action.value) }));
    case 'kind':
      return changed(state, action.id, (tile) => ({ ...tile, kind: action.kind }));
    case 'move':
      return { ...moved(state, action), touched: true };
    case 'pull':
      return moved(state, action);
    case 'add':
      return added(state, action.kind);
    case 'remove':
      return {
        ...state,
        tiles: state.tiles.filter(({ id }) => id !== action.id),
        held: undefined,
        touched: true,
      };
    case 'grasp':
      return { ...state, held: state.tiles };
    case 'release':
      return { ...state, held: undefined, touched: true };
    case 'cancel':
      return state.held ? { ...state, tiles: state.held, held: undefined } : state;
    case 'reset':
      return { ...preparedLine(), touched: true };
    case 'open':
      return opened(state, lineOf(action.tiles));
  }
}

function opened(state: LineState, brought: LineState): LineState {
  if (state.touched) return state;
  return state.held ? { ...state, held: brought.tiles } : brought;
}

const changed = (state: LineState, id: string, change: (tile: PlacedTile) => PlacedTile): LineState => ({
  ...state,
  tiles: state.tiles.map((tile) => (tile.id === id ? change(tile) : tile)),
  touched: true,
});

function moved(state: LineState, { id, to }: { id: string; to: number }): LineState {
  const tile = state.tiles.find((candidate) => candidate.id === id);
  if (tile === undefined || Number.isNaN(to)) return state;
  const others = state.tiles.filter((candidate) => candidate !== tile);
  const place = Math.min(others.length, Math.max(0, Math.round(to)));
  return { ...state, tiles: [...others.slice(0, place), tile, ...others.slice(place)] };
}

function added(state: LineState, kind: TileKind): LineState {
  if (state.tiles.length >= MOST_TILES) return state;
  const used = new Set(state.tiles.map(({ id }) => id));
  const id =
    Array.from({ length: MOST_TILES }, (_, index) => `t${index}`).find((name) => !used.has(name)) ?? '';
  const tile = { id, kind, value: FIRST_VALUE[kind] };
  return { ...state, tiles: [...state.tiles, tile], held: undefined, touched: true };
}
