import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { componentOf, evaluate, type SumModel } from '#compute';
import { COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import {
  cheapestLink,
  clubSpending,
  dominantLinks,
  enoughFactor,
  expandedWith,
  HOURS,
  neededExpanded,
  readingsWorth,
  SPECIFICATION,
  SPENDABLE,
  type Spending,
  shareOf,
  spentOn,
  verdictOf,
} from '../../src/sheet/spend.ts';
import { cheapestChange, whatWouldHelp } from '../compute/at-once.ts';

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 100);
const spending: fc.Arbitrary<Spending> = fc.record({
  levelDbm: hundredths(2600, 2845),
  meter: hundredths(1, 100),
  mismatch: hundredths(1, 100),
  pad: hundredths(1, 100),
  coax: hundredths(1, 100),
  scatter: hundredths(1, 50),
  count: fc.integer({ min: 1, max: 30 }),
});
const link = fc.constantFrom(...SPENDABLE);

/** The same chain put together here, for the public functions that ask what would help. */
function modelOf({ levelDbm, meter, mismatch, pad, coax, scatter, count }: Spending): SumModel {
  const limits = (id: string, halfWidth: number, shape: 'rectangular' | 'arcsine' = 'rectangular') =>
    componentOf({ id, unit: 'dB', statement: { form: 'limits', shape, halfWidth } });
  const inputs = [
    componentOf({
      id: 'standards',
      unit: 'dB',
      statement: { form: 'standard', standardUncertainty: Math.hypot(0.01, 0.03) },
    }),
    limits('meter', meter),
    limits('mismatch', mismatch, 'arcsine'),
    limits('pad', pad),
    limits('coax', coax),
    componentOf({
      id: 'readings',
      unit: 'dB',
      statement: { form: 'standard', standardUncertainty: scatter / Math.sqrt(count) },
    }),
  ];
  return { kind: 'sum', constant: levelDbm, inputs, sensitivities: inputs.map(() => 1) };
}
const question = (of: Spending) => ({
  model: modelOf(of),
  specification: SPECIFICATION,
  rule: { kind: 'guardBand', multiplier: 1 } as const,
  decidingInterval: 'propagation' as const,
  coverageProbability: COVERAGE_PROBABILITY,
});

describe('what each link would buy', () => {
  it('is what the bench computes of the same chain', () => {
    fc.assert(
      fc.property(spending, (of) => {
        for (const { link: ids, perfect, halved } of whatWouldHelp(question(of))) {
          const [id] = ids;
          const own = SPENDABLE.find((spendable) => spendable === id);
          if (own === undefined) continue;
          expect(expandedWith(of, own, 0)).toBeCloseTo(perfect.expanded, 9);
          expect(expandedWith(of, own, 0.5)).toBeCloseTo(halved.expanded, 9);
        }
      }),
      { numRuns: 8 },
    );
  });

  it('is, by hand, the root of what the others bring', () => {
    const parts = [0.1 ** 2 * 0.1, 0.25 ** 2 / 3, 0.16 ** 2 / 2, 0.5 ** 2 / 3, 0.05 ** 2 / 3, 0.15 ** 2 / 4];
    const all = parts.reduce((a, b) => a + b);
    expect(spentOn(clubSpending()).expanded).toBeCloseTo(2 * Math.sqrt(all), 9);
    expect(expandedWith(clubSpending(), 'pad', 0)).toBeCloseTo(2 * Math.sqrt(all - 0.25 / 3), 9);
    expect(shareOf(clubSpending(), 'pad')).toBeCloseTo(0.25 / 3 / all, 9);
    expect(dominantLinks(clubSpending())).toEqual(['pad']);
    expect(dominantLinks({ ...clubSpending(), meter: 0.5 })).toEqual(['meter', 'pad']);
  });

  it('never widens the strip, and a perfect link buys at least as much as half a one', () => {
    fc.assert(
      fc.property(spending, link, (of, id) => {
        const now = spentOn(of).expanded;
        expect(expandedWith(of, id, 0.5)).toBeLessThanOrEqual(now + 1e-12);
        expect(expandedWith(of, id, 0)).toBeLessThanOrEqual(expandedWith(of, id, 0.5) + 1e-12);
      }),
    );
  });
});

describe('how good a link has to be', () => {
  it('is just enough: with that, U is what the verdict takes', () => {
    fc.assert(
      fc.property(spending, link, (of, id) => {
        const factor = enoughFactor(of, id);
        if (factor === 1) expect(verdictOf(of)).toBe('inside');
        else if (factor === undefined)
          expect(expandedWith(of, id, 0)).toBeGreaterThan(neededExpanded(of) - 1e-12);
        else expect(expandedWith(of, id, factor)).toBeCloseTo(neededExpanded(of), 8);
      }),
    );
  });

  it('agrees with the search of the bench for the least improvement, to its thousandth', () => {
    fc.assert(
      fc.property(spending, (of) => {
        const found = cheapestChange(question(of));
        const factors = SPENDABLE.flatMap((id) => enoughFactor(of, id) ?? []);
        const best = Math.max(0, ...factors);
        // The standards are a link of the search, too, but nothing that can be bought.
        if (found.kind === 'change' && found.link[0] !== 'standards')
          expect(Math.abs(found.factor - best)).toBeLessThan(0.002);
        if (found.kind === 'decided') expect(best).toBe(1);
      }),
      { numRuns: 8 },
    );
  });
});

describe('the cheapest change', () => {
  it('is one that does it, with the fewest hours of those', () => {
    fc.assert(
      fc.property(spending, (of) => {
        const cheapest = cheapestLink(of);
        const able = SPENDABLE.filter((id) => enoughFactor(of, id) !== undefined);
        if (verdictOf(of) === 'inside' || able.length === 0) expect(cheapest).toBeUndefined();
        else expect(HOURS[cheapest?.link ?? 'meter']).toBe(Math.min(...able.map((id) => HOURS[id])));
      }),
    );
  });
});

describe('the verdict', () => {
  it('is that of the whole sum of the bench', () => {
    fc.assert(
      fc.property(spending, (of) => {
        const { expanded } = evaluate({
          model: modelOf(of),
          coverageProbability: COVERAGE_PROBABILITY,
        }).propagation;
        fc.pre(Math.abs(expanded - neededExpanded(of)) > 1e-9);
        const [low, high] = [of.levelDbm - expanded, of.levelDbm + expanded];
        const inside = low >= SPECIFICATION.lower && high <= SPECIFICATION.upper;
        expect(verdictOf(of)).toBe(inside ? 'inside' : 'cant-tell');
      }),
      { numRuns: 20 },
    );
  });
});

describe('readings that pay', () => {
  it('are so many that all further ones together gain less than a twentieth, and one fewer would not be', () => {
    fc.assert(
      fc.property(spending, (of) => {
        const worth = readingsWorth(of);
        const u = (count: number): number => spentOn({ ...of, count }).standardUncertainty;
        const endless = expandedWith(of, 'readings', 0) / 2;
        expect(u(worth) / endless).toBeLessThanOrEqual(1.05 + 1e-9);
        if (worth > 1) expect(u(worth - 1) / endless).toBeGreaterThan(1.05 - 1e-9);
      }),
    );
  });

  it('do not hang on how many were taken', () => {
    fc.assert(
      fc.property(spending, (of) => {
        expect(readingsWorth({ ...of, count: 1 })).toBe(readingsWorth(of));
      }),
    );
  });
});
