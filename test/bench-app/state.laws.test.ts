import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { MOST_STEPS } from '../../src/bench/state/history.ts';
import { type BenchAction, type BenchState, reduceBench, shownPoint } from '../../src/bench/state/state.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { anyAction, anyForward, anyTyping, redo, undo } from './any-action.ts';

const actions = (arbitrary: fc.Arbitrary<BenchAction>, maxLength = 14) => fc.array(arbitrary, { maxLength });
const run = (list: readonly BenchAction[], from = demonstration()): BenchState =>
  list.reduce(reduceBench, from);
const times = (count: number, action: BenchAction): BenchAction[] =>
  Array.from({ length: count }, () => action);

/** The simplest history: a list of sheets and a place in it. Typing on in one field takes the place of what stood there. */
interface Model {
  readonly sheets: readonly SheetEntries[];
  readonly at: number;
  readonly path: string | undefined;
}

/** The model after a change of the sheet; `path` says which field was typed into, nothing for a change of its own. */
function moved({ sheets, at, path }: Model, entries: SheetEntries, field: string | undefined): Model {
  const continued = field !== undefined && field === path && at > 0;
  const kept = sheets.slice(0, continued ? at : at + 1);
  return { sheets: [...kept, entries], at: kept.length, path: field };
}

const pathOf = (action: BenchAction): string | undefined => {
  if (action.type === 'editCheck') return `check.${action.key}`;
  return 'path' in action ? action.path : undefined;
};

describe('any sequence of edits, undo and redo', () => {
  it('ends where it should: at the sheet that a plain list of sheets with a place in it says', () => {
    fc.assert(
      fc.property(actions(fc.oneof(anyTyping, fc.constantFrom(undo, redo)), 30), (list) => {
        let state = demonstration();
        let model: Model = { sheets: [state.entries], at: 0, path: undefined };
        for (const action of list) {
          state = reduceBench(state, action);
          if (action.type === 'undo' || action.type === 'redo') {
            const to = model.at + (action.type === 'undo' ? -1 : 1);
            if (model.sheets[to] !== undefined) model = { ...model, at: to, path: undefined };
          } else if (state.entries !== model.sheets[model.at])
            model = moved(model, state.entries, pathOf(action));
          expect(state.entries).toEqual(model.sheets[model.at]);
        }
      }),
    );
  });

  it('is taken back step by step to the very sheet it began with, and forward again to the very sheet it ended with', () => {
    fc.assert(
      fc.property(actions(anyForward), (list) => {
        const start = demonstration();
        const end = run([...list, { type: 'release' }], start);
        const back = run(times(end.past.length, undo), end);
        expect(back.entries).toBe(start.entries);
        expect(back.past).toEqual([]);
        const forth = run(times(end.past.length, redo), back);
        expect(forth.entries).toBe(end.entries);
        expect(forth.problems).toEqual(end.problems);
        expect(forth.future).toEqual([]);
      }),
    );
  });

  it('keeps everything typed: what stands in a field is what was typed into it last, letter by letter', () => {
    fc.assert(
      fc.property(actions(anyAction), fc.string(), (list, text) => {
        const before = run(list);
        const [point] = before.entries.points;
        const id = point?.id ?? '';
        const edit = { type: 'editPoint', id, path: `${id}.readings`, change: { readings: text } } as const;
        const typed = reduceBench(before, edit);
        expect(typed.entries.points[0]?.readings).toBe(text);
        const back = typed === before ? before : reduceBench(typed, undo);
        expect(typed === before || back.entries.points[0]?.readings !== text).toBe(true);
      }),
    );
  });
});

describe('whatever happens', () => {
  it('ids stay unique, one point at least is left, and the shown one is among them', () => {
    fc.assert(
      fc.property(actions(anyAction), (list) => {
        let state = demonstration();
        for (const action of list) {
          state = reduceBench(state, action);
          const { links, points } = state.entries;
          const ids = [...links, ...points].map(({ id }) => id);
          expect(new Set(ids).size).toBe(ids.length);
          expect(points.map(({ id }) => id)).toContain(state.point);
          expect(state.measurement.points.map(({ id }) => id)).toContain(shownPoint(state));
        }
      }),
    );
  });

  it('problems are those of the entries, and the measurement is theirs unless there are any', () => {
    fc.assert(
      fc.property(actions(anyAction), (list) => {
        let state = demonstration();
        for (const action of list) {
          const next = reduceBench(state, action);
          const { measurement, problems } = readMeasurement(next.entries);
          expect(next.problems).toEqual(problems);
          if (measurement !== undefined) expect(next.measurement).toEqual(measurement);
          else if (action.type !== 'cancel') expect(next.measurement).toBe(state.measurement);
          state = next;
        }
      }),
    );
  });

  it('what is there is never changed in place, and the same action on the same state gives the same again', () => {
    fc.assert(
      fc.property(actions(anyAction), anyAction, (list, action) => {
        const state = run(list);
        const copy = structuredClone(state);
        const next = reduceBench(state, action);
        expect(state).toEqual(copy);
        expect(reduceBench(state, action)).toEqual(next);
      }),
    );
  });

  it('only two hundred steps are kept, the oldest given up first', () => {
    const add = Array.from({ length: MOST_STEPS + 30 }, (_, index) => ({
      type: 'edit' as const,
      path: `title${index}`,
      change: { title: `${index}` },
    }));
    const state = run(add);
    expect(state.past).toHaveLength(MOST_STEPS);
    expect(run(times(MOST_STEPS + 5, undo), state).entries.title).toBe('29');
  });
});
