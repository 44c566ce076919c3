import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normal, normalShareBelow, type Rule, randomFrom } from '#compute';
import {
  clubHeld,
  distanceInU,
  type HeldAgainst,
  judgedBy,
  riskAtEdge,
  sortedBy,
} from '../../src/sheet/conformity.ts';

const U_CLUB = 0.345;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rule: fc.Arbitrary<Rule> = fc.oneof(
  fc.constant({ kind: 'simple' } as const),
  fc.record({ kind: fc.constant('guardBand' as const), multiplier: number(0.05, 2) }),
  fc.record({ kind: fc.constant('probability' as const), required: number(0.55, 0.999) }),
);
const held: fc.Arbitrary<HeldAgainst> = fc.record({
  estimate: number(24, 30),
  standardUncertainty: number(0.03, 1),
  specification: fc.record({ lower: number(24.5, 26.5), upper: number(27.5, 29.5) }),
  rule,
  spread: number(0.1, 2),
});

describe('a value held against two limits', () => {
  it('conforms with a probability that is, by hand, the bell between them', () => {
    fc.assert(
      fc.property(held, (of) => {
        const { estimate, standardUncertainty: u, specification } = of;
        const { lower = 0, upper = 0 } = specification;
        const byHand = normalShareBelow((upper - estimate) / u) - normalShareBelow((lower - estimate) / u);
        expect(judgedBy(of).probabilityOfConformity).toBeCloseTo(byHand, 9);
      }),
    );
  });

  it('is inside by a guard band of U where all of the strip is, outside where none of it is', () => {
    fc.assert(
      fc.property(held, (of) => {
        const { estimate, standardUncertainty: u, specification } = of;
        const { lower = 0, upper = 0 } = specification;
        const [low, high] = [estimate - 2 * u, estimate + 2 * u];
        // Where an end of the strip meets a limit, the last bit decides.
        fc.pre([low - lower, high - lower, low - upper, high - upper].every((d) => Math.abs(d) > 1e-9));
        const wish =
          low > lower && high < upper ? 'inside' : high < lower || low > upper ? 'outside' : 'cant-tell';
        expect(judgedBy({ ...of, rule: { kind: 'guardBand', multiplier: 1 } }).verdict).toBe(wish);
      }),
    );
  });

  it('keeps its probability whatever the rule', () => {
    fc.assert(
      fc.property(held, rule, (of, other) => {
        const { probabilityOfConformity } = judgedBy(of);
        expect(judgedBy({ ...of, rule: other }).probabilityOfConformity).toBe(probabilityOfConformity);
      }),
    );
  });
});

describe('the distance to the nearer limit', () => {
  it('is positive exactly while both limits are kept, and one half is the chance at nothing', () => {
    fc.assert(
      fc.property(held, (of) => {
        const { lower = 0, upper = 0 } = of.specification;
        expect(distanceInU(of) >= 0).toBe(of.estimate >= lower && of.estimate <= upper);
      }),
    );
    const upper = { ...clubHeld(), specification: { upper: 28.5 } };
    expect(distanceInU({ ...upper, estimate: 28.5 })).toBe(0);
    expect(judgedBy({ ...upper, estimate: 28.5 }).probabilityOfConformity).toBeCloseTo(0.5, 12);
    expect(distanceInU(upper)).toBeCloseTo(0.3 / U_CLUB, 9);
  });
});

describe('the risk on the edge of what is accepted', () => {
  const oneLimit = (kind: Rule): HeldAgainst => ({
    ...clubHeld(kind),
    specification: { upper: 28.5 },
  });

  it('is one half by simple acceptance, the tail beyond 2 r by a guard band, and what is left of a required probability', () => {
    expect(riskAtEdge(oneLimit({ kind: 'simple' }))).toBeCloseTo(0.5, 12);
    for (const multiplier of [0.25, 0.5, 1, 1.5])
      expect(riskAtEdge(oneLimit({ kind: 'guardBand', multiplier }))).toBeCloseTo(
        normalShareBelow(-2 * multiplier),
        9,
      );
    for (const required of [0.8, 0.95, 0.99])
      expect(riskAtEdge(oneLimit({ kind: 'probability', required }))).toBeCloseTo(1 - required, 9);
  });

  it('is none where nothing is accepted', () => {
    expect(riskAtEdge({ ...clubHeld(), standardUncertainty: 0.8 })).toBeUndefined();
  });
});

describe('a hundred, sorted', () => {
  const risks = (of: HeldAgainst) => {
    const found = sortedBy(of);
    if (found === undefined) throw new Error('wish risks, got none');
    return found;
  };

  it('are as good as they were, whatever the rule: what is accepted rightly and sent back wrongly adds up', () => {
    fc.assert(
      fc.property(held, (of) => {
        const { conforming, accepted, consumer, producer } = risks(of);
        expect(accepted - consumer + producer).toBeCloseTo(conforming, 7);
        expect(conforming).toBe(risks({ ...of, rule: { kind: 'simple' } }).conforming);
      }),
      { numRuns: 40 },
    );
  });

  it('pass fewer bad ones and send back more good ones the wider the guard band', () => {
    fc.assert(
      fc.property(held, number(0.05, 1), number(0.01, 0.9), (of, multiplier, more) => {
        const at = (r: number) => risks({ ...of, rule: { kind: 'guardBand', multiplier: r } });
        const [narrow, wide] = [at(multiplier), at(multiplier + more)];
        expect(wide.consumer).toBeLessThanOrEqual(narrow.consumer + 1e-9);
        expect(wide.producer).toBeGreaterThanOrEqual(narrow.producer - 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it('are counted as a draw of forty thousand counts them', () => {
    const random = randomFrom(7);
    const bell = normal({ mean: 0, standardDeviation: 1 });
    const of = clubHeld();
    const { acceptance } = judgedBy(of);
    if (acceptance === undefined) throw new Error('wish an interval, got none');
    const counts = { accepted: 0, consumer: 0, producer: 0 };
    const draws = 40_000;
    for (let n = 0; n < draws; n++) {
      const value = 27 + 0.8 * bell.sample(random);
      const reading = value + U_CLUB * bell.sample(random);
      const [good, passed] = [
        value >= 25.5 && value <= 28.5,
        reading >= acceptance.lower && reading <= acceptance.upper,
      ];
      if (passed) counts.accepted++;
      if (passed && !good) counts.consumer++;
      if (!passed && good) counts.producer++;
    }
    const found = risks(of);
    for (const name of ['accepted', 'consumer', 'producer'] as const) {
      const four = 4 * Math.sqrt((found[name] * (1 - found[name])) / draws);
      expect(Math.abs(counts[name] / draws - found[name]), name).toBeLessThan(four);
    }
  });

  it.each([0.75, 0.8])('are all sent back where the guard bands meet, u = %f', (standardUncertainty) => {
    const none = risks({ ...clubHeld(), standardUncertainty });
    expect(none).toMatchObject({ accepted: 0, consumer: 0 });
    expect(none.producer).toBe(none.conforming);
    expect(none.conformingAmongRejected).toBe(none.conforming);
  });

  it('say nothing with one limit, or where nobody knows how they spread', () => {
    const { spread: _, ...unknown } = clubHeld();
    expect(sortedBy(unknown)).toBeUndefined();
    expect(sortedBy({ ...clubHeld(), specification: { upper: 28.5 } })).toBeUndefined();
  });
});
