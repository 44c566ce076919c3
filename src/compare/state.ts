import { freeId } from '../bench/state/changed.ts';
import { type Comparison, comparisonOf } from './compared.ts';
import { demonstrationCompare } from './demonstration.ts';
import { blankCompare, type CompareEntries, FEWEST_ROWS, MOST_ROWS, type RowEntries } from './entries.ts';
import type { Decode } from './read-row.ts';
import { type Candidate, turned } from './shared.ts';

/** Everything that the page knows. */
export interface CompareState {
  readonly entries: CompareEntries;
  readonly comparison: Comparison;
  /** Reads addresses, once it was fetched. */
  readonly decode: Decode | undefined;
  readonly past: readonly CompareEntries[];
  readonly future: readonly CompareEntries[];
  readonly lastPath: string | undefined;
  readonly addressProblems: readonly string[];
}

export type CompareAction =
  | { readonly type: 'edit'; readonly id: string; readonly change: Partial<Omit<RowEntries, 'id'>> }
  | { readonly type: 'add'; readonly address: string }
  | { readonly type: 'remove'; readonly id: string }
  | { readonly type: 'turn'; readonly candidate: Pick<Candidate, 'kind' | 'name'> }
  /** What reads addresses has come. */
  | { readonly type: 'decoder'; readonly decode: Decode }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }
  | { readonly type: 'demonstration' }
  | { readonly type: 'fresh' }
  | { readonly type: 'open'; readonly entries: CompareEntries; readonly problems: readonly string[] }
  | { readonly type: 'refuse'; readonly problems: readonly string[] };

/** More steps than this are not kept. */
export const MOST_STEPS = 100;

/** What the page opens with. */
export function preparedCompare(): CompareState {
  const entries = demonstrationCompare();
  return {
    entries,
    comparison: comparisonOf(entries, undefined),
    decode: undefined,
    past: [],
    future: [],
    lastPath: undefined,
    addressProblems: [],
  };
}

/** Total and pure: what names nothing that is there changes nothing. */
export function reduceCompare(state: CompareState, action: CompareAction): CompareState {
  const { entries } = state;
  const { rows } = entries;
  switch (action.type) {
    case 'edit':
      return withRows(
        state,
        rows.map((row) => (row.id === action.id ? { ...row, ...action.change } : row)),
        `${action.id}.${Object.keys(action.change).join()}`,
      );
    case 'add':
      return withRows(state, added(rows, action.address));
    case 'remove':
      return withRows(
        state,
        rows.filter(({ id }) => id !== action.id),
      );
    case 'turn':
      return stepped(state, { ...entries, ...turned(entries, action.candidate) });
    case 'decoder':
      return {
        ...state,
        decode: action.decode,
        comparison: comparisonOf(entries, action.decode),
      };
    case 'undo':
      return undone(state);
    case 'redo':
      return redone(state);
    case 'demonstration':
      return stepped({ ...state, addressProblems: [] }, demonstrationCompare());
    case 'fresh':
      return stepped({ ...state, addressProblems: [] }, blankCompare());
    case 'open':
      return { ...stepped(state, action.entries), addressProblems: action.problems };
    case 'refuse':
      return { ...state, addressProblems: action.problems };
  }
}

/** One sheet more: into the first row that is still empty, where an address comes with it, else into a new one. */
function added(rows: readonly RowEntries[], address: string): readonly RowEntries[] {
  const empty = address === '' ? undefined : rows.find((row) => row.address.trim() === '');
  if (empty) return rows.map((row) => (row === empty ? { ...row, address, point: '' } : row));
  return [...rows, { id: freeId('sheet', rows), address, point: '' }];
}

function stepped(state: CompareState, entries: CompareEntries, path?: string): CompareState {
  const same = path !== undefined && path === state.lastPath && state.past.length > 0;
  return {
    ...state,
    entries,
    comparison: comparisonOf(entries, state.decode),
    lastPath: path,
    past: same ? state.past : [...state.past, state.entries].slice(-MOST_STEPS),
    future: [],
  };
}

function withRows(state: CompareState, rows: readonly RowEntries[], path?: string): CompareState {
  const before = state.entries.rows;
  const same = rows.length === before.length && rows.every((row, index) => row === before[index]);
  if (same || rows.length < FEWEST_ROWS || rows.length > MOST_ROWS) return state;
  return stepped(state, { ...state.entries, rows }, path);
}

const moved = (
  state: CompareState,
  entries: CompareEntries,
  steps: Pick<CompareState, 'past' | 'future'>,
): CompareState => ({
  ...state,
  entries,
  comparison: comparisonOf(entries, state.decode),
  lastPath: undefined,
  ...steps,
});

function undone(state: CompareState): CompareState {
  const entries = state.past.at(-1);
  if (entries === undefined) return state;
  return moved(state, entries, { past: state.past.slice(0, -1), future: [...state.future, state.entries] });
}

function redone(state: CompareState): CompareState {
  const entries = state.future.at(-1);
  if (entries === undefined) return state;
  return moved(state, entries, { past: [...state.past, state.entries], future: state.future.slice(0, -1) });
}
