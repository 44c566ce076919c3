import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { componentOf, normal, propagate, type SumModel } from '#compute';
import { limits } from '../../src/sheet/link.ts';
import {
  asIndependent,
  COMBINATIONS,
  clubPair,
  correlationOfPair,
  type SharedPair,
  timesCounted,
  withCause,
} from '../../src/sheet/shared-cause.ts';

const halfWidth = fc.integer({ min: 0, max: 40 }).map((steps) => steps / 20);
const pairs: fc.Arbitrary<SharedPair> = fc.record({
  combined: fc.constantFrom(...COMBINATIONS),
  ownDb: halfWidth,
  sharedDb: halfWidth,
});
const WEIGHTS = { sum: [1, 1], difference: [1, -1], mean: [0.5, 0.5] } as const;
const expanded = (pair: SharedPair): number => withCause(pair).propagation.expanded;
const apart = (pair: SharedPair): number => asIndependent(pair).propagation.expanded;

/** The same by a correlation coefficient between two values instead of a line for the cause. */
function byCoefficient({ combined, ownDb, sharedDb }: SharedPair): number {
  const u = Math.hypot(ownDb, sharedDb) / Math.sqrt(3);
  const inputs = ['first', 'second'].map((id) => ({
    id,
    distribution: normal({ mean: 0, standardDeviation: u }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  }));
  const r = correlationOfPair({ combined, ownDb, sharedDb });
  const model: SumModel = {
    kind: 'sum',
    constant: 0,
    inputs,
    sensitivities: WEIGHTS[combined],
    correlations: [{ a: 'first', b: 'second', r }],
  };
  return propagate({ model, coverageFactor: 2 }).expanded;
}

describe('two values with a common cause', () => {
  it('come out the same with a line for the cause as with a correlation coefficient', () => {
    fc.assert(
      fc.property(pairs, (pair) => {
        fc.pre(pair.ownDb + pair.sharedDb > 0);
        expect(expanded(pair)).toBeCloseTo(byCoefficient(pair), 7);
      }),
    );
  });

  it('come out the same as by one variable that both inputs are tied to', () => {
    fc.assert(
      fc.property(pairs, ({ combined, ownDb, sharedDb }) => {
        const tied = ['first', 'second'].map((id) => ({
          ...componentOf({ id: `${id}, shared`, statement: limits(sharedDb), unit: 'dB' }),
          cause: 'batch',
        }));
        const own = ['first', 'second'].map((id) =>
          componentOf({ id, statement: limits(ownDb), unit: 'dB' }),
        );
        const sensitivities = [...WEIGHTS[combined], ...WEIGHTS[combined]];
        const model: SumModel = { kind: 'sum', constant: 0, inputs: [...own, ...tied], sensitivities };
        expect(expanded({ combined, ownDb, sharedDb })).toBeCloseTo(
          propagate({ model, coverageFactor: 2 }).expanded,
          7,
        );
      }),
    );
  });

  it('are, by hand, squared and added, the shared part counted as often as it stands in the result', () => {
    fc.assert(
      fc.property(pairs, (pair) => {
        const { combined, ownDb, sharedDb } = pair;
        const [first, second] = WEIGHTS[combined];
        const variance = (ownDb ** 2 * (first ** 2 + second ** 2) + (sharedDb * (first + second)) ** 2) / 3;
        expect(expanded(pair)).toBeCloseTo(2 * Math.sqrt(variance), 7);
      }),
    );
  });

  it('are a sum that is wider, and a difference that is narrower, than of strangers', () => {
    fc.assert(
      fc.property(pairs, (pair) => {
        const none = pair.sharedDb === 0;
        const more = (combined: SharedPair['combined']) =>
          expanded({ ...pair, combined }) - apart({ ...pair, combined });
        if (none) for (const combined of COMBINATIONS) expect(more(combined)).toBeCloseTo(0, 9);
        else {
          expect(more('sum')).toBeGreaterThan(0);
          expect(more('mean')).toBeGreaterThan(0);
          expect(more('difference')).toBeLessThan(0);
        }
      }),
    );
  });

  it('have a difference that does not know what is shared, and a mean that is half the sum', () => {
    fc.assert(
      fc.property(pairs, halfWidth, (pair, other) => {
        const difference = { ...pair, combined: 'difference' } as const;
        expect(expanded({ ...difference, sharedDb: other })).toBe(expanded(difference));
        expect(expanded({ ...pair, combined: 'mean' })).toBeCloseTo(
          expanded({ ...pair, combined: 'sum' }) / 2,
          9,
        );
      }),
    );
  });
});

describe('the worst case', () => {
  it('of a sum is the same whether the cause is seen or not, and of a difference leaves it out', () => {
    fc.assert(
      fc.property(pairs, (pair) => {
        const upper = (of: SharedPair, found: typeof withCause) => found(of).worstCase.interval.upper;
        const sum = { ...pair, combined: 'sum' } as const;
        const difference = { ...pair, combined: 'difference' } as const;
        expect(upper(sum, withCause)).toBeCloseTo(upper(sum, asIndependent), 12);
        expect(upper(difference, withCause)).toBeCloseTo(2 * pair.ownDb, 12);
        expect(upper(difference, asIndependent)).toBeCloseTo(2 * (pair.ownDb + pair.sharedDb), 12);
      }),
    );
  });
});

describe('the correlation coefficient', () => {
  it('goes from 0 with nothing shared to 1 with nothing of one’s own', () => {
    fc.assert(
      fc.property(pairs, (pair) => {
        const r = correlationOfPair(pair);
        expect(r).toBeGreaterThanOrEqual(0);
        expect(r).toBeLessThanOrEqual(1);
      }),
    );
    expect(correlationOfPair({ ...clubPair(), sharedDb: 0 })).toBe(0);
    expect(correlationOfPair({ ...clubPair(), ownDb: 0 })).toBe(1);
    expect(correlationOfPair({ ...clubPair(), ownDb: 0, sharedDb: 0 })).toBe(0);
  });

  it('of the club’s pads is 0.8: 0.16 of 0.20', () => {
    expect(correlationOfPair(clubPair())).toBeCloseTo(0.8, 12);
    expect(COMBINATIONS.map(timesCounted)).toEqual([2, 0, 1]);
  });
});
