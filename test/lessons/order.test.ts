import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOrder, neighboursOf } from '../../src/lessons/order.ts';
import { TRACKS, type Track } from '../../src/lessons/tracks.ts';

const lesson = (track: Track, order: number) => ({ id: `${track}/${order}`, data: { track, order } });
const anyLessons = fc.uniqueArray(
  fc.tuple(fc.constantFrom(...(Object.keys(TRACKS) as Track[])), fc.integer({ min: 1, max: 9 })),
  { selector: ([track, order]) => `${track}/${order}`, minLength: 1 },
);

describe('the order of lessons', () => {
  it('goes from decibels through traceability and stacking to measuring', () => {
    const shuffled = [
      lesson('measuring', 1),
      lesson('stacking', 1),
      lesson('traceability', 2),
      lesson('decibels', 6),
      lesson('traceability', 1),
    ];
    expect(inOrder(shuffled).map(({ id }) => id)).toEqual([
      'decibels/6',
      'traceability/1',
      'traceability/2',
      'stacking/1',
      'measuring/1',
    ]);
  });

  it('does not hang on the order in which they are found', () => {
    fc.assert(
      fc.property(anyLessons, (found) => {
        const lessons = found.map(([track, order]) => lesson(track, order));
        expect(inOrder(lessons.toReversed())).toEqual(inOrder(lessons));
      }),
    );
  });

  it('leads from the first to the last by next, and back by previous', () => {
    fc.assert(
      fc.property(anyLessons, (found) => {
        const lessons = found.map(([track, order]) => lesson(track, order));
        const ordered = inOrder(lessons);
        ordered.forEach(({ id }, index) => {
          const { previous, next } = neighboursOf(lessons, id);
          expect([previous, next]).toEqual([ordered[index - 1], ordered[index + 1]]);
        });
      }),
    );
  });

  it('has no place for a lesson that is not there', () => {
    expect(() => neighboursOf([lesson('decibels', 1)], 'decibels/2')).toThrow(
      'neighboursOf: a lesson must have the id, got "decibels/2"',
    );
  });
});
