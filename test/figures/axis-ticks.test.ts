import { ticks } from 'd3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelTicks, powerTicks, spaced, tickDecimals } from '../../src/figures/axis-ticks.ts';

describe('ticks of an axis that is even in decibels and uneven in watts', () => {
  it('stay within the ends, ascending, whatever the ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e3, noNaN: true }),
        fc.double({ min: 1.02, max: 1e9, noNaN: true }),
        (lower, ratio) => {
          const upper = lower * ratio;
          const ticks = powerTicks({ lower, upper, count: 6 });
          expect(ticks.every((tick) => tick >= lower && tick <= upper)).toBe(true);
          expect(ticks).toEqual([...ticks].sort((a, b) => a - b));
          expect(new Set(ticks).size).toBe(ticks.length);
        },
      ),
    );
  });

  it('are 1, 2, 5 a decade where the ends are far apart', () => {
    expect(powerTicks({ lower: 0.9, upper: 21, count: 6 })).toEqual([1, 2, 5, 10, 20]);
  });

  it('are one a decade where there are many decades', () => {
    expect(powerTicks({ lower: 1e-6, upper: 10, count: 6 })).toEqual([
      1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.1, 1, 10,
    ]);
  });

  it('are evenly round where the ends are near', () => {
    expect(powerTicks({ lower: 0.4, upper: 0.7, count: 6 })).toEqual([0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7]);
  });

  it('refuse ends that are not positive and in order', () => {
    expect(() => powerTicks({ lower: 0, upper: 1, count: 3 })).toThrow(
      /powerTicks: 0 < lower < upper, got 0, 1/,
    );
    expect(() => powerTicks({ lower: 2, upper: 1, count: 3 })).toThrow(RangeError);
  });
});

describe('ticks in levels', () => {
  it('are round', () =>
    expect(levelTicks({ lower: 25.6, upper: 28.6, count: 6 })).toEqual([26, 26.5, 27, 27.5, 28, 28.5]));

  it('say as many decimals as tell neighbours apart', () => {
    expect(tickDecimals([26, 26.5, 27])).toBe(1);
    expect(tickDecimals([26, 27])).toBe(0);
    expect(tickDecimals([0.01, 0.02])).toBe(2);
    expect(tickDecimals([10, 20])).toBe(0);
    expect(tickDecimals([27.1])).toBe(1);
    expect(tickDecimals([])).toBe(1);
    expect(tickDecimals([0, 1e-7])).toBe(4);
  });
});

describe('room between the texts of ticks', () => {
  it('is kept by leaving the later of two that would touch without its text', () => {
    expect(spaced([{ x: 0 }, { x: 30 }, { x: 50 }, { x: 101 }], 50)).toEqual([
      { x: 0, named: true },
      { x: 30, named: false },
      { x: 50, named: true },
      { x: 101, named: true },
    ]);
  });

  it('lets all be named that have room', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (count) => {
        const marks = Array.from({ length: count }, (_, index) => ({ x: index * 40 }));
        expect(spaced(marks, 40)).toEqual(marks.map((mark) => ({ ...mark, named: true })));
      }),
    );
  });
});

describe('round levels', () => {
  it('are those that the library of scales chooses, to the last bit', () => {
    const end = fc.double({ min: -300, max: 300, noNaN: true });
    const width = fc.double({ min: 1e-3, max: 400, noNaN: true });
    fc.assert(
      fc.property(end, width, fc.integer({ min: 3, max: 12 }), (lower, across, count) => {
        const upper = lower + across;
        expect(levelTicks({ lower, upper, count })).toEqual(ticks(lower, upper, count));
      }),
      { numRuns: 1000 },
    );
  });
});
