import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf, rightAngles } from '../../src/figures/right-angles.ts';

const lengths = fc.array(fc.double({ min: 0.01, max: 10, noNaN: true }), { minLength: 1, maxLength: 9 });

describe('lengths laid at right angles one after another', () => {
  it('end as far from the start as the root of the sum of their squares, in any order', () => {
    fc.assert(
      fc.property(lengths, (all) => {
        const far = (of: readonly number[]): number => {
          const last = rightAngles(of).at(-1) ?? { x: 0, y: 0 };
          return Math.hypot(last.x, last.y);
        };
        expect(far(all)).toBeCloseTo(Math.hypot(...all), 9);
        expect(far(all.toReversed())).toBeCloseTo(far(all), 9);
      }),
    );
  });

  it('each stand at a right angle to the straight line from the start, and keep their length', () => {
    fc.assert(
      fc.property(lengths, (all) => {
        const corners = rightAngles(all);
        for (const [index, length] of all.entries()) {
          const [at = { x: 0, y: 0 }, next = { x: 0, y: 0 }] = corners.slice(index);
          const step = { x: next.x - at.x, y: next.y - at.y };
          expect(Math.hypot(step.x, step.y)).toBeCloseTo(length, 9);
          expect(step.x * at.x + step.y * at.y).toBeCloseTo(0, 8);
        }
      }),
    );
  });

  it('are by hand 3, 4 and 12: a path of 13', () => {
    const corners = rightAngles([3, 4, 12]);
    expect(corners.slice(0, 3)).toEqual([
      { x: 0, y: 0 },
      { x: 3, y: 0 },
      { x: 3, y: 4 },
    ]);
    expect(Math.hypot(corners[3]?.x ?? 0, corners[3]?.y ?? 0)).toBeCloseTo(13, 12);
  });

  it('lie in the box around them', () => {
    fc.assert(
      fc.property(lengths, (all) => {
        const corners = rightAngles(all);
        const { left, bottom, width, height } = boxOf(corners);
        for (const { x, y } of corners) {
          expect(x).toBeGreaterThanOrEqual(left);
          expect(x).toBeLessThanOrEqual(left + width + 1e-12);
          expect(y).toBeGreaterThanOrEqual(bottom);
          expect(y).toBeLessThanOrEqual(bottom + height + 1e-12);
        }
      }),
    );
  });
});
