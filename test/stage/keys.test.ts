import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Press, stepWithin, wishOf } from '../../src/stage/keys.ts';
import { stepWithNumber } from '../../src/stage/orders.ts';
import { keyWords } from '../../src/stage/strings.ts';

const press = (key: string, options: Partial<Press> = {}) =>
  wishOf({ key, at: 2, count: 6, inControl: false, signs: true, ...options });
const movers = ['PageDown', 'PageUp', 'ArrowRight', 'ArrowLeft', ' ', 'Home', 'End'];
const signs = ['b', '.', 'f', 'n', '0', '?', 'w'];

describe('keys on the stage', () => {
  it('never leave the deck, whatever is pressed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...movers, ...signs, 'x', 'Enter', 'toString'),
        fc
          .integer({ min: 1, max: 12 })
          .chain((count) =>
            fc.record({ count: fc.constant(count), at: fc.integer({ min: 0, max: count - 1 }) }),
          ),
        fc.boolean(),
        (key, { count, at }, inControl) => {
          const wish = press(key, { count, at, inControl });
          if (typeof wish === 'object') expect(wish.to >= 0 && wish.to < count).toBe(true);
        },
      ),
    );
  });

  it('of a clicker move even while a control has the focus', () => {
    expect(press('PageDown', { inControl: true })).toEqual({ to: 3 });
    expect(press('PageUp', { inControl: true })).toEqual({ to: 1 });
  });

  it('that a control needs are left to it', () => {
    for (const key of [...movers.slice(2), ...signs])
      expect(press(key, { inControl: true }), key).toBeUndefined();
  });

  it('move by arrows, space, Home and End elsewhere', () => {
    const wishes = ['ArrowRight', ' ', 'ArrowLeft', 'Home', 'End'].map((key) => press(key));
    expect(wishes).toEqual([{ to: 3 }, { to: 3 }, { to: 1 }, { to: 0 }, { to: 5 }]);
  });

  it('stop at both ends', () => {
    expect(press('PageDown', { at: 5 })).toEqual({ to: 5 });
    expect(press('PageUp', { at: 0 })).toEqual({ to: 0 });
    expect([stepWithin(-3, 4), stepWithin(9, 4), stepWithin(2, 4)]).toEqual([0, 3, 2]);
  });

  it('of one sign give orders', () => {
    expect(signs.map((key) => press(key))).toEqual([
      'blank',
      'blank',
      'screen',
      'notes',
      'prepared',
      'help',
      'number',
    ]);
  });

  it('of one sign can be switched off, and the others stay', () => {
    for (const key of signs) expect(press(key, { signs: false }), key).toBeUndefined();
    for (const key of movers) expect(press(key, { signs: false }), key).toBeDefined();
  });

  it('that mean nothing here ask for nothing', () => {
    expect(press('x')).toBeUndefined();
    expect(press('constructor')).toBeUndefined();
  });

  it('of one sign are all in the help', () => {
    const told = keyWords.flatMap(({ keys }) => keys);
    expect(signs.filter((key) => !told.includes(key))).toEqual([]);
  });
});

describe('the number that is meant', () => {
  it('is on this step, else on the last one before, else on the first one after', () => {
    const has = [false, true, false, true, false];
    expect([0, 1, 2, 3, 4].map((at) => stepWithNumber(has, at))).toEqual([1, 1, 1, 3, 3]);
  });

  it('is nowhere where no step has one', () => {
    expect(stepWithNumber([false, false], 1)).toBeUndefined();
    expect(stepWithNumber([], 0)).toBeUndefined();
  });
});
