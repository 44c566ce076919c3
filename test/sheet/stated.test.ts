import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CERTIFICATE_FACTOR,
  clubPad,
  divisorOf,
  hardToTwirl,
  MEANINGS,
  type Meaning,
  PLATEAU,
  SLIPS,
  type Stated,
  saidDb,
  shapeOf,
  shareWithin,
  standardDb,
} from '../../src/sheet/stated.ts';

const stated: fc.Arbitrary<Stated> = fc.record({
  meaning: fc.constantFrom(...MEANINGS),
  halfWidthDb: fc.double({ min: 0.01, max: 10, noNaN: true }),
  slip: fc.constantFrom(...SLIPS),
});

/** What each statement is divided by: GUM 4.3.7 and 4.3.9, H.1.3.4 for the wave, 4.3.3 for the certificate. */
const published: Readonly<Record<Meaning, number>> = {
  nothing: Math.sqrt(3),
  plateau: Math.sqrt(6 / (1 + PLATEAU ** 2)),
  middle: Math.sqrt(6),
  wave: Math.SQRT2,
  certificate: 2,
};

describe('a number behind a ±', () => {
  it('is divided by what the guide prints for its statement, at any size', () => {
    fc.assert(
      fc.property(stated, (of) => {
        expect(divisorOf(of)).toBeCloseTo(published[of.meaning], 10);
        expect(standardDb(of)).toBeCloseTo(of.halfWidthDb / published[of.meaning], 10);
      }),
    );
  });

  it('is a limit for all but the certificate: nothing lies beyond', () => {
    fc.assert(
      fc.property(stated, (of) => {
        const { shareBelow, limits } = shapeOf(of);
        const within = shareBelow(of.halfWidthDb) - shareBelow(-of.halfWidthDb);
        if (of.meaning === 'certificate') {
          expect(within).toBeCloseTo(0.9545, 4);
          expect(limits.upper).toBe(Number.POSITIVE_INFINITY);
        } else {
          expect(within).toBeCloseTo(1, 12);
          expect(limits.upper).toBeCloseTo(of.halfWidthDb, 12);
        }
      }),
    );
  });

  it('has shares within one and two u by hand', () => {
    const of = (meaning: Meaning): Stated => ({ ...clubPad(), meaning });
    expect(shareWithin(of('nothing'), 1)).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(shareWithin(of('middle'), 1)).toBeCloseTo(1 - (1 - 1 / Math.sqrt(6)) ** 2, 12);
    expect(shareWithin(of('wave'), 1)).toBeCloseTo(0.5, 12);
    expect(shareWithin(of('certificate'), 1)).toBeCloseTo(0.682689, 6);
    expect(shareWithin(of('nothing'), CERTIFICATE_FACTOR)).toBe(1);
    expect(shareWithin(of('middle'), CERTIFICATE_FACTOR)).toBeCloseTo(1 - (1 - 2 / Math.sqrt(6)) ** 2, 12);
  });
});

describe('a bar that is twirled', () => {
  it('is as hard to twirl as two lumps of half its weight at the standard uncertainty, whatever its shape', () => {
    for (const meaning of MEANINGS) {
      const of: Stated = { ...clubPad(), meaning };
      const lumps = 2 * 0.5 * standardDb(of) ** 2;
      expect(hardToTwirl(of) / lumps, meaning).toBeCloseTo(1, 3);
    }
  });

  it('has, if it is even, a mean square of a third of the largest: the pyramid in its box', () => {
    const pieces = 1000;
    const squares = Array.from({ length: pieces }, (_, piece) => ((piece + 0.5) / pieces) ** 2);
    const mean = squares.reduce((a, b) => a + b) / pieces;
    expect(mean).toBeCloseTo(1 / 3, 6);
    expect(hardToTwirl(clubPad()) / clubPad().halfWidthDb ** 2).toBeCloseTo(1 / 3, 6);
  });

  it('is four times as hard to twirl at twice the length', () => {
    fc.assert(
      fc.property(stated, (of) => {
        const twice = hardToTwirl({ ...of, halfWidthDb: 2 * of.halfWidthDb }, 200);
        expect(twice / hardToTwirl(of, 200)).toBeCloseTo(4, 6);
      }),
      { numRuns: 25 },
    );
  });
});

describe('a slip', () => {
  it('divides by its own number, whatever the paper means', () => {
    fc.assert(
      fc.property(stated, ({ meaning, halfWidthDb }) => {
        const said = (slip: Stated['slip']) => saidDb({ meaning, halfWidthDb, slip });
        expect(said('none')).toBeUndefined();
        expect(said('asStandard')).toBe(halfWidthDb);
        expect(said('asExpanded')).toBe(halfWidthDb / 2);
        expect(said('rootThree')).toBe(halfWidthDb / Math.sqrt(3));
      }),
    );
  });

  it('is none where it happens to be right', () => {
    const three: Stated = { ...clubPad(), slip: 'rootThree' };
    expect(saidDb(three)).toBeCloseTo(standardDb(three), 12);
    const two: Stated = { meaning: 'certificate', halfWidthDb: 0.4, slip: 'asExpanded' };
    expect(saidDb(two)).toBe(standardDb(two));
  });
});
