import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundAbove, spread } from '../../src/figures/spread.ts';

const places = fc
  .array(fc.double({ min: -500, max: 500, noNaN: true }), { maxLength: 8 })
  .map((list) => list.toSorted((a, b) => a - b));
const least = fc.double({ min: 0.1, max: 60, noNaN: true });

describe('labels spread beside their marks', () => {
  it('keep their order and the least distance', () => {
    fc.assert(
      fc.property(places, least, (marks, distance) => {
        const labels = spread(marks, distance);
        expect(labels).toHaveLength(marks.length);
        labels.slice(1).forEach((label, index) => {
          expect(label - (labels[index] ?? 0)).toBeGreaterThanOrEqual(distance - 1e-6);
        });
      }),
    );
  });

  it('stay where there is room', () => {
    fc.assert(
      fc.property(places, (marks) => {
        const apart = marks.map((mark, index) => mark + 60 * index);
        spread(apart, 60).forEach((label, index) => {
          expect(Math.abs(label - (apart[index] ?? 0))).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it('move as far up as down: their mean stays', () => {
    fc.assert(
      fc.property(places, least, (marks, distance) => {
        const sum = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0);
        expect(Math.abs(sum(spread(marks, distance)) - sum(marks))).toBeLessThan(1e-6);
      }),
    );
  });

  it('of three marks in one place stand above, on and below it', () => {
    expect(spread([10, 10, 10], 20)).toEqual([-10, 10, 30]);
  });
});

describe('a round number above', () => {
  it('is at least the value, at most twice it, and stays where it is', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (value) => {
        const round = roundAbove(value);
        expect(round).toBeGreaterThanOrEqual(value * (1 - 1e-9));
        expect(round).toBeLessThanOrEqual(2 * value);
        expect(roundAbove(round)).toBe(round);
      }),
    );
  });

  it('is one of 1, 1.5, 2, 3, 4, 5, 6, 8 in its decade', () => {
    expect([0.11, 1.2, 7.9, 8.1, 55, 994].map(roundAbove)).toEqual([0.15, 1.5, 8, 10, 60, 1000]);
    expect(() => roundAbove(0)).toThrow('roundAbove: value must be > 0, got 0');
  });
});
