import { describe, expect, it } from 'vitest';
import { type PeakDetectorReading, peakDetector } from '../../../src/compute/method/peak-detector.ts';
import { ohms } from '../../../src/compute/quantity.ts';
import { expectPrinted, expectWithin } from '../near.ts';
import { modelOf, reasonOf, resultOf, within } from './outcome.ts';

/** An invented home-made detector across 50 ohm: a diode that takes 0.55 V, known to 0.10 V. */
const detector = (detectedV: number, more: Partial<PeakDetectorReading> = {}): PeakDetectorReading => ({
  detectedV,
  diodeDropV: 0.55,
  resistance: ohms(50),
  curveFromDc: false,
  influences: [{ id: 'drop', statement: within(0.1), unit: 'volts' }],
  ...more,
});
const constantOf = (reading: PeakDetectorReading) => {
  const model = modelOf(peakDetector(reading));
  return model.kind === 'sum' ? model.constant : Number.NaN;
};
const watts = (level: number) => 10 ** (level / 10 - 3);

describe('a peak detector', () => {
  it('reads 57.6 mW of 1.85 V, between 52.9 and 62.5 mW: -0.37 to +0.35 dB', () => {
    const { worstCase } = resultOf(peakDetector(detector(1.85)));
    const constant = constantOf(detector(1.85));
    expectPrinted(1000 * watts(constant), 57.6, 1);
    expectPrinted(1000 * watts(worstCase.interval.lower), 52.9, 1);
    expectPrinted(1000 * watts(worstCase.interval.upper), 62.5, 1);
    expectPrinted(worstCase.interval.lower - constant, -0.37, 2);
    expectPrinted(worstCase.interval.upper - constant, 0.35, 2);
  });

  it('reads 3.00 W of 16.77 V, to 0.05 dB', () => {
    const constant = constantOf(detector(16.77));
    const { worstCase } = resultOf(peakDetector(detector(16.77)));
    expectPrinted(watts(constant), 3, 2);
    expectPrinted(worstCase.interval.upper - constant, 0.05, 2);
    expectPrinted(worstCase.interval.lower - constant, -0.05, 2);
  });

  it('with its drop forgotten reads 2.26 dB low at the small, 0.28 dB at the large power', () => {
    const forgotten = (v: number) => constantOf(detector(v, { diodeDropV: 0, curveFromDc: true }));
    expectPrinted(forgotten(1.85) - constantOf(detector(1.85)), -2.26, 2);
    expectPrinted(forgotten(16.77) - constantOf(detector(16.77)), -0.28, 2);
  });

  it('takes relative influences beside those in volts', () => {
    const influences = [{ id: 'meter', statement: within(1), unit: 'percentOfVolts' }] as const;
    const [meter] = modelOf(peakDetector(detector(5, { influences }))).inputs;
    expectWithin(meter?.distribution.limits.upper ?? 0, 20 * Math.log10(1.01), 1e-12);
  });
});

describe('a peak detector out of range', () => {
  // 50 mW in 50 ohm is a peak of the square root of 5 volts.
  const edge = Math.sqrt(5) - 0.55;

  it('gives no number below 50 mW', () => {
    const reason = reasonOf(peakDetector(detector(1)));
    expect(reason).toMatchObject({ code: 'belowDetector', least: 0.05 });
    expectPrinted(1000 * (reason?.code === 'belowDetector' ? reason.power : 0), 24.0, 1);
  });

  it('holds on the edge of 50 mW and fails just below', () => {
    expect(reasonOf(peakDetector(detector(edge)))).toBeUndefined();
    expect(reasonOf(peakDetector(detector(edge - 1e-6)))?.code).toBe('belowDetector');
  });

  it('holds below with a curve taken with DC', () => {
    expect(reasonOf(peakDetector(detector(1, { curveFromDc: true })))).toBeUndefined();
  });
});

it('no reading and a negative drop are refused', () => {
  expect(() => peakDetector(detector(0))).toThrow(
    new RangeError('peakDetector: detectedV must be > 0, got 0'),
  );
  expect(() => peakDetector(detector(1, { diodeDropV: -0.1 }))).toThrow(
    new RangeError('peakDetector: diodeDropV must be >= 0, got -0.1'),
  );
});
