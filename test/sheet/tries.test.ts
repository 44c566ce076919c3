import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile, mismatchLimits, powerW } from '#compute';
import { PART_U } from '../../src/sheet/published-models.ts';
import { runTries, type Tried, triedOf } from '../../src/sheet/tried.ts';
import {
  clubTry,
  LOAD_OHMS,
  propagatedOf,
  READ_VOLTS,
  TRIED,
  type TryOrder,
  triedCoverage,
  triedModelOf,
} from '../../src/sheet/tries.ts';

const few = (change: Partial<TryOrder>): TryOrder => ({ ...clubTry(), trials: '10000', ...change });
const many = (change: Partial<TryOrder>): TryOrder => ({ ...clubTry(), trials: '100000', ...change });
const order: fc.Arbitrary<TryOrder> = fc.record({
  model: fc.constantFrom(...TRIED),
  voltsPercent: fc.double({ min: 0.5, max: 25, noNaN: true }),
  ohmsPercent: fc.double({ min: 0.5, max: 25, noNaN: true }),
  sourceSwr: fc.double({ min: 1.1, max: 5, noNaN: true }),
  meterSwr: fc.double({ min: 1.1, max: 5, noNaN: true }),
  reflection: fc.integer({ min: 0, max: 50 }),
  correlation: fc.constantFrom(0, 0.5, 0.9),
  order: fc.constantFrom('first' as const, 'second' as const),
  coverage: fc.constantFrom('ninetyFive' as const, 'ninetyNine' as const),
  trials: fc.constantFrom('100' as const, '1000' as const),
  seed: fc.integer({ min: 1, max: 999 }),
});

describe('a run', () => {
  it('comes to the same for the same seed, to the last bit, and to another for another', () => {
    expect(triedOf(few({ seed: 3 }))).toEqual(triedOf(few({ seed: 3 })));
    expect(triedOf(few({ seed: 4 })).symmetric).not.toEqual(triedOf(few({ seed: 3 })).symmetric);
  });

  it('shows a hundred trials first, then ten times as many each time, of the same lots', () => {
    const results = [...runTries(few({}))].filter((tried): tried is Tried => tried !== undefined);
    expect(results.map(({ trials }) => trials)).toEqual([100, 1000, 10_000]);
    expect(results[0]).toEqual({ ...triedOf(few({ trials: '100' })), order: few({}) });
  });

  it('can be drawn whatever is tried: finite, in rising order, and all of it under the columns', () => {
    fc.assert(
      fc.property(order, (one) => {
        const { curve, symmetric, shortest, standardUncertainty } = triedOf(one);
        expect(curve.length).toBeGreaterThan(1);
        for (const { x, density } of curve) {
          expect(Number.isFinite(x)).toBe(true);
          expect(density).toBeGreaterThan(0);
        }
        const xs = curve.map(({ x }) => x);
        expect(xs).toEqual(xs.toSorted((a, b) => a - b));
        expect(shortest.upper - shortest.lower).toBeLessThanOrEqual(
          symmetric.upper - symmetric.lower + 1e-9 * standardUncertainty,
        );
        expect(propagatedOf(one).standardUncertainty).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 40 },
    );
  });

  it('has columns whose area is one, but for the few trials beyond its ends', () => {
    const { curve } = triedOf(many({}));
    let area = 0;
    for (let i = 0; i + 1 < curve.length; i += 2)
      area += ((curve[i + 1]?.x ?? 0) - (curve[i]?.x ?? 0)) * (curve[i]?.density ?? 0);
    expect(area).toBeGreaterThan(0.99);
    expect(area).toBeLessThan(1.01);
  });

  it('begins its columns of a loss at nothing, all of it under them', () => {
    const { curve } = triedOf(many({ model: 'loss' }));
    expect(curve[0]?.x).toBe(0);
    let area = 0;
    for (let i = 0; i + 1 < curve.length; i += 2)
      area += ((curve[i + 1]?.x ?? 0) - (curve[i]?.x ?? 0)) * (curve[i]?.density ?? 0);
    expect(Math.abs(area - 1)).toBeLessThan(0.01);
  });

  it('stops by itself once two digits have settled, steady to half a unit of the second', () => {
    const settled = triedOf({ ...clubTry(), trials: 'settled' });
    expect(settled.settled).toBe(true);
    expect(settled.trials % 10_000).toBe(0);
    expect(settled.trials).toBeGreaterThan(10_000);
    // u is 21.7 mW: two digits are tens and units, half a unit of which is 0.5 mW (JCGM 101, 7.9.2).
    expect(settled.tolerance).toBe(0.5);
    const other = triedOf({ ...clubTry(), trials: 'settled', seed: 2 });
    expect(Math.abs(other.mean - settled.mean)).toBeLessThan(1);
    expect(triedOf(few({})).tolerance).toBeUndefined();
  });
});

describe('volts into watts', () => {
  it('have the mean that can be had by hand: V² (1 + p²/3)/R times the mean of 1/R', () => {
    const [p, q] = [0.2, 0.05];
    const { mean } = triedOf(many({ voltsPercent: 20 }));
    const exact =
      ((1000 * READ_VOLTS ** 2) / LOAD_OHMS) * (1 + p ** 2 / 3) * (Math.log((1 + q) / (1 - q)) / (2 * q));
    expect(Math.abs(mean - exact)).toBeLessThan(5 * (112 / Math.sqrt(100_000)));
  });

  it('are propagated by their slopes: twice the volts and once the ohms', () => {
    const { estimate, standardUncertainty } = propagatedOf(clubTry());
    expect(estimate).toBeCloseTo(1000 * powerW(READ_VOLTS ** 2 / LOAD_OHMS), 9);
    const relative = Math.sqrt((2 * 0.03) ** 2 / 3 + 0.05 ** 2 / 3);
    expect(standardUncertainty).toBeCloseTo(estimate * relative, 4);
  });

  it('never leave what the worst of both can make of them', () => {
    const { symmetric } = triedOf(many({ voltsPercent: 20, ohmsPercent: 10 }));
    const nominal = (1000 * READ_VOLTS ** 2) / LOAD_OHMS;
    expect(symmetric.lower).toBeGreaterThan((nominal * 0.8 ** 2) / 1.1);
    expect(symmetric.upper).toBeLessThan((nominal * 1.2 ** 2) / 0.9);
  });
});

describe('reflections of unknown phase', () => {
  it('lie between the exact limits of a mismatch, with a mean of nothing, and look certain to propagation', () => {
    const limits = mismatchLimits({ source: 0.5, load: 0.2 });
    const tried = triedOf(many({ model: 'phase' }));
    const reach = Math.max(-limits.lower, limits.upper);
    expect(tried.symmetric.upper).toBeLessThan(reach);
    expect(tried.symmetric.lower).toBeGreaterThan(-reach);
    expect(Math.abs(tried.mean)).toBeLessThan(5 * (0.615 / Math.sqrt(100_000)));
    expect(tried.propagated.standardUncertainty).toBeCloseTo(0, 9);
    expect(tried.propagated.estimate).toBeCloseTo(-20 * Math.log10(0.9), 9);
  });
});

describe('the comparison loss of JCGM 101, 9.4', () => {
  it('with both parts at zero follows chi-square of two degrees', () => {
    const { mean, standardUncertainty, symmetric, shortest } = triedOf(many({ model: 'loss' }));
    const scale = 1e6 * PART_U ** 2;
    const quantile = (share: number): number => scale * chiSquareQuantile({ share, degreesOfFreedom: 2 });
    expect(Math.abs(mean - 2 * scale)).toBeLessThan(1);
    expect(Math.abs(standardUncertainty - 2 * scale)).toBeLessThan(1);
    expect(Math.abs(symmetric.upper - quantile(0.975))).toBeLessThan(4);
    expect(Math.abs(shortest.upper - quantile(0.95))).toBeLessThan(4);
    expect(shortest.lower).toBeGreaterThanOrEqual(0);
  });

  it.each([
    [0, 0, 98],
    [10, -119, 319],
    [50, 1515, 3485],
  ])('at %i thousandths has the printed ends of second order', (reflection, lower, upper) => {
    const { interval } = propagatedOf(many({ model: 'loss', order: 'second', reflection }));
    expect(Math.round(interval.upper)).toBe(upper);
    expect(Math.round(interval.lower)).toBe(reflection === 0 ? -98 : lower);
  });

  it('with correlated parts has the closed form 2u √(x₁² + (1 + r²)u²)', () => {
    const { standardUncertainty } = triedOf(many({ model: 'loss', reflection: 10, correlation: 0.9 }));
    const exact = 1e6 * 2 * PART_U * Math.sqrt(0.01 ** 2 + (1 + 0.81) * PART_U ** 2);
    expect(Math.abs(standardUncertainty / exact - 1)).toBeLessThan(0.02);
  });
});

describe('the gauge block of JCGM 101, 9.5', () => {
  it('is propagated as print has it: u = 32 nm, and 99 in a hundred within a unit of 745 to 931 nm', () => {
    const { standardUncertainty, interval } = propagatedOf(few({ model: 'gauge', coverage: 'ninetyNine' }));
    expect(Math.round(standardUncertainty)).toBe(32);
    // Print takes 16 degrees of freedom for 16.7 and rounds u first.
    expect(Math.abs(interval.lower - 745)).toBeLessThan(1.5);
    expect(Math.abs(interval.upper - 931)).toBeLessThan(1.5);
  });
});

describe('what is asked for', () => {
  it('is 95 or 99 in a hundred, and a model of its own for each thing', () => {
    expect(triedCoverage(few({}))).toBe(0.95);
    expect(triedCoverage(few({ coverage: 'ninetyNine' }))).toBe(0.99);
    const inputs = TRIED.map((model) => triedModelOf(few({ model })).inputs.length);
    expect(inputs).toEqual([2, 1, 2, 5, 9]);
  });
});
