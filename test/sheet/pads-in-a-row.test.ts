import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootSumSquareOfLimits } from '#compute';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import {
  BETWEEN,
  clubRow,
  dominantOf,
  METER,
  METER_SAYS,
  type PadsInARow,
  rootOfStated,
  rowModel,
  rowResult,
  statedLengths,
  sumOfStated,
} from '../../src/sheet/pads-in-a-row.ts';

const row: fc.Arbitrary<PadsInARow> = fc.record({
  count: fc.integer({ min: 2, max: 8 }),
  padDb: fc.integer({ min: 1, max: 20 }).map((steps) => steps / 20),
  between: fc.constantFrom(...BETWEEN),
  meterDb: fc.integer({ min: 0, max: 40 }).map((steps) => steps / 20),
  meterSays: fc.constantFrom(...METER_SAYS),
});
const alone = (count: number): PadsInARow => ({ ...clubRow(), count, meterDb: 0 });

describe('a row of pads end to end', () => {
  it('reaches just the sum of all limits, whatever is known between them, where each part has some', () => {
    fc.assert(
      fc.property(row, (of) => {
        const { interval, unlimited } = rowResult({ ...of, meterSays: 'limits' }).worstCase;
        expect(interval.upper).toBeCloseTo(sumOfStated(of), 10);
        expect(interval.lower).toBeCloseTo(-sumOfStated(of), 10);
        expect(unlimited).toEqual([]);
      }),
    );
  });

  it('has no end with a certificate in it, and the pads alone stay as they are', () => {
    fc.assert(
      fc.property(row, (of) => {
        const { interval, unlimited } = rowResult({ ...of, meterSays: 'certificate' }).worstCase;
        expect(unlimited).toEqual(of.meterDb === 0 ? [] : [METER]);
        expect(interval.upper).toBeCloseTo(of.count * of.padDb, 10);
      }),
    );
  });

  it('is made of its pads, and of the meter unless that is never off', () => {
    expect(statedLengths(clubRow())).toEqual([0.5, 0.5, 0.5, 0.3]);
    expect(statedLengths(alone(2))).toEqual([0.5, 0.5]);
    expect(rowModel(alone(2)).inputs.map(({ id }) => id)).toEqual(['pad1', 'pad2']);
  });
});

describe('a row of pads at right angles', () => {
  it('has the root of the sum of the squares as its standard uncertainty, and shares that sum to 1', () => {
    fc.assert(
      fc.property(row, (of) => {
        const { standardUncertainty, budget } = rowResult(of).propagation;
        const root = Math.hypot(...budget.map((part) => part.standardUncertainty));
        expect(standardUncertainty).toBeCloseTo(root, 10);
        expect(budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('names the part with the largest share, the first of several alike', () => {
    expect(dominantOf(clubRow()).id).toBe('pad1');
    expect(dominantOf({ ...clubRow(), meterDb: 2 }).id).toBe(METER);
    fc.assert(
      fc.property(row, (of) => {
        const most = Math.max(...rowResult(of).propagation.budget.map(({ share }) => share));
        expect(dominantOf(of).share).toBeCloseTo(most, 10);
      }),
    );
  });

  it('has, of limits with nothing else known, a root of squares of 1.73 standard uncertainties', () => {
    const of: PadsInARow = { ...clubRow(), meterDb: 0.7 };
    expect(rootOfStated(of) / rowResult(of).propagation.standardUncertainty).toBeCloseTo(Math.sqrt(3), 10);
    expect(rootSumSquareOfLimits({ model: rowModel(of) }).halfWidth).toBeCloseTo(rootOfStated(of), 12);
  });
});

describe('the whole distribution of a row', () => {
  /** Share of sums of n quantities, even within ±1, that lie within t of the ends at n: for t up to 2. */
  const nearEnds = (n: number, t: number): number => {
    let factorial = 1;
    for (let k = 2; k <= n; k++) factorial *= k;
    return (2 * (t / 2) ** n) / factorial;
  };

  it('holds near its ends what the formula for sums of uniform quantities gives', () => {
    for (const count of [2, 3, 5, 8])
      expect(1 - wholeRowOf(alone(count)).withinNineTenths, `${count} pads`).toBeCloseTo(
        nearEnds(count, 0.1 * count),
        9,
      );
  });

  it('holds of two pads within the root of the squares all but two corners of the square', () => {
    expect(wholeRowOf(alone(2)).withinRoot).toBeCloseTo(1 - (2 - Math.SQRT2) ** 2 / 4, 9);
  });

  it('has nothing beyond the sum of the limits, and something beyond a certificate', () => {
    fc.assert(
      fc.property(row, (of) => {
        const { withinSum } = wholeRowOf(of);
        if (of.meterSays === 'limits' || of.meterDb === 0) expect(withinSum).toBeCloseTo(1, 6);
        else expect(withinSum).toBeLessThanOrEqual(1);
      }),
      { numRuns: 30 },
    );
    const bell: PadsInARow = { ...clubRow(), padDb: 0.1, meterDb: 1, meterSays: 'certificate' };
    expect(wholeRowOf(bell).withinSum).toBeLessThan(0.99);
  });

  it('grows about as the root of the number, where the limits grow as the number', () => {
    const grows = wholeRowOf(alone(8)).halfWidth / wholeRowOf(alone(2)).halfWidth;
    expect(grows).toBeGreaterThan(1.9);
    expect(grows).toBeLessThan(2.2);
    expect(sumOfStated(alone(8)) / sumOfStated(alone(2))).toBe(4);
  });

  it('gives half a curve, from nothing upwards and falling, where nothing else is known', () => {
    const { curve } = wholeRowOf(clubRow());
    expect(curve.length).toBeGreaterThan(40);
    for (const [index, { x, density }] of curve.entries()) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(density).toBeLessThanOrEqual((curve[index - 1]?.density ?? Number.POSITIVE_INFINITY) + 1e-9);
    }
  });
});
