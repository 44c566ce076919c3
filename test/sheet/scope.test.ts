import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { clubMeasurement, sisterMeasurement } from '../../src/sheet/club-measurement.ts';
import { COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import { type Found, foundOf, upperPower, within } from '../../src/sheet/found.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { NO_READINGS } from '../../src/sheet/method.ts';
import {
  bandwidthOf,
  bareLevel,
  clubScope,
  ENDS,
  edgeHz,
  GAIN_OF,
  gainOfReading,
  rollOffDb,
  SCOPE_PARTS,
  type ScopeUse,
  scopeFound,
  scopeParts,
} from '../../src/sheet/scope.ts';
import { outcomeOf } from '../../src/sheet/to-model.ts';

const use: fc.Arbitrary<ScopeUse> = fc.record({
  peakToPeakV: fc.double({ min: 0.1, max: 100, noNaN: true }),
  loadOhm: fc.double({ min: 10, max: 200, noNaN: true }),
  frequencyHz: fc.double({ min: 1e5, max: 5e8, noNaN: true }),
  scopeHz: fc.double({ min: 5e6, max: 5e8, noNaN: true }),
  probeHz: fc.double({ min: 2e6, max: 5e8, noNaN: true }),
  gainPercent: fc.double({ min: 0.5, max: 10, noNaN: true }),
  gainOf: fc.constantFrom(...GAIN_OF),
  screenV: fc.double({ min: 0.1, max: 200, noNaN: true }),
  end: fc.constantFrom(...ENDS),
});
const resultOf = (of: ScopeUse) => {
  const found = scopeFound(of);
  if (!found.inRange) throw new Error(`wish a number, got ${found.reason.code}`);
  return found.result;
};
const codeOf = (found: Found<{ readonly code: string }>): string =>
  found.inRange ? 'number' : found.reason.code;

/** The bench's own result of the same reading, taken once. */
function onBench(measurement: Measurement, readings: readonly number[]) {
  const points = measurement.points.map((point) => ({ ...point, columns: { ...NO_READINGS, readings } }));
  const [first] = points;
  if (first === undefined) throw new Error('wish a point, got none');
  return outcomeOf(sheetAt({ ...measurement, points: [first] }, first.id));
}

describe('an oscilloscope across a load', () => {
  it('says of the club’s trace what the bench says of the same reading', () => {
    const bench = onBench(clubMeasurement('oscilloscope'), [clubScope().peakToPeakV]);
    if (!bench.inRange) throw new Error('wish a number on the bench');
    const { estimate, propagation } = resultOf(clubScope());
    const there = propagate({ model: bench.model, coverageProbability: COVERAGE_PROBABILITY });
    expect(propagation.expanded).toBeCloseTo(there.expanded, 12);
    expect((propagation.interval.lower + propagation.interval.upper) / 2).toBeCloseTo(estimate, 12);
    expect(propagation.interval.lower).toBeCloseTo(there.interval.lower, 10);
    expect(new Set(propagation.budget.map(({ id }) => id))).toEqual(new Set(SCOPE_PARTS));
  });

  it('gives no number for the sister, as the bench gives none', () => {
    const bench = onBench(sisterMeasurement(), [8.1]);
    expect(bench.inRange).toBe(false);
    expect(codeOf(scopeFound({ ...clubScope(), frequencyHz: 145e6 }))).toBe('aboveBandwidth');
  });

  it('by hand: U is twice the root of the squares of limits over root three', () => {
    const lg20 = 20 / Math.LN10;
    const squares = [
      lg20 * 0.03,
      (lg20 * 0.2) / 14.2,
      0.1,
      0.09,
      (10 / Math.LN10) * 0.01,
      0.05 / 2,
      rollOffDb(clubScope()) / 2,
    ].map((limit) => limit ** 2 / 3);
    const byHand = 2 * Math.sqrt(squares.reduce((a, b) => a + b));
    expect(resultOf(clubScope()).propagation.expanded).toBeCloseTo(byHand, 3);
    expect(bareLevel(clubScope())).toBeCloseTo(10 * Math.log10((1000 * 14.2 ** 2) / (8 * 49.8)), 12);
  });

  it('has a number exactly where the screen can be read, one load ends the line and the bandwidth suffices', () => {
    fc.assert(
      fc.property(use, (of) => {
        const onScreen = of.peakToPeakV <= of.screenV;
        const fine = Math.max(gainOfReading(of), (1.25 * of.screenV) / of.peakToPeakV) <= 100 / 3;
        const slow = of.frequencyHz <= edgeHz(of);
        const found = scopeFound(of);
        expect(found.inRange, codeOf(found)).toBe(onScreen && fine && slow && of.end === 'load');
      }),
    );
  });

  it('gives up at three tenths of the bandwidth of both together, and not on it', () => {
    const edge = 0.3 / Math.sqrt(1 / 100e6 ** 2 + 1 / 150e6 ** 2);
    expect(edgeHz(clubScope())).toBeCloseTo(edge, 3);
    expect(bandwidthOf(clubScope())).toBeLessThan(100e6);
    expect(codeOf(scopeFound({ ...clubScope(), frequencyHz: edge }))).toBe('number');
    expect(codeOf(scopeFound({ ...clubScope(), frequencyHz: edge * 1.0001 }))).toBe('aboveBandwidth');
  });

  it('has a wider band by a percentage of full scale, the wider the less of the screen is used', () => {
    const at = (gainOf: 'reading' | 'fullScale', screenV: number) =>
      resultOf({ ...clubScope(), gainOf, screenV }).propagation.expanded;
    expect(at('fullScale', 16)).toBeGreaterThan(at('reading', 16));
    expect(at('fullScale', 40)).toBeGreaterThan(at('fullScale', 16));
    expect(gainOfReading({ ...clubScope(), gainOf: 'fullScale', screenV: 40 })).toBeCloseTo(120 / 14.2, 12);
    expect(gainOfReading({ ...clubScope(), screenV: 40 })).toBe(3);
  });

  it('refuses what cannot be summed, with the numbers that decided', () => {
    const reason = (of: Partial<ScopeUse>) => {
      const found = scopeFound({ ...clubScope(), ...of });
      return found.inRange ? undefined : found.reason;
    };
    expect(reason({ peakToPeakV: 17 })).toEqual({ code: 'offScreen', screenV: 16 });
    expect(reason({ peakToPeakV: 0.5 })).toEqual({ code: 'lowOnScreen', percent: 40 });
    expect(reason({ end: 'open' })).toEqual({ code: 'noTermination' });
    expect(reason({ end: 'twoLoads', loadOhm: 50 })).toEqual({ code: 'twoLoads', togetherOhm: 25 });
  });

  it('states its limits as the bench’s usual links do', () => {
    const links = clubMeasurement('oscilloscope').links.map(({ id, stated, unit }) => ({
      id,
      statement: stated,
      unit,
    }));
    expect(scopeParts(clubScope())).toEqual(links.map((link) => expect.objectContaining(link)));
  });
});

describe('what a method found', () => {
  it('is refused for a model that is no sum', () => {
    const model = { kind: 'function', inputs: [], f: () => 0 } as const;
    expect(() => foundOf({ inRange: true, space: 'W', model })).toThrow(
      'model must be a sum, got a function',
    );
  });

  it('is reckoned with at the specification’s upper limit, or at its own upper end where that is more', () => {
    const dbm = (power: number): number => 10 * Math.log10(1000 * power);
    expect(dbm(upperPower({ inRange: false, reason: undefined }))).toBeCloseTo(
      clubSheet().specification.upper ?? Number.NaN,
      12,
    );
    const strong = scopeFound({ ...clubScope(), peakToPeakV: 40, screenV: 40 });
    if (!strong.inRange) throw new Error('wish a number');
    expect(dbm(upperPower(strong))).toBeCloseTo(strong.result.propagation.interval.upper, 10);
    expect(dbm(upperPower(scopeFound(clubScope())))).toBeCloseTo(28.5, 12);
  });

  it('has parts with plain limits in their own unit', () => {
    expect(within('load', 1, 'percentOfResistance')).toEqual({
      id: 'load',
      unit: 'percentOfResistance',
      statement: { form: 'limits', shape: 'rectangular', halfWidth: 1 },
    });
  });
});
