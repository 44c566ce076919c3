import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coordinate, linearScale } from '../../src/figures/linear-scale.ts';

const end = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const pair = fc.tuple(end, end).filter(([a, b]) => Math.abs(a - b) > 1e-3);

describe('a straight-line scale', () => {
  it('gives a value back from its coordinate', () => {
    fc.assert(
      fc.property(pair, pair, end, (domain, range, value) => {
        const scale = linearScale({ domain, range });
        expect(Math.abs(scale.invert(scale(value)) - value)).toBeLessThan(1e-6 * (1 + Math.abs(value)) * 1e4);
      }),
    );
  });

  it('puts the ends of the domain on the ends of the range', () => {
    fc.assert(
      fc.property(pair, pair, (domain, range) => {
        const scale = linearScale({ domain, range });
        expect(scale(domain[0])).toBeCloseTo(range[0], 6);
        expect(scale(domain[1])).toBeCloseTo(range[1], 6);
      }),
    );
  });

  it('runs backwards where the range does', () => {
    const scale = linearScale({ domain: [0, 10], range: [100, 0] });
    expect(scale(2.5)).toBe(75);
    expect(scale.invert(75)).toBe(2.5);
  });

  it('refuses a domain or a range without width', () => {
    expect(() => linearScale({ domain: [1, 1], range: [0, 5] })).toThrow(
      /linearScale: domain and range need a width, got 1, 1, 0, 5/,
    );
    expect(() => linearScale({ domain: [0, 1], range: [5, 5] })).toThrow(RangeError);
  });

  it('rounds coordinates to a hundredth', () => {
    expect(coordinate(1.23456)).toBe(1.23);
    expect(coordinate(-0.005)).toBe(-0);
    expect(coordinate(99.999)).toBe(100);
  });
});
