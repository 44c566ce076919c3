import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctionOf, roundsOf } from '#compute';
import { type Calibration, calibrationOf, correctionAt, found } from '../../src/borrow/calibration.ts';
import type { CheckedAlternation } from '../../src/borrow/checked.ts';
import {
  type Borrowed,
  borrowedLine,
  CLUB_READINGS,
  clubBorrowed,
  correctionFor,
  INFLUENCES,
  isCompared,
  laterResult,
  lenderExpanded,
  placesOf,
  readingsAlone,
  scatterOfRounds,
} from '../../src/sheet/borrowed.ts';

const within = fc.integer({ min: -92, max: 136 }).map((tenths) => tenths / 10);
const borrowed: fc.Arbitrary<Borrowed> = fc.record({
  readingDbm: within,
  lender: fc.integer({ min: 1, max: 100 }).map((n) => n / 100),
  months: fc.integer({ min: 0, max: 48 }),
  shared: fc.constant('whole'),
});

/** The same comparison as the bench takes it. */
function bench(of: Borrowed): Calibration {
  const checked: CheckedAlternation = {
    kind: 'alternation',
    notes: { name: '', lender: '', date: '', conditions: '' },
    along: 'level',
    lender: { form: 'rectangular', amount: of.lender, factor: 2, drift: 0 },
    influences: { ...INFLUENCES, other: 0 },
    earlier: undefined,
    claimed: undefined,
    places: placesOf().map(({ at }, index) => ({
      id: `p${index}`,
      at,
      rounds: roundsOf((CLUB_READINGS[index] ?? []).map(Number)),
    })),
    later: {
      reading: of.readingDbm,
      at: of.readingDbm,
      temperature: INFLUENCES.temperature,
      mismatch: INFLUENCES.mismatch,
      linearity: 0,
    },
  };
  const calibration = calibrationOf(checked);
  if (typeof calibration === 'string') throw new Error(`wish a calibration, got ${calibration}`);
  return calibration;
}

describe('the borrowed line', () => {
  it('is what the bench makes of the same readings: corrections, line and band', () => {
    fc.assert(
      fc.property(borrowed, (of) => {
        const calibration = bench(of);
        calibration.places.forEach(({ value, ownUncertainty }, index) => {
          expect(placesOf()[index]?.correction).toBeCloseTo(value, 12);
          expect(placesOf()[index]?.ownUncertainty).toBeCloseTo(ownUncertainty, 9);
        });
        expect(borrowedLine().slope).toBeCloseTo(calibration.line?.slope ?? Number.NaN, 9);
        const there = found(correctionAt(calibration, of.readingDbm));
        expect(correctionFor(of).estimate).toBeCloseTo(there.value, 9);
        expect(correctionFor(of).expanded).toBeCloseTo(there.propagation.expanded, 9);
      }),
      { numRuns: 10 },
    );
  });

  it('corrects a later reading as the bench does, on the day of the comparison', () => {
    fc.assert(
      fc.property(borrowed, (of) => {
        const { later } = bench(of);
        const own = laterResult({ ...of, months: 0 });
        expect(own.estimate).toBeCloseTo(later?.value ?? Number.NaN, 9);
        expect(own.expanded).toBeCloseTo(later?.propagation.expanded ?? Number.NaN, 9);
      }),
      { numRuns: 10 },
    );
  });

  it('ends where the comparison ended', () => {
    const { lower, upper } = borrowedLine().range;
    expect([lower, upper].map(isCompared)).toEqual([true, true]);
    for (const readingDbm of [lower - 0.01, upper + 0.01]) {
      expect(isCompared(readingDbm)).toBe(false);
      expect(() => correctionFor({ ...clubBorrowed(), readingDbm })).toThrow(
        'readingsAlone: the reading must lie within the levels',
      );
    }
  });
});

describe('the lender', () => {
  it('is never beaten, however well the two agree', () => {
    fc.assert(
      fc.property(borrowed, (of) => {
        expect(correctionFor(of).expanded).toBeGreaterThan(lenderExpanded(of));
        expect(laterResult(of).expanded).toBeGreaterThan(correctionFor(of).expanded);
      }),
    );
  });

  it('is no part of what the readings say by themselves', () => {
    fc.assert(
      fc.property(borrowed, borrowed, (of, other) => {
        expect(readingsAlone(of)).toEqual(readingsAlone({ ...other, readingDbm: of.readingDbm }));
      }),
    );
  });

  it('is made smaller than it is by whoever divides it', () => {
    fc.assert(
      fc.property(borrowed, (of) => {
        const averaged = correctionFor({ ...of, shared: 'averaged' });
        expect(averaged.expanded).toBeLessThan(correctionFor(of).expanded);
        expect(averaged.estimate).toBe(correctionFor(of).estimate);
      }),
    );
  });
});

describe('a round', () => {
  it('by hand: the mean of before and after, less one’s own', () => {
    const [first = []] = CLUB_READINGS;
    const corrections = [
      (-10.02 - 10.06) / 2 + 9.21,
      (-10.06 - 10.01) / 2 + 9.29,
      (-10.01 - 10.05) / 2 + 9.27,
    ];
    expect(placesOf()[0]?.correction).toBeCloseTo(corrections.reduce((a, b) => a + b) / 3, 12);
    expect(correctionOf(roundsOf(first.map(Number))).driftHalfWidth).toBeCloseTo(0.025, 12);
    expect(placesOf()[0]?.at).toBeCloseTo(-(9.21 + 9.29 + 9.27) / 3, 12);
  });

  it('has a scatter that is pooled over the levels, two degrees of freedom from each', () => {
    expect(scatterOfRounds().degreesOfFreedom).toBe(8);
  });
});

describe('months', () => {
  it('widen the band and leave the value', () => {
    fc.assert(
      fc.property(borrowed, (of) => {
        const [now, later] = [laterResult(of), laterResult({ ...of, months: of.months + 6 })];
        expect(later.expanded).toBeGreaterThan(now.expanded);
        expect(later.estimate).toBe(now.estimate);
      }),
    );
  });
});
