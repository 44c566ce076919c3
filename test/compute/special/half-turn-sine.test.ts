import fc from 'fast-check';
import { expect, test } from 'vitest';
import { halfTurnSine } from '../../../src/compute/special/half-turn-sine.ts';

test('a half-turn sine is the sine, from -1 to 1', () => {
  fc.assert(
    fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (t) => {
      expect(Math.abs(halfTurnSine(t) - Math.sin((Math.PI * t) / 2))).toBeLessThan(5e-16);
    }),
  );
});
