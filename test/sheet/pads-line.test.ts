import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mismatch } from '#compute';
import { clubSheet } from '../../src/sheet/club.ts';
import { meterModel } from '../../src/sheet/meter-model.ts';
import {
  clubPadsLine,
  EXTRA_ALLOWED_DB,
  foundOf,
  magnitudesOf,
  matchOf,
  meterRange,
  type PadsLine,
  stepOf,
} from '../../src/sheet/pads-line.ts';

const swr = (max: number) => fc.integer({ min: 100, max: 100 * max }).map((hundredths) => hundredths / 100);
const lines: fc.Arbitrary<PadsLine> = fc.record({
  readingDbm: fc.integer({ min: -30, max: 20 }),
  movedDb: fc.integer({ min: 96, max: 104 }).map((tenths) => tenths / 10),
  padDb: fc.integer({ min: 0, max: 30 }),
  padWithinDb: fc.integer({ min: 0, max: 15 }).map((tenths) => tenths / 10),
  padSwr: swr(1.5),
  sourceSwr: swr(5),
  meterSwr: swr(2),
});
const resultOf = (line: PadsLine) => {
  const outcome = foundOf(line);
  if (!outcome.found) throw new Error(`wish a result, got ${JSON.stringify(outcome.reason)}`);
  return outcome.result;
};
const share = (line: PadsLine, id: string): number =>
  resultOf(line).propagation.budget.find((row) => row.id === id)?.share ?? 0;

describe('the result of a line', () => {
  it('is the reading with the pad and the coax added back, whatever reflects', () => {
    fc.assert(
      fc.property(lines, (line) => {
        expect(resultOf(line).estimate).toBeCloseTo(line.readingDbm + line.padDb + 0.1, 9);
      }),
    );
  });

  it('is, for the club, that of its prepared sheet: the same level, and a band within a hundredth of a decibel', () => {
    const line = clubPadsLine();
    const sheet = meterModel(clubSheet());
    expect(resultOf(line).estimate).toBe(sheet.constant);
    // By hand: U of the two comparisons over 2, limits over root three, two of unknown phase over root two.
    const u = Math.sqrt(
      0.01 ** 2 +
        0.03 ** 2 +
        (0.25 ** 2 + 0.5 ** 2 + 2 * 0.05 ** 2) / 3 +
        matchOf(line).standardUncertainty ** 2,
    );
    expect(resultOf(line).propagation.expanded).toBeCloseTo(2 * u, 3);
  });

  it('gets wider with every part that does', () => {
    fc.assert(
      fc.property(lines, (line) => {
        fc.pre(line.padDb > 0);
        const wider = { ...line, padWithinDb: line.padWithinDb + 0.1 };
        expect(resultOf(wider).propagation.expanded).toBeGreaterThan(resultOf(line).propagation.expanded);
      }),
    );
  });

  it('has no part of the pad where there is none, and shares that sum to one', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const { budget } = resultOf(line).propagation;
        expect(budget.some(({ id }) => id === 'pad')).toBe(line.padDb > 0);
        expect(budget.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(1, 9);
      }),
    );
    expect(share(clubPadsLine(), 'pad')).toBeGreaterThan(0.7);
  });

  it('is not there outside the range of the meter, and is on its ends', () => {
    const { floor, largest } = meterRange();
    const at = (readingDbm: number) => foundOf({ ...clubPadsLine(), readingDbm });
    expect(at(largest).found).toBe(true);
    expect(at(floor).found).toBe(true);
    expect(at(largest + 0.1)).toEqual({
      found: false,
      reason: { code: 'aboveLargest', reading: largest + 0.1, limit: largest },
    });
    expect(at(floor - 0.1)).toMatchObject({ found: false, reason: { code: 'belowFloor' } });
  });

  it('is not there unless one more pad moves the reading as it should', () => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 50, max: 150 }), (line, tenths) => {
        const movedDb = tenths / 10;
        fc.pre(Math.abs(Math.abs(movedDb - 10) - EXTRA_ALLOWED_DB) > 0.05);
        expect(foundOf({ ...line, movedDb }).found).toBe(Math.abs(movedDb - 10) < EXTRA_ALLOWED_DB);
      }),
    );
    expect(stepOf({ ...clubPadsLine(), movedDb: 9.1 }).shortfallDb).toBeCloseTo(0.9, 9);
    expect(stepOf({ ...clubPadsLine(), movedDb: 11 }).outcome).toBe('moved-too-much');
  });
});

describe('the match of a line', () => {
  it('is the shape of an unknown phase without a pad', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const bare = matchOf({ ...line, padDb: 0 });
        const source = (line.sourceSwr - 1) / (line.sourceSwr + 1);
        const load = (line.meterSwr - 1) / (line.meterSwr + 1);
        expect(bare.upper).toBeCloseTo(20 * Math.log10(1 + source * load), 9);
        expect(bare.lower).toBeCloseTo(20 * Math.log10(1 - source * load), 9);
        expect(bare.standardUncertainty).toBeCloseTo((20 / Math.LN10) * source * load * Math.SQRT1_2, 9);
      }),
    );
  });

  it('has a standard uncertainty within 1 % of that of the exact shape', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const { standardDeviation: exact = Number.NaN } = mismatch(magnitudesOf(line));
        expect(Math.abs(matchOf(line).standardUncertainty - exact)).toBeLessThanOrEqual(0.01 * exact);
      }),
    );
    const worst = { ...clubPadsLine(), padSwr: 1.5, sourceSwr: 5, meterSwr: 2 };
    for (const padDb of [0, 1, 3, 30]) {
      const line = { ...worst, padDb };
      const { standardDeviation: exact = Number.NaN } = mismatch(magnitudesOf(line));
      expect(matchOf(line).standardUncertainty / exact).toBeGreaterThan(0.99);
      expect(matchOf(line).standardUncertainty / exact).toBeLessThanOrEqual(1);
    }
  });

  it('never gets worse with more decibels of the same pad, and never better than the pad itself', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const [few, many] = [matchOf({ ...line, padDb: 3 }), matchOf({ ...line, padDb: 30 })];
        expect(many.upper).toBeLessThanOrEqual(few.upper);
        const own = (line.padSwr - 1) / (line.padSwr + 1);
        const source = (line.sourceSwr - 1) / (line.sourceSwr + 1);
        expect(many.upper).toBeGreaterThanOrEqual(20 * Math.log10(1 + source * own) - 1e-12);
      }),
    );
  });

  it('is as near to nothing as one likes behind a perfect pad of many decibels', () => {
    const { between } = magnitudesOf(clubPadsLine(), 'perfect');
    expect(between).toMatchObject({ input: 0, output: 0, gain: -20 });
    expect(magnitudesOf({ ...clubPadsLine(), padDb: 0 }, 'perfect').between).toBeUndefined();
  });

  it('has, for the pad of SWR 1.15 between SWR 2 and SWR 1.25, wider limits than none and a smaller u (by hand)', () => {
    const line = { ...clubPadsLine(), padDb: 6, sourceSwr: 2, meterSwr: 1.25 };
    const [s, l, p] = [1 / 3, 1 / 9, 0.15 / 2.15];
    const through = 10 ** -0.6 * s * l;
    const real = matchOf(line);
    expect(real.upper).toBeCloseTo(20 * Math.log10((1 + s * p) * (1 + l * p) + through), 9);
    expect(real.lower).toBeCloseTo(20 * Math.log10((1 - s * p) * (1 - l * p) - through), 9);
    const first = (20 / Math.LN10) * Math.sqrt(((s * p) ** 2 + (l * p) ** 2 + through ** 2) / 2);
    expect(real.standardUncertainty).toBeCloseTo(first, 3);
    const bare = matchOf({ ...line, padDb: 0 });
    expect(real.upper).toBeGreaterThan(bare.upper);
    expect(real.standardUncertainty).toBeLessThan(bare.standardUncertainty);
  });
});
