import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate, studentQuantile } from '#compute';
import { endGauge } from '../../src/checks/gum-h1-model.ts';
import { gaugeModel } from '../../src/sheet/end-gauge.ts';
import {
  type BudgetUse,
  budgetModel,
  COVERAGES,
  clubUse,
  printedGauge,
  SUBJECTS,
  written,
} from '../../src/sheet/stated-budget.ts';

const uses: fc.Arbitrary<BudgetUse> = fc.record({
  subject: fc.constantFrom(...SUBJECTS),
  count: fc.integer({ min: 2, max: 20 }),
  scatterDb: fc.integer({ min: 1, max: 20 }).map((steps) => steps / 20),
  coverage: fc.constantFrom(...COVERAGES),
  digits: fc.constantFrom(1 as const, 2 as const),
  onTheWay: fc.boolean(),
});

describe('the end gauge as a sum', () => {
  it('has the sensitivities and the uncertainty of the function itself, by numerical derivatives', () => {
    const bySum = propagate({ model: gaugeModel(), coverageProbability: 0.99 });
    const byFunction = propagate({ model: endGauge(), coverageProbability: 0.99 });
    expect(bySum.standardUncertainty).toBeCloseTo(byFunction.standardUncertainty, 5);
    expect(bySum.degreesOfFreedom).toBeCloseTo(byFunction.degreesOfFreedom, 5);
    for (const [i, row] of bySum.budget.entries()) {
      const own = byFunction.budget[i];
      expect(row.id).toBe(own?.id);
      expect(row.contribution, row.id).toBeCloseTo(own?.contribution ?? Number.NaN, 4);
    }
  });
});

describe('a budget and what is written of it', () => {
  it('has u as the root of its contributions squared, and shares that make one', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const { budget, standardUncertainty } = written({ ...use, onTheWay: false });
        expect(Math.hypot(...budget.map(({ contribution }) => contribution))).toBeCloseTo(
          standardUncertainty,
          9,
        );
        expect(budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('has degrees of freedom by the formula of Welch and Satterthwaite, by hand', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const { budget, standardUncertainty, degreesOfFreedom } = written({ ...use, onTheWay: false });
        const doubt = budget.reduce((sum, row) => sum + row.contribution ** 4 / row.degreesOfFreedom, 0);
        expect(degreesOfFreedom / (standardUncertainty ** 4 / doubt)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('has a factor of 2 by agreement, or of Student’s t, never below that of a bell', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const { coverageFactor, degreesOfFreedom, coverageProbability } = written({
          ...use,
          onTheWay: false,
        });
        if (use.coverage === 'two') expect(coverageFactor).toBe(2);
        else {
          const probability = use.coverage === 'p95' ? 0.95 : 0.99;
          expect(coverageProbability).toBe(probability);
          expect(coverageFactor).toBeCloseTo(
            studentQuantile({ share: (1 + probability) / 2, degreesOfFreedom }),
            9,
          );
          expect(coverageFactor).toBeGreaterThan(use.coverage === 'p95' ? 1.9599 : 2.5758);
        }
      }),
    );
  });

  it('states value and uncertainty to one place, no farther off than half of it', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const { stated, expanded, estimate } = written(use);
        const place = 10 ** (stated.place ?? Number.NaN);
        expect(Math.abs(stated.plus - expanded)).toBeLessThanOrEqual(place / 2 + 1e-9);
        expect(Math.abs(stated.estimate - estimate)).toBeLessThanOrEqual(place / 2 + 1e-9);
        expect(expanded / place).toBeGreaterThan(use.digits === 1 ? 0.9 : 9);
        expect(expanded / place).toBeLessThan(use.digits === 1 ? 10 : 100);
      }),
    );
  });

  it('is surer with more readings, and better known', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const club = { ...use, subject: 'club', onTheWay: false } as const;
        fc.pre(club.count < 20);
        const [fewer, more] = [written(club), written({ ...club, count: club.count + 1 })];
        expect(more.standardUncertainty).toBeLessThan(fewer.standardUncertainty);
        expect(more.degreesOfFreedom).toBeGreaterThan(fewer.degreesOfFreedom);
      }),
    );
  });

  it('of the gauge knows nothing of the club’s readings', () => {
    expect(written({ ...printedGauge(), scatterDb: 1 })).toEqual(written(printedGauge()));
    const { constant, sensitivities } = gaugeModel();
    expect(budgetModel(printedGauge())).toMatchObject({ constant, sensitivities });
  });

  it('of the gauge gains little by more comparisons: the standard stays (13 nm over the root of their number)', () => {
    const u = (count: number): number => {
      const { standardUncertainty } = written({ ...printedGauge(), onTheWay: false, count });
      return standardUncertainty;
    };
    expect(u(5) ** 2 - u(20) ** 2).toBeCloseTo(13 ** 2 * (1 / 5 - 1 / 20), 6);
    expect(u(20) / u(5)).toBeGreaterThan(0.98);
  });

  it('of the club is, by hand, its six links and three readings', () => {
    const squares = [
      0.01,
      0.03,
      0.25 / Math.sqrt(3),
      0.16 / Math.SQRT2,
      0.5 / Math.sqrt(3),
      0.05 / Math.sqrt(3),
    ];
    const links = squares.reduce((sum, u) => sum + u * u, 0);
    const { standardUncertainty, degreesOfFreedom, estimate } = written(clubUse());
    expect(standardUncertainty).toBeCloseTo(Math.sqrt(links + 0.04 / 3), 9);
    expect(degreesOfFreedom).toBeCloseTo(((links + 0.04 / 3) / (0.04 / 3)) ** 2 * 2, 6);
    expect(estimate).toBeCloseTo(27.1, 9);
  });
});

describe('rounding on the way', () => {
  it('gives the end gauge as printed: 32 nm, 16 degrees, 2.92 and 93 nm; without it 92 nm (GUM H.1.6)', () => {
    const printed = written(printedGauge());
    expect([printed.standardUncertainty, printed.degreesOfFreedom, printed.coverageFactor]).toEqual([
      32, 16, 2.92,
    ]);
    expect(printed.stated).toMatchObject({ estimate: 50_000_838, plus: 93, minus: 93, place: 0 });
    expect(written({ ...printedGauge(), onTheWay: false }).stated.plus).toBe(92);
  });

  it('leaves degrees of freedom without an end as they are', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const { degreesOfFreedom } = written({ ...use, onTheWay: true });
        expect(Number.isInteger(degreesOfFreedom)).toBe(true);
        expect(degreesOfFreedom).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});
