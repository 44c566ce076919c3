import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slideAfter } from '../../src/stage/deck.ts';

const press = (key: string, options: Partial<{ at: number; count: number; inControl: boolean }> = {}) =>
  slideAfter({ key, at: 2, count: 6, inControl: false, ...options });

describe('keys on the stage', () => {
  it('never leave the deck, whatever is pressed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('PageDown', 'PageUp', 'ArrowRight', 'ArrowLeft', ' ', 'Home', 'End', 'x', 'Enter'),
        fc
          .integer({ min: 1, max: 12 })
          .chain((count) =>
            fc.record({ count: fc.constant(count), at: fc.integer({ min: 0, max: count - 1 }) }),
          ),
        fc.boolean(),
        (key, { count, at }, inControl) => {
          const next = slideAfter({ key, at, count, inControl });
          if (next !== undefined) expect(next >= 0 && next < count).toBe(true);
        },
      ),
    );
  });

  it('of a clicker move even while a control has the focus', () => {
    expect(press('PageDown', { inControl: true })).toBe(3);
    expect(press('PageUp', { inControl: true })).toBe(1);
  });

  it('that a control needs are left to it', () => {
    for (const key of ['ArrowRight', 'ArrowLeft', ' ', 'Home', 'End'])
      expect(press(key, { inControl: true }), key).toBeUndefined();
  });

  it('move by arrows, space, Home and End elsewhere', () => {
    expect([press('ArrowRight'), press(' '), press('ArrowLeft'), press('Home'), press('End')]).toEqual([
      3, 3, 1, 0, 5,
    ]);
  });

  it('stop at both ends', () => {
    expect(press('PageDown', { at: 5 })).toBe(5);
    expect(press('PageUp', { at: 0 })).toBe(0);
  });

  it('that mean nothing here move nothing', () => expect(press('x')).toBeUndefined());
});
