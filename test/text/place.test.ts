import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestDecimals } from '../../src/text/place.ts';

describe('the fewest decimals of a stated value', () => {
  it('give it back as it was typed, and one fewer does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 0, max: 5 }), (digits, places) => {
        const value = digits / 10 ** places;
        const decimals = fewestDecimals(value, 8);
        expect(Number(value.toFixed(decimals))).toBe(value);
        expect(decimals).toBeLessThanOrEqual(places);
        if (decimals > 0) expect(Number(value.toFixed(decimals - 1))).not.toBe(value);
      }),
    );
  });

  it('are no more than wanted where a value has no end', () => {
    expect(fewestDecimals(1 / 3, 4)).toBe(4);
    expect(fewestDecimals(7, 4)).toBe(0);
    expect(fewestDecimals(0.125, 4)).toBe(3);
  });
});
