import { freeId } from '../bench/state/changed.ts';
import { type Stepped, stepBack, stepOn, stepsAfter } from '../borrow/steps.ts';
import { breathe } from '../widgets/parts/breathe.ts';
import { type Comparison, comparisonOf } from './compared.ts';
import { demonstrationCompare } from './demonstration.ts';
import { blankCompare, type CompareEntries, FEWEST_ROWS, MOST_ROWS, type RowEntries } from './entries.ts';
import { type Decode, readRow } from './read-row.ts';
import { type Candidate, turned } from './shared.ts';

/** Everything that the page knows. */
export interface CompareState extends Stepped<CompareEntries> {
  readonly comparison: Comparison;
  /** Reads addresses, once it was fetched. */
  readonly decode: Decode | undefined;
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

/**
 * The same in turns, between which the page answers. What takes long is that a browser meets the code for the first time: each sheet is
 * read and summed once by itself, and what follows does so again in no time.
 */
export async function preparedInTurns(): Promise<CompareState> {
  const entries = demonstrationCompare();
  for (const row of entries.rows) {
    await breathe();
    readRow(row, undefined);
    await breathe();
    comparisonOf({ ...entries, rows: [row] }, undefined);
  }
  await breathe();
  return preparedCompare();
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
      return moved(state, stepBack(state));
    case 'redo':
      return moved(state, stepOn(state));
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

/** The state with these entries compared. */
const withEntries = (state: CompareState, entries: CompareEntries): CompareState => ({
  ...state,
  entries,
  comparison: comparisonOf(entries, state.decode),
});

function stepped(state: CompareState, entries: CompareEntries, path?: string): CompareState {
  return { ...withEntries(state, entries), ...stepsAfter(state, path) };
}

function withRows(state: CompareState, rows: readonly RowEntries[], path?: string): CompareState {
  const before = state.entries.rows;
  const same = rows.length === before.length && rows.every((row, index) => row === before[index]);
  if (same || rows.length < FEWEST_ROWS || rows.length > MOST_ROWS) return state;
  return stepped(state, { ...state.entries, rows }, path);
}

/** The state at another step; the same where there is none. */
const moved = (state: CompareState, to: Stepped<CompareEntries> | undefined): CompareState =>
  to === undefined ? state : { ...withEntries(state, to.entries), ...to };
