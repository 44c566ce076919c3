import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  percentLimitsToDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  smallPercentToDb,
} from '../../src/compute/percent.ts';
import { gainDb } from '../../src/compute/quantity.ts';
import { expectPrinted, expectWithin } from './near.ts';

const percent = fc.double({ min: -99, max: 1000, noNaN: true });
const halfWidth = fc.double({ min: 0, max: 99, noNaN: true });

describe('percent and decibels', () => {
  it('bring each other back, for power and for volts', () => {
    fc.assert(
      fc.property(percent, (p) => {
        expectWithin(dbToPercentOfPower(percentOfPowerToDb(p)), p, 1e-11 * (100 + Math.abs(p)));
        expectWithin(dbToPercentOfVolts(percentOfVoltsToDb(p)), p, 1e-11 * (100 + Math.abs(p)));
      }),
    );
  });

  it('count a change of volts twice', () => {
    fc.assert(
      fc.property(percent, (p) => expectWithin(percentOfVoltsToDb(p), 2 * percentOfPowerToDb(p), 1e-11)),
    );
  });

  it.each([
    [1, 0.0432, 4],
    [-1, -0.0436, 4],
    [5, 0.2119, 4],
    [-5, -0.2228, 4],
    [10, 0.4139, 4],
    [-10, -0.4576, 4],
    [20, 0.7918, 4],
    [-20, -0.9691, 4],
  ])('%f %% of power is %f dB', (p, dB, decimals) => expectPrinted(percentOfPowerToDb(p), dB, decimals));

  it.each([
    [1, 25.893, 12.2],
    [-1, -20.567, -10.9],
    [0.1, 2.329, 1.2],
    [-0.1, -2.276, -1.1],
    [0.5, 12.202, 5.9],
    [-0.5, -10.875, -5.6],
    [3, 99.526, 41.3],
    [-3, -49.881, -29.2],
  ])('%f dB is %f %% of power and %f %% of volts', (dB, power, volts) => {
    expectPrinted(dbToPercentOfPower(gainDb(dB)), power, 3);
    expectPrinted(dbToPercentOfVolts(gainDb(dB)), volts, 1);
  });

  it('lose no digits for the smallest changes', () => {
    expectWithin(percentOfPowerToDb(1e-12), 4.342944819032496e-14, 1e-26);
    expectWithin(dbToPercentOfPower(gainDb(1e-14)), 2.302585092994057e-13, 1e-25);
  });
});

describe('the small-error rule', () => {
  it('is 0.0434 dB for 1 % of power and 0.0869 dB for 1 % of volts', () => {
    expectWithin(smallPercentToDb({ percent: 1, quantity: 'power' }), 0.04342944819, 1e-11);
    expectWithin(smallPercentToDb({ percent: 1, quantity: 'volts' }), 0.08685889638, 1e-11);
  });

  it('always lies above the exact value, and close to it for small changes', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (p) => {
        const rule = smallPercentToDb({ percent: p, quantity: 'power' });
        expect(rule).toBeGreaterThanOrEqual(percentOfPowerToDb(p) - 1e-15);
        expectWithin(rule, percentOfPowerToDb(p), 2.4e-4 * p * p + 1e-15);
      }),
    );
  });

  it('says -0.89 dB where the truth is -1 dB', () => {
    expectPrinted(smallPercentToDb({ percent: -20.567, quantity: 'power' }), -0.89, 2);
  });
});

describe('limits of a reading good to a percentage', () => {
  it('are -0.265 to +0.257 dB for 3 % of volts of the reading, the other way round of the true value', () => {
    const ofReading = percentLimitsToDb({ percent: 3, quantity: 'volts', of: 'reading' });
    expectPrinted(ofReading.lower, -0.265, 3);
    expectPrinted(ofReading.upper, 0.257, 3);
    const ofTruth = percentLimitsToDb({ percent: 3, quantity: 'volts', of: 'trueValue' });
    expectPrinted(ofTruth.lower, -0.257, 3);
    expectPrinted(ofTruth.upper, 0.265, 3);
  });

  it('a third of power is -1.76 to +1.25 dB', () => {
    const third = percentLimitsToDb({ percent: 100 / 3, quantity: 'power', of: 'reading' });
    expectPrinted(third.lower, -1.76, 2);
    expectPrinted(third.upper, 1.25, 2);
  });

  it('of the true value mirror those of the reading', () => {
    fc.assert(
      fc.property(halfWidth, fc.constantFrom('power' as const, 'volts' as const), (p, quantity) => {
        const reading = percentLimitsToDb({ percent: p, quantity, of: 'reading' });
        const truth = percentLimitsToDb({ percent: p, quantity, of: 'trueValue' });
        expect(truth.lower).toBe(0 - reading.upper);
        expect(truth.upper).toBe(0 - reading.lower);
        expect(reading.upper).toBeLessThanOrEqual(-reading.lower);
      }),
    );
  });

  it('have no width for 0 %', () => {
    const none = { lower: 0, upper: 0 };
    expect(percentLimitsToDb({ percent: 0, quantity: 'power', of: 'trueValue' })).toEqual(none);
  });

  it.each([-1, 100, Number.NaN])('of %s %% are refused', (bad) => {
    expect(() => percentLimitsToDb({ percent: bad, quantity: 'power', of: 'reading' })).toThrow(
      new RangeError(`percentLimitsToDb: percent must be from 0 to below 100, got ${bad}`),
    );
  });
});

describe('forbidden percentages', () => {
  it('all of the power or more cannot be taken away', () => {
    expect(() => percentOfPowerToDb(-100)).toThrow(
      new RangeError('percentOfPowerToDb: percent must be > -100, got -100'),
    );
    expect(() => percentOfVoltsToDb(-100.5)).toThrow(
      new RangeError('percentOfVoltsToDb: percent must be > -100, got -100.5'),
    );
  });

  it('what is no number is refused by name', () => {
    expect(() => percentOfPowerToDb(Number.NaN)).toThrow(
      'percentOfPowerToDb: percent must be a finite number',
    );
    expect(() => smallPercentToDb({ percent: Number.POSITIVE_INFINITY, quantity: 'power' })).toThrow(
      new RangeError('smallPercentToDb: percent must be a finite number, got Infinity'),
    );
    expect(() => dbToPercentOfPower(gainDb(4000))).toThrow(
      'dbToPercentOfPower: gain must be from -3000 to 3000',
    );
    expect(() => dbToPercentOfVolts(gainDb(-4000))).toThrow(
      'dbToPercentOfVolts: gain must be from -3000 to 3000',
    );
  });
});
