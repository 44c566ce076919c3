import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byName } from '../../../src/bench/instruments/by-name.ts';

describe('the order of names', () => {
  it('is that of their numbers where they have any, and minds no capitals', () => {
    const names = ['pad 10', 'Pad 9', 'Cable', 'Pad 9 b', 'Pad', 'meter'];
    expect(names.toSorted(byName)).toEqual(['Cable', 'meter', 'Pad', 'Pad 9', 'Pad 9 b', 'pad 10']);
  });

  it('turns round with its names, and holds none before itself', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (one, other) => {
        expect(Math.sign(byName(one, other))).toBe(0 - Math.sign(byName(other, one)));
        expect(byName(one, one)).toBe(0);
      }),
    );
  });

  it('holds for three what it holds for two', () => {
    const name = fc
      .array(fc.constantFrom('a', 'B', '7', '10', ' '), { maxLength: 4 })
      .map((all) => all.join(''));
    fc.assert(
      fc.property(name, name, name, (a, b, c) => {
        if (byName(a, b) <= 0 && byName(b, c) <= 0) expect(byName(a, c)).toBeLessThanOrEqual(0);
      }),
    );
  });
});
