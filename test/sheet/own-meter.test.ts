import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  certificate,
  clubMeter,
  correctionAt,
  errorDb,
  knownTo,
  type MeterUse,
  TREATMENTS,
  verified,
} from '../../src/sheet/own-meter.ts';

const use: fc.Arbitrary<MeterUse> = fc.record({
  readingDbm: fc.integer({ min: -200, max: 100 }).map((tenths) => tenths / 10),
  months: fc.integer({ min: 0, max: 48 }),
  treatment: fc.constantFrom(...TREATMENTS),
  permissibleDb: fc.integer({ min: 2, max: 20 }).map((steps) => steps / 20),
});
const expanded = (of: MeterUse): number => {
  const found = knownTo(of);
  if (found === undefined) throw new Error('wish a band, got none');
  return found.propagation.expanded;
};

describe('a calibration', () => {
  it('leaves the error as it was: reading and correction add up to what is there', () => {
    fc.assert(
      fc.property(use, (of) => {
        expect(errorDb({ ...of, treatment: 'asRead' })).toBe(-correctionAt(of.readingDbm));
        expect(errorDb({ ...of, treatment: 'corrected' })).toBe(0);
      }),
    );
  });

  it('by hand: between two lines the correction is a proportion of theirs', () => {
    expect(correctionAt(-13)).toBeCloseTo(0.36 + 0.7 * (0.2 - 0.36), 12);
    expect(certificate().map(({ at }) => correctionAt(at))).toEqual([0.36, 0.2, 0.05, -0.1]);
  });
});

describe('turning the screw', () => {
  it('moves every reading alike, and is right at one level only', () => {
    fc.assert(
      fc.property(use, (of) => {
        const moved = errorDb({ ...of, treatment: 'adjusted' }) - errorDb({ ...of, treatment: 'asRead' });
        expect(moved).toBeCloseTo(0.05, 12);
      }),
    );
    expect(errorDb({ ...clubMeter(), readingDbm: 0, treatment: 'adjusted' })).toBe(0);
  });

  it('leaves no band and no verdict until the meter is calibrated again', () => {
    fc.assert(
      fc.property(use, (of) => {
        const turned = { ...of, treatment: 'adjusted' } as const;
        expect(knownTo(turned)).toBeUndefined();
        expect(verified(turned)).toBeUndefined();
      }),
    );
  });
});

describe('the band', () => {
  it('is wider the older the table', () => {
    fc.assert(
      fc.property(use, (of) => {
        fc.pre(of.treatment !== 'adjusted');
        expect(expanded({ ...of, months: of.months + 1 })).toBeGreaterThan(expanded(of));
      }),
    );
  });

  it('does not hang on whether the correction is used', () => {
    fc.assert(
      fc.property(use, (of) => {
        expect(expanded({ ...of, treatment: 'corrected' })).toBe(expanded({ ...of, treatment: 'asRead' }));
      }),
    );
  });

  it('is, by hand, certificate, drift and display squared and added, times 2', () => {
    const byHand = (months: number): number =>
      2 * Math.sqrt(0.05 ** 2 + ((0.1 * months) / 12) ** 2 / 3 + 0.1 ** 2 / 12);
    for (const months of [0, 6, 36])
      expect(expanded({ ...clubMeter(), months })).toBeCloseTo(byHand(months), 9);
  });
});

describe('verification', () => {
  it('is inside where all of the band keeps the limit, outside where none of it does, and else can’t tell', () => {
    fc.assert(
      fc.property(use, (of) => {
        fc.pre(of.treatment !== 'adjusted');
        const error = Math.abs(correctionAt(of.readingDbm));
        const [near, far] = [error - expanded(of), error + expanded(of)];
        // Where an end of the band meets the limit, the last bit decides.
        fc.pre([near, far].every((end) => Math.abs(end - of.permissibleDb) > 1e-9));
        const wish = far < of.permissibleDb ? 'inside' : near > of.permissibleDb ? 'outside' : 'cant-tell';
        expect(verified(of)?.verdict).toBe(wish);
      }),
    );
  });

  it('is asked of what the meter shows, corrected or not', () => {
    fc.assert(
      fc.property(use, (of) => {
        expect(verified({ ...of, treatment: 'corrected' })).toEqual(verified({ ...of, treatment: 'asRead' }));
      }),
    );
  });
});
