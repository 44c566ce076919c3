import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentQuantile, studentShareBelow } from '#compute';
import { COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import { type WholeMean, wholeMeanOf } from '../../src/sheet/evaluated-readings.ts';
import { clubReadings, EVENING_DBM, type Repeated, SCATTERS } from '../../src/sheet/evening.ts';
import {
  carelessDb,
  experience,
  floorDb,
  meanModel,
  meanOf,
  scatterOf,
  summaryOf,
} from '../../src/sheet/few-readings.ts';

const use = (change: Partial<Repeated> = {}): Repeated => ({ ...clubReadings(), ...change });
const repeated: fc.Arbitrary<Repeated> = fc.record({
  count: fc.integer({ min: 1, max: 10 }),
  known: fc.constantFrom(...SCATTERS),
  limitsDb: fc.constantFrom(0, 0.05, 0.3, 1),
});
function whole(of: Repeated): WholeMean {
  const found = wholeMeanOf(of);
  if (found === undefined) throw new Error('wish a band, got none');
  return found;
}
const half = ({ interval }: WholeMean): number => (interval.upper - interval.lower) / 2;
const t = (degreesOfFreedom: number): number =>
  studentQuantile({ share: (1 + COVERAGE_PROBABILITY) / 2, degreesOfFreedom });
/** Standard deviation by hand. */
const scatter = (values: readonly number[]): number => {
  const mean = values.reduce((a, b) => a + b) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

describe('the scatter', () => {
  it('is that of the readings that are used, by hand', () => {
    expect(summaryOf(use()).mean).toBeCloseTo((26.84 + 27.02 + 26.71) / 3, 12);
    for (let count = 2; count <= 10; count++)
      expect(scatterOf(use({ count }))?.standardDeviation).toBeCloseTo(
        scatter(EVENING_DBM.slice(0, count)),
        12,
      );
  });

  it('is unknown where one reading is all there is, and no number is made up', () => {
    const one = use({ count: 1 });
    expect(scatterOf(one)).toBeUndefined();
    expect(meanModel(one)).toBeUndefined();
    expect(meanOf(one)).toBeUndefined();
    expect(carelessDb(one)).toBeUndefined();
    expect(wholeMeanOf(one)).toBeUndefined();
  });

  it('of five evenings before is their pooled one, with twenty degrees of freedom', () => {
    const { standardDeviation, degreesOfFreedom } = experience();
    expect(degreesOfFreedom).toBe(20);
    // Hundredths of a decibel above 26 dBm; squares about each evening's own mean, added up.
    const evenings = [
      [61, 83, 74, 55, 72],
      [105, 93, 121, 108, 97],
      [90, 78, 99, 72, 86],
      [66, 81, 94, 70, 75],
      [102, 84, 91, 111, 98],
    ];
    const squares = evenings.map((series) => 4 * scatter(series) ** 2).reduce((a, b) => a + b);
    expect(standardDeviation).toBeCloseTo(Math.sqrt(squares / 20) / 100, 12);
    expect(scatterOf(use({ count: 1, known: 'pooled' }))).toEqual(experience());
  });

  it('asks for one to ten readings', () => {
    for (const count of [0, 11, Number.NaN])
      expect(() => summaryOf(use({ count })), String(count)).toThrow('summaryOf: count must be 1 to 10');
  });
});

describe('the band of a mean', () => {
  it('without anything in common is Student’s t, and the factor that of its degrees of freedom', () => {
    for (let count = 2; count <= 10; count++) {
      const of = use({ count });
      const u = scatter(EVENING_DBM.slice(0, count)) / Math.sqrt(count);
      expect(half(whole(of)) / (t(count - 1) * u)).toBeCloseTo(1, 6);
      expect(meanOf(of)?.propagation.coverageFactor).toBeCloseTo(t(count - 1), 9);
      expect(whole(of).covered).toBeCloseTo(
        2 * studentShareBelow({ t: 2, degreesOfFreedom: count - 1 }) - 1,
        6,
      );
    }
  });

  it('is even about the mean, holds what was asked, and never ends inside what is shared', () => {
    fc.assert(
      fc.property(repeated, (of) => {
        const found = wholeMeanOf(of);
        if (found === undefined) {
          expect([of.count, of.known]).toEqual([1, 'own']);
          return;
        }
        const { mean } = summaryOf(of);
        expect(found.interval.upper - mean).toBeCloseTo(mean - found.interval.lower, 4);
        expect(half(found)).toBeGreaterThanOrEqual(floorDb(of) - 1e-3);
        const xs = found.curve.map(({ x }) => x);
        expect(xs).toEqual(xs.toSorted((a, b) => a - b));
        for (const { density } of found.curve) expect(density).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  it('is narrower with experience than with three readings alone, and hardly moves where much is shared', () => {
    expect(half(whole(use({ known: 'pooled' })))).toBeLessThan(half(whole(use())) / 3);
    const [three, ten] = [3, 10].map((count) => half(whole(use({ count, limitsDb: 0.5 }))));
    expect((ten ?? 0) / (three ?? 1)).toBeGreaterThan(0.75);
    expect(floorDb(use({ limitsDb: 0.5 }))).toBeCloseTo(0.5 * COVERAGE_PROBABILITY, 12);
  });

  it('by propagation has effective degrees of freedom by Welch and Satterthwaite', () => {
    const found = meanOf(use({ limitsDb: 0.5 }))?.propagation;
    const u = scatter(EVENING_DBM.slice(0, 3)) / Math.sqrt(3);
    const all = Math.sqrt(u ** 2 + 0.25 / 3);
    expect(found?.standardUncertainty).toBeCloseTo(all, 12);
    expect(found?.degreesOfFreedom).toBeCloseTo((2 * all ** 4) / u ** 4, 6);
    expect(carelessDb(use({ limitsDb: 0.5 }))).toBeCloseTo(2 * all, 12);
  });
});
