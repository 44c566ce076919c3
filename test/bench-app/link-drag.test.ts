import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landingMark, landingPlace, scrollStep } from '../../src/bench/views/use-link-drag.ts';

describe('where a dragged link lands', () => {
  const rising = fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 12 }).map((steps) => {
    let middle = 0;
    return steps.map((step) => {
      middle += step;
      return middle;
    });
  });

  it('is always a place in the order, further down the lower the pointer', () => {
    fc.assert(
      fc.property(
        rising,
        fc.integer({ min: -50, max: 900 }),
        fc.integer({ min: 0, max: 300 }),
        (middles, y, more) => {
          const place = landingPlace(y, middles);
          expect(place).toBeGreaterThanOrEqual(0);
          expect(place).toBeLessThanOrEqual(middles.length);
          expect(landingPlace(y + more, middles)).toBeGreaterThanOrEqual(place);
        },
      ),
    );
  });

  it('is above all the others at the top, and below all of them at the bottom', () => {
    expect(landingPlace(0, [10, 20, 30])).toBe(0);
    expect(landingPlace(15, [10, 20, 30])).toBe(1);
    expect(landingPlace(99, [10, 20, 30])).toBe(3);
  });

  it('is marked on the side that it comes to, and not where it was', () => {
    const marks = (from: number, to: number) =>
      [0, 1, 2, 3].map((index) => landingMark({ id: 'pad', from, to }, index));
    expect(marks(1, 1)).toEqual([undefined, 'held', undefined, undefined]);
    expect(marks(2, 0)).toEqual(['before', undefined, 'held', undefined]);
    expect(marks(1, 3)).toEqual([undefined, 'held', undefined, 'after']);
    expect(landingMark(undefined, 0)).toBeUndefined();
  });
});

it('the page scrolls on near the edges of the window only', () => {
  expect(scrollStep(10, 600)).toBeLessThan(0);
  expect(scrollStep(590, 600)).toBeGreaterThan(0);
  expect(scrollStep(300, 600)).toBe(0);
});
