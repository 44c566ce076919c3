import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeClaimOf } from '../../src/sheet/evaluated-blocks.ts';
import {
  COUNTED,
  type Comparison,
  claimOf,
  clubBlocks,
  differenceUm,
  endsOf,
  gradeLimitUm,
  isCovered,
  KNOWN,
  lengthsOf,
  NOMINAL_MM,
} from '../../src/sheet/gauge-blocks.ts';

const hundredths = (most: number) => fc.integer({ min: -most, max: most }).map((n) => n / 100);
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const comparison: fc.Arbitrary<Comparison> = fc.record({
  deviationsUm: fc.array(hundredths(60), { minLength: 1, maxLength: 4 }),
  singleUm: hundredths(60),
  offUm: hundredths(15),
  stackC: tenths(15, 35),
  singleC: tenths(15, 35),
  stackPpm: tenths(0, 25),
  singlePpm: tenths(0, 25),
  known: fc.constantFrom(...KNOWN),
  counted: fc.constantFrom(...COUNTED),
});
const expanded = (of: Comparison): number => claimOf(of).propagation.expanded;
const calm: Comparison = { ...clubBlocks(), stackC: 20 };
const four: Comparison = { ...calm, deviationsUm: [0.12, -0.05, 0.08, 0.1] };

describe('what a comparison shows', () => {
  it('is, by hand, deviations, one film fewer than blocks, and warmth on both sides', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        const { deviationsUm, offUm, singleUm } = of;
        const count = deviationsUm.length;
        const stack =
          deviationsUm.reduce((a, b) => a + b) +
          count * offUm +
          (count - 1) * 0.01 +
          0.1 * of.stackPpm * (of.stackC - 20);
        const single = singleUm + 0.1 * of.singlePpm * (of.singleC - 20);
        expect(differenceUm(of)).toBeCloseTo(stack - single, 9);
        expect(endsOf(of).stack.end).toBeCloseTo(stack, 9);
        expect(endsOf(of).single.cold).toBeCloseTo(singleUm, 9);
      }),
    );
    // 0.15 + 0.02 + 2.30 - 0.10 um.
    expect(differenceUm(clubBlocks())).toBeCloseTo(2.37, 12);
  });

  it('does not ask how warm the room is where both sides are alike', () => {
    fc.assert(
      fc.property(comparison, tenths(15, 35), (of, celsius) => {
        const alike = { ...of, singlePpm: of.stackPpm };
        const at = (c: number) => differenceUm({ ...alike, stackC: c, singleC: c });
        expect(at(celsius)).toBeCloseTo(at(20), 9);
      }),
    );
  });

  it('does not ask what anybody knows or counts', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        expect(differenceUm({ ...of, known: 'grade', counted: 'each' })).toBe(differenceUm(of));
      }),
    );
  });
});

describe('a claim', () => {
  it('does not know what the certificate of the set is off by', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        const right = { ...of, offUm: 0 };
        expect(claimOf(of).estimate).toBe(claimOf(right).estimate);
        expect(expanded(of)).toBe(expanded(right));
      }),
    );
  });

  it('is right to a hair where nothing is left out', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        const all = { ...of, offUm: 0, known: 'own', counted: 'each' } as const;
        expect(claimOf(all).estimate).toBeCloseTo(differenceUm(all), 9);
        expect(isCovered(all)).toBe(true);
      }),
    );
  });

  it('is never narrower for counting warmth, or for a certificate in common', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        const nothing = expanded({ ...of, counted: 'nothing' });
        expect(expanded({ ...of, counted: 'each' })).toBeGreaterThanOrEqual(nothing - 1e-12);
        expect(expanded({ ...of, known: 'shared' })).toBeGreaterThanOrEqual(
          expanded({ ...of, known: 'own' }) - 1e-12,
        );
      }),
    );
  });

  it('is, by hand, certificates as squares where each has its own, in full where one is for all', () => {
    const film = 0.01 ** 2 / 3;
    expect(expanded(four)).toBeCloseTo(2 * Math.sqrt(5 * 0.05 ** 2 + 3 * film), 12);
    expect(expanded({ ...four, known: 'shared' })).toBeCloseTo(
      2 * Math.sqrt((4 * 0.05) ** 2 + 0.05 ** 2 + 3 * film),
      12,
    );
  });

  it('with thermometers takes their limits and those of both coefficients along, by hand', () => {
    const of: Comparison = { ...clubBlocks(), counted: 'each' };
    // 1.15 um/K within 0.1 K on each side; 100 mm x 1e-6/K x 2 K on the warm side.
    const squares = 4 * 0.05 ** 2 + (2 * 0.01 ** 2 + 2 * 0.115 ** 2 + 0.2 ** 2) / 3;
    expect(expanded(of)).toBeCloseTo(2 * Math.sqrt(squares), 12);
  });

  it('with the grade alone has a worst case: all limits at once', () => {
    const { worstCase, propagation } = claimOf({ ...calm, known: 'grade' });
    // 50, 30 and 20 mm: 0.4, 0.4 and 0.3 um; the single one 0.6; two films of 0.01 within 0.01.
    expect(worstCase.interval.lower).toBeCloseTo(-1.7, 12);
    expect(worstCase.interval.upper).toBeCloseTo(1.74, 12);
    expect(worstCase.unlimited).toEqual([]);
    const squares = (2 * 0.4 ** 2 + 0.3 ** 2 + 0.6 ** 2 + 2 * 0.01 ** 2) / 3;
    expect(propagation.expanded).toBeCloseTo(2 * Math.sqrt(squares), 12);
  });

  it('with certificates has none', () => {
    expect(claimOf(calm).worstCase.unlimited).toHaveLength(4);
    expect(claimOf({ ...calm, known: 'shared' }).worstCase.unlimited).toHaveLength(4);
  });

  it('fails for hands, for names taken as lengths, and for one certificate counted as four', () => {
    expect(isCovered(clubBlocks())).toBe(false);
    expect(isCovered(calm)).toBe(true);
    expect(isCovered({ ...four, known: 'nominal' })).toBe(false);
    const off = { ...four, offUm: 0.08 };
    expect(isCovered(off)).toBe(false);
    expect(isCovered({ ...off, known: 'shared' })).toBe(true);
  });
});

describe('the whole distribution of a claim', () => {
  it('lies within the worst case where there is one, and about the same middle', () => {
    fc.assert(
      fc.property(comparison, (of) => {
        const grade = { ...of, known: 'grade' } as const;
        const { interval } = wholeClaimOf(grade);
        const { worstCase, estimate } = claimOf(grade);
        expect(interval.lower).toBeGreaterThanOrEqual(worstCase.interval.lower - 1e-9);
        expect(interval.upper).toBeLessThanOrEqual(worstCase.interval.upper + 1e-9);
        expect((interval.lower + interval.upper) / 2).toBeCloseTo(estimate, 6);
      }),
      { numRuns: 30 },
    );
  });

  it('is nearly the strip where bells outweigh the rest, as of certificates', () => {
    const { interval, curve } = wholeClaimOf(four);
    expect((interval.upper - interval.lower) / 2).toBeCloseTo(expanded(four), 3);
    expect(curve.length).toBeGreaterThan(50);
    expect(curve.length).toBeLessThan(70);
  });

  it('is a point without a curve where nothing is uncertain', () => {
    const { interval, curve } = wholeClaimOf({ ...calm, deviationsUm: [0.1], known: 'nominal' });
    expect(interval).toEqual({ lower: 0, upper: 0 });
    expect(curve).toEqual([]);
  });
});

describe('the blocks', () => {
  it('of every stack add up to the nominal length, longest first', () => {
    for (const count of [1, 2, 3, 4]) {
      const lengths = lengthsOf(count);
      expect(lengths).toHaveLength(count);
      expect(lengths.reduce((a, b) => a + b)).toBe(NOMINAL_MM);
      expect(lengths.toSorted((a, b) => b - a)).toEqual([...lengths]);
    }
    expect(() => lengthsOf(5)).toThrow(new RangeError('lengthsOf: count must be 1 to 4, got 5'));
  });

  it('have limits of grade 1 that grow with the length (ISO 3650, from memory)', () => {
    expect([10, 20, 30, 50, 60, 100].map(gradeLimitUm)).toEqual([0.2, 0.3, 0.4, 0.4, 0.5, 0.6]);
    expect(() => gradeLimitUm(101)).toThrow(
      new RangeError('gradeLimitUm: lengthMm must be up to 100, got 101'),
    );
  });
});
