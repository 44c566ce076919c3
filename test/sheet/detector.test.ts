import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { harmonicsLimitsDb, propagate, sumOfTerms } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import {
  clubDetector,
  DETECTOR_PARTS,
  type DetectorUse,
  DROPS,
  detectedLevel,
  detectorFound,
  detectorParts,
  forgottenDb,
  harmonicsDb,
  leastVolts,
  meterLimitsV,
} from '../../src/sheet/detector.ts';
import { NO_READINGS } from '../../src/sheet/method.ts';
import { outcomeOf } from '../../src/sheet/to-model.ts';

const use: fc.Arbitrary<DetectorUse> = fc.record({
  detectedV: fc.double({ min: 0.1, max: 20, noNaN: true }),
  dropV: fc.double({ min: 0, max: 2, noNaN: true }),
  dropKnownV: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
  dropFrom: fc.constantFrom(...DROPS),
  loadOhm: fc.double({ min: 10, max: 200, noNaN: true }),
  harmonicsDbc: fc.double({ min: -60, max: -10, noNaN: true }),
});
const resultOf = (of: DetectorUse) => {
  const found = detectorFound(of);
  if (!found.inRange) throw new Error(`wish a number, got ${found.reason.code}`);
  return found.result;
};
const powerW = ({ detectedV, dropV, loadOhm }: DetectorUse): number =>
  (detectedV + dropV) ** 2 / (2 * loadOhm);

describe('a peak detector', () => {
  it('says of the club’s volts what the bench says of the same reading, but for the digits of a harmonic', () => {
    const club = clubMeasurement('peakDetector');
    const [first] = club.points;
    if (first === undefined) throw new Error('wish a point, got none');
    const columns = { ...NO_READINGS, readings: [clubDetector().detectedV] };
    const bench = outcomeOf(sheetAt({ ...club, points: [{ ...first, columns }] }, first.id));
    if (!bench.inRange) throw new Error('wish a number on the bench');
    const there = propagate({ model: bench.model, coverageProbability: COVERAGE_PROBABILITY });
    const { propagation, estimate } = resultOf(clubDetector());
    // The bench has 0.28 dB for a harmonic of -30 dBc, which is 0.279.
    expect(Math.abs(propagation.expanded - there.expanded)).toBeLessThan(0.002);
    expect(Math.abs(estimate - (there.interval.lower + there.interval.upper) / 2)).toBeLessThan(1e-9);
    expect(club.links.map(({ id }) => id)).toEqual([...DETECTOR_PARTS]);
  });

  it('by hand: limits of volts over the peak, each over root three', () => {
    const lg20 = 20 / Math.LN10;
    const peak = 6.53 + 0.55;
    const limits = [
      (lg20 * (0.005 * 6.53 + 0.02)) / peak,
      (lg20 * 0.1) / peak,
      -20 * Math.log10(1 - 10 ** -1.5),
      (10 / Math.LN10) * 0.01,
    ];
    const byHand = 2 * Math.sqrt(limits.reduce((sum, limit) => sum + limit ** 2 / 3, 0));
    expect(resultOf(clubDetector()).propagation.expanded).toBeCloseTo(byHand, 3);
    expect(detectedLevel(clubDetector(), true)).toBeCloseTo(
      10 * Math.log10((1000 * peak ** 2) / (2 * 49.8)),
      12,
    );
    const stated = clubMeasurement('peakDetector').links[0]?.stated;
    if (stated?.form !== 'terms') throw new Error('wish a sum of terms');
    const { halfWidth } = sumOfTerms({ reading: 6.53, terms: stated.terms });
    expect(meterLimitsV(clubDetector())).toBeCloseTo(halfWidth, 12);
  });

  it('has a number exactly from 50 mW upwards or with a curve, as long as two thirds of the volts are known', () => {
    fc.assert(
      fc.property(use, (of) => {
        const vague = Math.max(of.dropKnownV, meterLimitsV(of)) / (of.detectedV + of.dropV) > 1 / 3;
        const low = of.dropFrom === 'fixed' && powerW(of) < 0.05 * (1 - 1e-9);
        expect(detectorFound(of).inRange).toBe(!(vague || low));
      }),
    );
  });

  it('gives up below the volts that 50 mW make, and not on them', () => {
    const least = leastVolts(clubDetector());
    expect(least).toBeCloseTo(Math.sqrt(2 * 49.8 * 0.05) - 0.55, 12);
    expect(detectorFound({ ...clubDetector(), detectedV: least }).inRange).toBe(true);
    const below = detectorFound({ ...clubDetector(), detectedV: least - 0.01 });
    expect(below).toMatchObject({ inRange: false, reason: { code: 'belowDetector', least: 0.05 } });
    expect(detectorFound({ ...clubDetector(), detectedV: least - 0.01, dropFrom: 'curve' }).inRange).toBe(
      true,
    );
  });

  it('errs the more the lower the level, where the drop is forgotten', () => {
    fc.assert(
      fc.property(use, fc.double({ min: 1.01, max: 4, noNaN: true }), (of, times) => {
        const more = { ...of, detectedV: of.detectedV * times };
        expect(forgottenDb(of)).toBeLessThanOrEqual(0);
        expect(forgottenDb(more)).toBeGreaterThan(forgottenDb(of) - 1e-9);
      }),
    );
    // The trade's table, worked from (V/(V + 0.55))² at 50 ohm: 100 mW -1.7 dB, 1 W -0.49 dB.
    const at = (power: number): number =>
      forgottenDb({ ...clubDetector(), loadOhm: 50, detectedV: Math.sqrt(100 * power) - 0.55 });
    expect(at(0.1)).toBeCloseTo(-1.66, 2);
    expect(at(1)).toBeCloseTo(-0.49, 2);
  });

  it('has limits for harmonics that are their share of the volts', () => {
    const at = (harmonicsDbc: number): number => harmonicsDb({ ...clubDetector(), harmonicsDbc });
    expect(at(-20)).toBeCloseTo(-20 * Math.log10(0.9), 12);
    expect(at(-40)).toBeCloseTo(-20 * Math.log10(0.99), 12);
    const { lower } = harmonicsLimitsDb({ harmonicsDbc: [-30], responds: 'peak' });
    expect(at(-30)).toBeCloseTo(-lower, 12);
  });

  it('states no more than plain limits, one for each part', () => {
    expect(detectorParts(clubDetector()).map(({ id }) => id)).toEqual([...DETECTOR_PARTS]);
    for (const { statement } of detectorParts(clubDetector()))
      expect(statement).toMatchObject({ form: 'limits', shape: 'rectangular' });
  });

  it('tells vague volts from too little power', () => {
    const vague = {
      ...clubDetector(),
      detectedV: 0.5,
      dropV: 0.2,
      dropKnownV: 0.5,
      dropFrom: 'curve',
    } as const;
    expect(detectorFound(vague)).toMatchObject({ reason: { code: 'vagueVolts' } });
    expect(detectorFound({ ...vague, dropFrom: 'fixed' })).toMatchObject({
      reason: { code: 'belowDetector' },
    });
  });
});
