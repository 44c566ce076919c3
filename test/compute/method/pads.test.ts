import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PadsReading, padsIntoMeter } from '../../../src/compute/method/pads.ts';
import { gainDb, levelDbm } from '../../../src/compute/quantity.ts';
import { mean } from '../../../src/compute/readings.ts';
import { expectPrinted, expectWithin } from '../near.ts';
import { modelOf, reasonOf, resultOf, wholeOf, within } from './outcome.ts';

/** Two invented 20 dB pads and a cable into a receiver that was never calibrated, and after comparing all of them. */
const chain = (pad: number, receiver: number): PadsReading => ({
  reading: levelDbm(-13.4),
  corrections: [],
  gains: [gainDb(-20), gainDb(-20), gainDb(-0.2)],
  influences: [
    { id: 'first', statement: within(pad), unit: 'dB' },
    { id: 'second', statement: within(pad), unit: 'dB' },
    { id: 'receiver', statement: within(receiver), unit: 'dB' },
    { id: 'cable', statement: within(0.1), unit: 'dB' },
    { id: 'mismatch', statement: { form: 'limits', shape: 'arcsine', halfWidth: 0.2 }, unit: 'dB' },
  ],
});

describe('pads into a receiver', () => {
  it('read 26.8 dBm, worst 3.3 dB either way, U = 2.47 dB at k = 2', () => {
    const { estimate, worstCase, propagation } = resultOf(padsIntoMeter(chain(0.5, 2)));
    expectWithin(estimate, 26.8, 1e-12);
    expectWithin(worstCase.interval.upper - estimate, 3.3, 1e-9);
    expectWithin(estimate - worstCase.interval.lower, 3.3, 1e-9);
    expectPrinted(propagation.expanded, 2.47, 2);
  });

  it('lie within 2.18 dB for 95 % of the whole distribution: one dominant limit makes k = 2 too wide', () => {
    const whole = wholeOf(padsIntoMeter(chain(0.5, 2)));
    expectPrinted((whole.symmetric.upper - whole.symmetric.lower) / 2, 2.18, 2);
    const { propagation } = resultOf(padsIntoMeter(chain(0.5, 2)));
    const inside =
      whole.shareBelow(26.8 + propagation.expanded) - whole.shareBelow(26.8 - propagation.expanded);
    expectPrinted(100 * inside, 98.4, 1);
  });

  it('after a calibration reach 0.8 dB at worst and U = 0.49 dB', () => {
    const { estimate, worstCase, propagation } = resultOf(padsIntoMeter(chain(0.1, 0.3)));
    expectWithin(worstCase.interval.upper - estimate, 0.8, 1e-9);
    expectPrinted(propagation.expanded, 0.49, 2);
  });

  it('are told in dBm', () => {
    expect(padsIntoMeter(chain(0.5, 2))).toMatchObject({ inRange: true, space: 'dBm' });
  });

  it('take off every gain and add every correction, in any order', () => {
    const gain = fc.double({ min: -60, max: 30, noNaN: true }).map(gainDb);
    fc.assert(
      fc.property(fc.array(gain), fc.array(gain), (gains, corrections) => {
        const at = (g: typeof gains, c: typeof corrections) => {
          const reading = { reading: levelDbm(0), gains: g, corrections: c, influences: [] };
          const model = modelOf(padsIntoMeter(reading));
          return model.kind === 'sum' ? model.constant : Number.NaN;
        };
        const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
        expectWithin(at(gains, corrections), sum(corrections) - sum(gains), 1e-9);
        expectWithin(at([...gains].reverse(), [...corrections].reverse()), at(gains, corrections), 1e-9);
      }),
    );
  });
});

describe('pads into a meter with a stated range', () => {
  const meter = (reading: number): PadsReading => ({
    ...chain(0.1, 0.3),
    reading: levelDbm(reading),
    floor: levelDbm(-60),
    largest: levelDbm(-10),
  });

  it('give no number below its floor or above its largest level, and one on both', () => {
    const outside = (reading: number) => reasonOf(padsIntoMeter(meter(reading)));
    expect(outside(-60)).toBeUndefined();
    expect(outside(-10)).toBeUndefined();
    expect(outside(-60.01)).toEqual({ code: 'belowFloor', reading: -60.01, limit: -60 });
    expect(outside(-9.99)).toEqual({ code: 'aboveLargest', reading: -9.99, limit: -10 });
  });

  it('give one on an edge of 0 dBm', () => {
    const zero = { ...meter(0), largest: levelDbm(0), floor: levelDbm(0) };
    expect(reasonOf(padsIntoMeter(zero))).toBeUndefined();
  });

  it('give one where a mean of readings misses 0 dBm by rounding alone', () => {
    const above = mean([0.1, 0.2, -0.3]);
    expect(above).toBeGreaterThan(0);
    expect(reasonOf(padsIntoMeter({ ...meter(above), largest: levelDbm(0) }))).toBeUndefined();
    expect(
      reasonOf(padsIntoMeter({ ...meter(-above), floor: levelDbm(0), largest: levelDbm(10) })),
    ).toBeUndefined();
    expect(reasonOf(padsIntoMeter({ ...meter(1e-6), largest: levelDbm(0) }))?.code).toBe('aboveLargest');
  });

  it('give one without a stated range', () => {
    expect(reasonOf(padsIntoMeter({ ...chain(0.1, 0.3), reading: levelDbm(-200) }))).toBeUndefined();
    expect(reasonOf(padsIntoMeter({ ...chain(0.1, 0.3), reading: levelDbm(90) }))).toBeUndefined();
  });
});
