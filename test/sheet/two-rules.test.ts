import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  claimOf,
  clubFrame,
  differenceMm,
  KNOWN,
  longestThatFitsMm,
  misfitMm,
  PLAY_MM,
  type TwoRules,
} from '../../src/sheet/two-rules.ts';

const rules: fc.Arbitrary<TwoRules> = fc.record({
  lengthMm: fc.integer({ min: 1, max: 2000 }),
  firstPercent: fc.integer({ min: -15, max: 15 }).map((hundredths) => hundredths / 100),
  secondPercent: fc.integer({ min: -15, max: 15 }).map((hundredths) => hundredths / 100),
  stepMm: fc.constantFrom(1, 0.5, 0.1),
  known: fc.constantFrom(...KNOWN),
});
const claim = (of: TwoRules): number => claimOf(of).propagation.expanded;

describe('a misfit', () => {
  it('grows in proportion to the length', () => {
    fc.assert(
      fc.property(rules, fc.integer({ min: 2, max: 9 }), (of, times) => {
        expect(differenceMm({ ...of, lengthMm: times * of.lengthMm })).toBeCloseTo(
          times * differenceMm(of),
          9,
        );
      }),
    );
  });

  it('is as it was, turned round, when the rules are exchanged, and nothing where they err alike', () => {
    fc.assert(
      fc.property(rules, (of) => {
        const turned = { ...of, firstPercent: of.secondPercent, secondPercent: of.firstPercent };
        expect(differenceMm(turned)).toBeCloseTo(-differenceMm(of), 12);
        expect(Math.abs(differenceMm({ ...of, firstPercent: of.secondPercent }))).toBe(0);
      }),
    );
  });

  it('does not ask how fine the marks are', () => {
    fc.assert(
      fc.property(rules, (of) => {
        expect(misfitMm({ ...of, stepMm: 0.1 })).toBe(misfitMm({ ...of, stepMm: 1 }));
      }),
    );
  });

  it('just reaches the play at the longest that fits', () => {
    fc.assert(
      fc.property(rules, (of) => {
        fc.pre(of.firstPercent !== of.secondPercent);
        expect(Math.abs(differenceMm({ ...of, lengthMm: longestThatFitsMm(of) }))).toBeCloseTo(PLAY_MM, 9);
      }),
    );
    expect(longestThatFitsMm({ ...clubFrame(), firstPercent: -0.06 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('is gone where both rules are corrected', () => {
    expect(misfitMm({ ...clubFrame(), known: 'compared' })).toBe(0);
    // 0.04 % too much and 0.06 % too little are 0.1 % of 600 mm apart.
    expect(misfitMm(clubFrame())).toBeCloseTo(0.6, 12);
  });
});

describe('a claim', () => {
  it('does not know where the error is', () => {
    fc.assert(
      fc.property(rules, (of) => {
        expect(claim({ ...of, firstPercent: 0.1, secondPercent: -0.1 })).toBe(claim(of));
      }),
    );
  });

  it('by the marks alone is the same at every length; by anything more it grows', () => {
    fc.assert(
      fc.property(rules, (of) => {
        const twice = { ...of, lengthMm: 2 * of.lengthMm };
        if (of.known === 'nothing') expect(claim(twice)).toBeCloseTo(claim(of), 12);
        else expect(claim(twice)).toBeGreaterThan(claim(of));
      }),
    );
  });

  it('is, by hand, the marks and the scales squared and added, times 2', () => {
    const of = { ...clubFrame(), lengthMm: 1500 };
    const marks = (step: number): number => (2 * step ** 2) / 12;
    expect(claim(of)).toBeCloseTo(2 * Math.sqrt(marks(1)), 9);
    // 0.08 % of 1500 mm are limits of 1.2 mm, each over root three.
    expect(claim({ ...of, known: 'promise' })).toBeCloseTo(2 * Math.sqrt(marks(1) + (2 * 1.2 ** 2) / 3), 9);
    // U = 0.01 % of 1500 mm, k = 2: standard uncertainties of 0.075 mm.
    expect(claim({ ...of, known: 'compared', stepMm: 0.1 })).toBeCloseTo(
      2 * Math.sqrt(marks(0.1) + 2 * 0.075 ** 2),
      9,
    );
  });

  it('by the makers’ promise holds for every rule that keeps it at the usual worst', () => {
    // Both at the end of what is promised, against each other: more than U, and no more than the limits.
    const worst = { ...clubFrame(), lengthMm: 1000, firstPercent: 0.08, secondPercent: -0.08 } as const;
    const result = claimOf({ ...worst, known: 'promise' });
    expect(differenceMm(worst)).toBeLessThanOrEqual(result.worstCase.interval.upper);
    expect(result.worstCase.unlimited).toEqual([]);
  });
});
