import type { SheetEntries } from '../../sheet/entries.ts';
import type { FieldPath } from '../form/keys.ts';
import { readMeasurement } from '../read/read-measurement.ts';
import type { BenchState, Step } from './state.types.ts';

/** More steps than this are not kept. */
export const MOST_STEPS = 200;

/**
 * The state with these entries, one step of undo further: the measurement follows if all of them can be used and otherwise stays the
 * last good one. What is typed on into the field of the last change is no step of its own.
 */
export function settled(state: BenchState, entries: SheetEntries, path: FieldPath | undefined): BenchState {
  if (entries === state.entries) return state;
  const same = isContinued(state, path);
  const next = withEntries(state, entries);
  const keepsGhost = state.held !== undefined || same || next.problems.length > 0;
  return {
    ...next,
    before: ghostOf(state, next, keepsGhost),
    lastPath: path,
    past: same ? state.past : [...state.past, stepOf(state)].slice(-MOST_STEPS),
    future: [],
  };
}

/** What the ghost shows after a change: never another sheet. */
function ghostOf(state: BenchState, next: BenchState, keeps: boolean): BenchState['before'] {
  if (next.measured !== state.measured) return undefined;
  return keeps ? state.before : state.measurement;
}

/** What came of a change that brought another sheet, with its measurement if it has one. */
export const ofSheet = (before: BenchState, after: BenchState, sheet: number): BenchState => ({
  ...after,
  sheet,
  measured: after.problems.length === 0 ? sheet : before.measured,
});

const stepOf = ({ entries, sheet }: BenchState): Step => ({ entries, sheet });

/** Whether a change of this field goes on where the last change stopped. */
export const isContinued = ({ lastPath, past }: BenchState, path: FieldPath | undefined): boolean =>
  path !== undefined && path === lastPath && past.length > 0;

/** The state with these entries read, and a point that is one of theirs. */
function withEntries(state: BenchState, entries: SheetEntries): BenchState {
  const { measurement, problems } = readMeasurement(entries);
  const { points } = entries;
  const place = state.entries.points.findIndex(({ id }) => id === state.point);
  const near = points[Math.min(Math.max(place, 0), points.length - 1)];
  const point = points.some(({ id }) => id === state.point) ? state.point : (near?.id ?? state.point);
  return {
    ...state,
    entries,
    problems,
    measurement: measurement ?? state.measurement,
    measured: measurement === undefined ? state.measured : state.sheet,
    point,
  };
}

/** One step back; the same state where there is none. */
export function undone(state: BenchState): BenchState {
  const step = state.past.at(-1);
  if (step === undefined) return state;
  return {
    ...restored(state, step),
    past: state.past.slice(0, -1),
    future: [...state.future, stepOf(state)],
  };
}

/** One step forward again; the same state where there is none. */
export function redone(state: BenchState): BenchState {
  const step = state.future.at(-1);
  if (step === undefined) return state;
  return {
    ...restored(state, step),
    past: [...state.past, stepOf(state)],
    future: state.future.slice(0, -1),
  };
}

function restored(state: BenchState, { entries, sheet }: Step): BenchState {
  const next = ofSheet(state, withEntries(state, entries), sheet);
  const before = ghostOf(state, next, false);
  return { ...next, before, lastPath: undefined, held: undefined, addressProblems: [] };
}

/** Back to where the handle was grasped, and no step of undo left of it. */
export function cancelled(state: BenchState): BenchState {
  const { held, past } = state;
  if (held === undefined) return state;
  const step = past.findLastIndex(({ entries }) => entries === held.entries);
  return {
    ...withEntries(state, held.entries),
    measurement: held.measurement,
    past: step < 0 ? past : past.slice(0, step),
    before: undefined,
    lastPath: undefined,
    held: undefined,
  };
}
