import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEMONSTRATIONS, demonstrationEntries } from '../../src/borrow/demonstration.ts';
import { BORROW_KINDS, MOST_PLACES, TEXT_KEYS } from '../../src/borrow/entries.ts';
import { type BorrowAction, type BorrowState, preparedBorrow, reduceBorrow } from '../../src/borrow/state.ts';
import { MOST_STEPS } from '../../src/borrow/steps.ts';
import { anyEntries } from './any-entries.ts';

const id = fc.constantFrom('place1', 'place2', 'place3', 'nobody');
const text = fc.constantFrom('', '7.3', '7.3 8.1 7.4', '1;2;3;2\n4;5;6;5', 'x');
const anyAction: fc.Arbitrary<BorrowAction> = fc.oneof(
  fc
    .tuple(fc.constantFrom(...TEXT_KEYS), text)
    .map(([key, value]): BorrowAction => ({ type: 'edit', path: key, change: { [key]: value } })),
  fc.tuple(id, text).map(
    ([of, readings]): BorrowAction => ({
      type: 'editPlace',
      id: of,
      path: `${of}.readings`,
      change: { readings },
    }),
  ),
  fc.constantFrom<BorrowAction>({ type: 'addPlace' }, { type: 'undo' }, { type: 'redo' }),
  id.map((of): BorrowAction => ({ type: 'removePlace', id: of })),
  id.map((of): BorrowAction => ({ type: 'spread', id: of })),
  fc.constantFrom(...DEMONSTRATIONS).map((name): BorrowAction => ({ type: 'demonstration', name })),
  fc.constantFrom(...BORROW_KINDS).map((kind): BorrowAction => ({ type: 'fresh', kind })),
  anyEntries.map((entries): BorrowAction => ({ type: 'open', entries, problems: [] })),
  fc.constant<BorrowAction>({ type: 'refuse', problems: ['nothing in it'] }),
);
const run = (actions: readonly BorrowAction[], from: BorrowState = preparedBorrow()): BorrowState =>
  actions.reduce(reduceBorrow, from);

describe('the page’s state', () => {
  test('bears any actions in any order, and never loses its last usable entries', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 25 }), (actions) => {
        const state = run(actions);
        expect(state.checked).toBeDefined();
        expect(state.entries.places.length).toBeGreaterThan(0);
        expect(new Set(state.entries.places.map((place) => place.id)).size).toBe(state.entries.places.length);
      }),
    );
  });

  test('undo brings back every step, and redo goes forward again', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 12 }), (actions) => {
        const state = run(actions);
        const steps = state.past.length;
        const back = run(
          Array.from({ length: steps }, () => ({ type: 'undo' as const })),
          state,
        );
        expect(back.entries).toEqual(state.past[0] ?? state.entries);
        expect(back.past).toEqual([]);
        const forward = run(
          Array.from({ length: steps }, () => ({ type: 'redo' as const })),
          back,
        );
        expect(forward.entries).toEqual(state.entries);
      }),
    );
  });

  test('letters typed into one field are one step', () => {
    const typed = ['0', '0.', '0.3'].map(
      (amount): BorrowAction => ({ type: 'edit', path: 'amount', change: { amount } }),
    );
    const state = run(typed);
    expect(state.past).toHaveLength(1);
    expect(reduceBorrow(state, { type: 'undo' }).entries).toEqual(demonstrationEntries('oneLevel'));
    expect(run([...typed, { type: 'edit', path: 'factor', change: { factor: '3' } }]).past).toHaveLength(2);
  });

  test('what cannot be used leaves the last result in sight', () => {
    const state = run([{ type: 'edit', path: 'amount', change: { amount: 'much' } }]);
    expect(state.problems.map(({ path }) => path)).toEqual(['amount']);
    expect(state.checked).toEqual(preparedBorrow().checked);
    expect(state.entries.amount).toBe('much');
  });

  test('a pasted table becomes places with ids of their own', () => {
    const table = '3.58; 7; 8; 7\n7.1; 7; 8.1; 7\n14.2; 7; 8.2; 7';
    const pasted: BorrowAction = {
      type: 'editPlace',
      id: 'place1',
      path: 'place1.readings',
      change: { readings: table },
    };
    const { entries } = run([pasted, { type: 'spread', id: 'place1' }]);
    expect(entries.places.map(({ at, readings }) => [at, readings])).toEqual([
      ['3.58', '7; 8; 7'],
      ['7.1', '7; 8.1; 7'],
      ['14.2', '7; 8.2; 7'],
    ]);
    expect(
      run([pasted, { type: 'spread', id: 'place1' }, { type: 'undo' }]).entries.places[0]?.readings,
    ).toBe(table);
    expect(run([{ type: 'spread', id: 'place1' }]).past).toEqual([]);
  });

  test('places are added up to the most, and the last one stays', () => {
    const full = run(Array.from({ length: MOST_PLACES + 5 }, () => ({ type: 'addPlace' as const })));
    expect(full.entries.places).toHaveLength(MOST_PLACES);
    const one = run([{ type: 'removePlace', id: 'place1' }]);
    expect(one.entries.places).toHaveLength(1);
    expect(one.past).toEqual([]);
    const again = run([{ type: 'addPlace' }, { type: 'removePlace', id: 'place1' }, { type: 'addPlace' }]);
    expect(new Set(again.entries.places.map((place) => place.id)).size).toBe(2);
  });

  test('no more steps are kept than a reader goes back', () => {
    const many = run(
      Array.from({ length: MOST_STEPS + 20 }, (_, index): BorrowAction => {
        const key = TEXT_KEYS[index % 2] ?? 'own';
        return { type: 'edit', path: key, change: { [key]: String(index) } };
      }),
    );
    expect(many.past).toHaveLength(MOST_STEPS);
  });

  test('trying another kind loses nothing', () => {
    const there = run([{ type: 'edit', path: 'kind', change: { kind: 'swap' } }]);
    const back = reduceBorrow(there, { type: 'edit', path: 'kind', change: { kind: 'alternation' } });
    expect(back.entries).toEqual(demonstrationEntries('oneLevel'));
  });

  test('an address that brings nothing is told and changes nothing', () => {
    const state = run([{ type: 'refuse', problems: ['nothing in it'] }]);
    expect(state.addressProblems).toEqual(['nothing in it']);
    expect(state.entries).toEqual(preparedBorrow().entries);
    expect(
      run([
        { type: 'refuse', problems: ['x'] },
        { type: 'fresh', kind: 'dc' },
      ]).addressProblems,
    ).toEqual([]);
  });
});
