import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handsText, readHands, roomOf } from '../../src/stage/hands.ts';

describe('a count of hands', () => {
  it.each([
    ['7', 7],
    [' 12 ', 12],
    ['0', 0],
    ['999', 999],
  ])('is read from %j', (typed, count) => expect(readHands(typed)).toBe(count));

  it.each(['', ' ', '-1', '1.5', '1000', 'ten', '1e2', '٣'])('is not read from %j', (typed) =>
    expect(readHands(typed)).toBeUndefined(),
  );
});

describe('a room', () => {
  it('is nobody until a hand is counted', () => {
    expect(roomOf([])).toBeUndefined();
    expect(roomOf([undefined, '', '0', 'x'])).toBeUndefined();
  });

  it('has as many hands as were typed, option by option', () => {
    expect(roomOf(['7', '', 'x', '5'])).toEqual({ counts: [7, 0, 0, 5], total: 12 });
    fc.assert(
      fc.property(fc.array(fc.nat(999), { minLength: 1, maxLength: 5 }), (counts) => {
        const room = roomOf(counts.map(String));
        const total = counts.reduce((sum, count) => sum + count, 0);
        expect(room).toEqual(total === 0 ? undefined : { counts, total });
      }),
    );
  });

  it('is told in words', () => expect(handsText(7, 24)).toBe('7 of 24'));
});
