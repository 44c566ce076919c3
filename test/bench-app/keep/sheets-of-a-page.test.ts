import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { demonstration } from '../../../src/bench/state/demonstration.ts';
import { type BenchAction, type BenchState, reduceBench } from '../../../src/bench/state/state.ts';
import { anyForward } from '../any-action.ts';

const on = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduceBench, state);
const bench = (...actions: readonly BenchAction[]): BenchState => on(demonstration(), ...actions);
const title = (text: string): BenchAction => ({ type: 'edit', path: 'title', change: { title: text } });
const undo: BenchAction = { type: 'undo' };
const redo: BenchAction = { type: 'redo' };
const other = { ...demonstrationEntries(), title: 'Another' };

describe('each sheet that is opened on the bench', () => {
  it('has a number of its own, which changes keep and undo brings back', () => {
    expect(bench(title('x')).sheet).toBe(0);
    const first = bench({ type: 'fresh', method: 'inLine' }, title('y'));
    expect(first.sheet).toBe(1);
    const second = on(first, { type: 'demonstration' });
    expect(second.sheet).toBe(2);
    expect(on(second, undo)).toMatchObject({ sheet: 1, entries: first.entries });
    expect(on(second, undo, redo)).toMatchObject({ sheet: 2, entries: second.entries });
    const third = on(second, undo, { type: 'open', entries: other, problems: [] });
    expect(third.sheet, 'no number is given twice').toBe(3);
  });

  it('is the same sheet wherever the same entries stand, after any changes and back', () => {
    fc.assert(
      fc.property(fc.array(anyForward, { maxLength: 12 }), (list) => {
        const numbers = new Map<object, number>();
        let state = demonstration();
        const note = (): void => {
          const known = numbers.get(state.entries) ?? state.sheet;
          expect(state.sheet).toBe(known);
          numbers.set(state.entries, known);
        };
        for (const action of [...list, ...list.map(() => undo), ...list.map(() => redo)]) {
          state = reduceBench(state, action);
          note();
        }
      }),
    );
  });
});

describe('going on with a kept sheet', () => {
  it('shows it, and undo does not lead back to what the bench opened with', () => {
    const state = bench(
      title('x'),
      { type: 'refuse', problems: ['cut'] },
      { type: 'resume', entries: other },
    );
    expect(state.entries).toBe(other);
    expect(state).toMatchObject({ sheet: 1, past: [], future: [], before: undefined, addressProblems: [] });
    expect(on(state, undo)).toBe(state);
  });

  it('makes the first change a step of its own', () => {
    const state = bench(title('x'), { type: 'resume', entries: other }, title('y'));
    expect(on(state, undo).entries).toBe(other);
  });
});

describe('taking over what another tab made of a sheet', () => {
  it('is a step of undo within the same sheet', () => {
    const mine = bench({ type: 'fresh', method: 'inLine' }, title('mine'));
    const theirs = on(mine, { type: 'adopt', entries: other });
    expect(theirs).toMatchObject({ sheet: 1, entries: other, before: undefined });
    expect(on(theirs, undo)).toMatchObject({ sheet: 1, entries: mine.entries });
  });

  it('ends a drag', () => {
    const held = bench({ type: 'grasp' });
    expect(on(held, { type: 'adopt', entries: other }).held).toBeUndefined();
  });
});
