import type { SheetEntries } from '../../sheet/entries.ts';
import { demonstrationEntries, freshEntries } from '../entries/fresh.ts';
import { checkPath, type FieldPath, reasonPath } from '../form/keys.ts';
import type { BenchAction } from './actions.ts';
import { logged } from './agreement.ts';
import { changed } from './changed.ts';
import { chooseMethod } from './choose-method.ts';
import { firstPoint } from './demonstration.ts';
import { addLink, duplicateLink, editLink, moveLink, removeLink } from './edit-links.ts';
import { addPoint, editPoint, removePoint } from './edit-points.ts';
import { cancelled, isContinued, ofSheet, redone, settled, undone } from './history.ts';
import { pulled } from './pull.ts';
import type { BenchState } from './state.types.ts';

export type { BenchAction } from './actions.ts';
export type { BenchState } from './state.types.ts';

/**
 * Id of the point whose result is shown: the one that is edited, or, where the last usable measurement does not have it (yet), the
 * nearest before it.
 */
export function shownPoint({ entries, measurement, point }: BenchState): string {
  const has = (wanted: string): boolean => measurement.points.some(({ id }) => id === wanted);
  const place = entries.points.findIndex(({ id }) => id === point);
  const before = entries.points.slice(0, place + 1).findLast(({ id }) => has(id));
  return before?.id ?? measurement.points[0]?.id ?? '';
}

/** Total and pure: what names nothing that is there, or asks for a place that is not there, changes nothing. */
export function reduceBench(state: BenchState, action: BenchAction): BenchState {
  const { entries } = state;
  switch (action.type) {
    case 'edit':
      return agreed(state, changed<SheetEntries>(entries, action.change), action);
    case 'editPoint':
      return agreed(state, editPoint(entries, action.id, action.change), action);
    case 'editLink':
      return settled(state, editLink(entries, action.id, action.change), action.path);
    case 'editCheck':
      return checked(state, action);
    case 'giveReason':
      return reasoned(state, action);
    case 'chooseMethod':
      return settled(state, chooseMethod(entries, action.method), undefined);
    case 'addPoint':
      return pointAdded(state);
    case 'removePoint':
      return settled(state, removePoint(entries, action.id), undefined);
    case 'showPoint':
      return entries.points.some(({ id }) => id === action.id) ? changed(state, { point: action.id }) : state;
    case 'add':
      return settled(state, addLink(entries, action), undefined);
    case 'duplicate':
      return settled(state, duplicateLink(entries, action), undefined);
    case 'remove':
      return settled(state, removeLink(entries, action.id), undefined);
    case 'move':
      return settled(state, moveLink(entries, action), undefined);
    case 'takeInstrument':
      return settled(state, changed<SheetEntries>(entries, action.taken(entries) ?? {}), undefined);
    case 'undo':
      return undone(state);
    case 'redo':
      return redone(state);
    default:
      return reduceRest(state, action);
  }
}

type Rest = Extract<
  BenchAction,
  {
    type:
      | 'open'
      | 'resume'
      | 'adopt'
      | 'refuse'
      | 'demonstration'
      | 'fresh'
      | 'grasp'
      | 'pull'
      | 'release'
      | 'cancel'
      | 'show';
  }
>;

/** Whole sheets, dragging, and what is drawn. */
function reduceRest(state: BenchState, action: Rest): BenchState {
  switch (action.type) {
    case 'open':
      return replaced(state, action.entries, action.problems);
    case 'resume':
      return { ...replaced(state, action.entries, []), past: [], lastPath: undefined };
    case 'adopt':
      return { ...settled({ ...state, held: undefined }, action.entries, undefined), before: undefined };
    case 'refuse':
      return { ...state, addressProblems: action.problems };
    case 'demonstration':
      return replaced(state, demonstrationEntries(), []);
    case 'fresh':
      return replaced(state, freshEntries(action.method), []);
    case 'grasp':
      return {
        ...state,
        before: state.measurement,
        lastPath: undefined,
        held: { entries: state.entries, measurement: state.measurement },
      };
    case 'pull':
      return pulled(state, action, shownPoint(state));
    case 'release':
      return { ...state, lastPath: undefined, held: undefined };
    case 'cancel':
      return cancelled(state);
    case 'show':
      return changed(state, action.what === 'limits' ? { showLimits: action.on } : { showCurve: action.on });
  }
}

/** A change that may touch what was agreed before the first reading. */
function agreed(
  state: BenchState,
  after: SheetEntries,
  { path, at }: { path: FieldPath; at?: string },
): BenchState {
  if (after === state.entries) return state;
  const continued = isContinued(state, path);
  return settled(state, logged({ before: state.entries, after, at, continued }), path);
}

function checked(state: BenchState, { key, text }: Extract<BenchAction, { type: 'editCheck' }>): BenchState {
  const checks = changed(state.entries.checks, { [key]: text });
  return settled(state, changed(state.entries, { checks }), checkPath(key));
}

function reasoned(
  state: BenchState,
  { index, reason }: Extract<BenchAction, { type: 'giveReason' }>,
): BenchState {
  const { log } = state.entries;
  const change = log.changes[index];
  if (change === undefined || change.reason === reason) return state;
  const changes = log.changes.map((each, place) => (place === index ? { ...each, reason } : each));
  return settled(state, { ...state.entries, log: { ...log, changes } }, reasonPath(index));
}

function pointAdded(state: BenchState): BenchState {
  const next = settled(state, addPoint(state.entries), undefined);
  return next === state ? state : { ...next, point: next.entries.points.at(-1)?.id ?? next.point };
}

/** Another sheet in place of this one, which undo brings back. */
function replaced(state: BenchState, entries: SheetEntries, addressProblems: readonly string[]): BenchState {
  const next = settled({ ...state, held: undefined }, entries, undefined);
  const sheet = state.sheets + 1;
  return {
    ...ofSheet(state, next, sheet),
    sheets: sheet,
    before: undefined,
    point: firstPoint(entries),
    addressProblems,
  };
}
