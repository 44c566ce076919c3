import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainDb, ohms, powerW } from '../../src/compute/quantity.ts';
import {
  directivityRange,
  mismatchLossDb,
  netPower,
  reflectionOfPowers,
  reflectionOfResistance,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  returnLossOfReflection,
  swrOfReflection,
} from '../../src/compute/reflection.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const reflection = fc.double({ min: 1e-6, max: 0.999, noNaN: true });

describe('reflection, standing-wave ratio and return loss', () => {
  it('bring each other back', () => {
    fc.assert(
      fc.property(reflection, (r) => {
        expectWithin(reflectionOfSwr(swrOfReflection(r)), r, 1e-12);
        expectNear(reflectionOfReturnLoss(returnLossOfReflection(r)), r, 1e-12);
      }),
    );
  });

  it('worsen together', () => {
    fc.assert(
      fc.property(reflection, (r) => {
        const worse = r + 0.5 * (1 - r);
        expect(swrOfReflection(worse)).toBeGreaterThan(swrOfReflection(r));
        expect(returnLossOfReflection(worse)).toBeLessThan(returnLossOfReflection(r));
        expect(mismatchLossDb(worse)).toBeGreaterThan(mismatchLossDb(r));
      }),
    );
  });

  it.each([
    [1, 17.391, 0.891],
    [3, 5.848, 0.708],
    [6, 3.01, 0.501],
    [9, 2.1, 0.355],
    [10, 1.925, 0.316],
    [12, 1.671, 0.251],
    [14, 1.499, 0.2],
    [15, 1.433, 0.178],
    [20, 1.222, 0.1],
    [25, 1.119, 0.056],
    [26, 1.106, 0.05], // printed 1.105; exact 1.10554
    [30, 1.065, 0.032],
  ])('a return loss of %f dB is SWR %f, reflection %f (handbook table)', (db, swr, r) => {
    expectPrinted(reflectionOfReturnLoss(db), r, 3);
    expectPrinted(swrOfReflection(reflectionOfReturnLoss(db)), swr, 3);
  });

  it.each([
    [1.05, 0.0244, 0.0595, 32.2557, 0.0026],
    [1.1, 0.0476, 0.2268, 26.4444, 0.0099],
    [1.2, 0.0909, 0.8264, 20.8279, 0.036],
    [1.3, 0.1304, 1.7013, 17.6921, 0.0745],
    [1.5, 0.2, 4, 13.9794, 0.1773],
    [1.6, 0.2308, 5.3254, 12.7364, 0.2377],
    [2, 0.3333, 11.1111, 9.5424, 0.5115],
    [2.5, 0.4286, 18.3673, 7.3595, 0.8814],
    [3, 0.5, 25, 6.0206, 1.2494],
    [5, 0.6667, 44.4444, 3.5218, 2.5527],
    [10, 0.8182, 66.9421, 1.743, 4.8073],
  ])(
    'SWR %f is reflection %f, %f %% back, return loss %f dB, mismatch loss %f dB',
    (swr, r, back, rl, ml) => {
      const exact = reflectionOfSwr(swr);
      expectPrinted(exact, r, 4);
      expectPrinted(100 * exact ** 2, back, 4);
      expectPrinted(returnLossOfReflection(exact), rl, 4);
      expectPrinted(mismatchLossDb(exact), ml, 4);
    },
  );

  it('have their ideal ends', () => {
    expect(reflectionOfSwr(1)).toBe(0);
    expect(swrOfReflection(0)).toBe(1);
    expect(returnLossOfReflection(1)).toBe(0);
    expect(reflectionOfReturnLoss(0)).toBe(1);
    expect(mismatchLossDb(0)).toBe(0);
  });
});

describe('a pure resistance', () => {
  it('reflects alike whether it is too large or too small by the same factor', () => {
    const reference = ohms(50);
    expectNear(reflectionOfResistance({ resistance: ohms(100), reference }), 1 / 3);
    expectNear(reflectionOfResistance({ resistance: ohms(25), reference }), 1 / 3);
    expect(reflectionOfResistance({ resistance: ohms(50), reference })).toBe(0);
  });
});

describe('forward and reflected power', () => {
  const whip = { forward: powerW(5), reflected: powerW(0.2) };

  it('of 5.0 and 0.20 W leave 4.8 W at SWR 1.50, return loss 13.98 dB', () => {
    expectNear(netPower(whip), 4.8);
    expectPrinted(swrOfReflection(reflectionOfPowers(whip)), 1.5, 2);
    expectPrinted(returnLossOfReflection(reflectionOfPowers(whip)), 13.98, 2);
    expectPrinted(10 * Math.log10(netPower(whip) / 5), -0.18, 2);
  });

  it('lose just the mismatch loss', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), reflection, (watts, r) => {
        const powers = { forward: powerW(watts), reflected: powerW(watts * r * r) };
        expectWithin(
          10 * Math.log10(netPower(powers) / watts),
          -mismatchLossDb(reflectionOfPowers(powers)),
          1e-9,
        );
      }),
    );
  });

  it('may be equal: all comes back', () => {
    const all = { forward: powerW(3), reflected: powerW(3) };
    expect(netPower(all)).toBe(0);
    expect(reflectionOfPowers(all)).toBe(1);
  });

  it('are refused without forward power, or with more back than forward', () => {
    const none = { forward: powerW(0), reflected: powerW(0) };
    const more = { forward: powerW(1), reflected: powerW(2) };
    expect(() => netPower(none)).toThrow(new RangeError('netPower: forward must be > 0, got 0'));
    expect(() => netPower(more)).toThrow(
      new RangeError('netPower: reflected must not be above forward, got "2 above 1"'),
    );
    expect(() => reflectionOfPowers(none)).toThrow(
      new RangeError('reflectionOfPowers: forward must be > 0, got 0'),
    );
    expect(() => reflectionOfPowers(more)).toThrow(
      /^reflectionOfPowers: reflected must not be above forward/,
    );
  });
});

describe('the range that a directivity leaves', () => {
  const range = (swr: number, directivityDb: number) =>
    directivityRange({ reflection: reflectionOfSwr(swr), directivityDb: gainDb(directivityDb) });

  it('is SWR 1.34 to 1.69 for 1.50, and 1.09 to 1.37 for 1.22, at 25 dB', () => {
    expectPrinted(swrOfReflection(range(1.5, 25).lower), 1.34, 2);
    expectPrinted(swrOfReflection(range(1.5, 25).upper), 1.69, 2);
    expectPrinted(swrOfReflection(range(1.22, 25).lower), 1.09, 2);
    expectPrinted(swrOfReflection(range(1.22, 25).upper), 1.37, 2);
  });

  it('shrinks onto the reading as the directivity grows, and always holds it', () => {
    fc.assert(
      fc.property(reflection, fc.double({ min: 0, max: 100, noNaN: true }), (r, d) => {
        const wide = directivityRange({ reflection: r, directivityDb: gainDb(d) });
        const narrow = directivityRange({ reflection: r, directivityDb: gainDb(d + 10) });
        expect(wide.lower).toBeLessThanOrEqual(narrow.lower);
        expect(wide.upper).toBeGreaterThanOrEqual(narrow.upper);
        expect(narrow.lower).toBeLessThanOrEqual(r);
        expect(narrow.upper).toBeGreaterThanOrEqual(r);
      }),
    );
  });

  it('stays between nothing and all', () => {
    expect(directivityRange({ reflection: 0.1, directivityDb: gainDb(0) })).toEqual({ lower: 0, upper: 1 });
  });
});

describe('forbidden reflections', () => {
  it.each([-0.1, 1, Number.NaN])('a reflection of %s has no SWR, no mismatch loss, no range', (bad) => {
    const wish = `reflection must be from 0 to below 1, got ${bad}`;
    expect(() => swrOfReflection(bad)).toThrow(new RangeError(`swrOfReflection: ${wish}`));
    expect(() => mismatchLossDb(bad)).toThrow(new RangeError(`mismatchLossDb: ${wish}`));
    expect(() => directivityRange({ reflection: bad, directivityDb: gainDb(20) })).toThrow(
      new RangeError(`directivityRange: ${wish}`),
    );
  });

  it.each([0, 1.01, Number.NaN])('a reflection of %s has no return loss', (bad) => {
    expect(() => returnLossOfReflection(bad)).toThrow(
      new RangeError(`returnLossOfReflection: reflection must be above 0, up to 1, got ${bad}`),
    );
  });

  it.each([0.99, Number.POSITIVE_INFINITY, Number.NaN])('an SWR of %s is refused', (bad) => {
    expect(() => reflectionOfSwr(bad)).toThrow(
      new RangeError(`reflectionOfSwr: swr must be >= 1, got ${bad}`),
    );
  });

  it('a negative return loss or directivity is refused', () => {
    expect(() => reflectionOfReturnLoss(-1)).toThrow(
      new RangeError('reflectionOfReturnLoss: returnLossDb must be >= 0, got -1'),
    );
    expect(() => directivityRange({ reflection: 0.1, directivityDb: gainDb(-1) })).toThrow(
      new RangeError('directivityRange: directivityDb must be >= 0, got -1'),
    );
  });
});
