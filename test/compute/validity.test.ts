import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkStep } from '../../src/compute/step-check.ts';
import { checkDrift, checkFloor, checkReconnection, harmonicsLimitsDb } from '../../src/compute/validity.ts';

describe('one more 10 dB pad', () => {
  const step = (withDb: number) => checkStep({ withoutDb: -20, withDb, stepDb: 10, allowedDb: 0.5 });

  test('moves the reading by 10 dB within what is allowed, edges included', () => {
    expect(step(-30)).toEqual({ shortfallDb: 0, outcome: 'passed' });
    expect(step(-29.5).outcome).toBe('passed');
    expect(step(-30.5).outcome).toBe('passed');
  });

  test('tells of overload or a floor if it moves too little, of a bad part if too much', () => {
    expect(step(-29.4)).toEqual({ shortfallDb: expect.closeTo(0.6, 12), outcome: 'moved-too-little' });
    expect(step(-30.6)).toEqual({ shortfallDb: expect.closeTo(-0.6, 12), outcome: 'moved-too-much' });
  });

  test('what cannot be is refused', () => {
    const fine = { withoutDb: -20, withDb: -30, stepDb: 10, allowedDb: 0 };
    expect(() => checkStep({ ...fine, withoutDb: Number.NaN })).toThrow(
      'checkStep: withoutDb must be a finite number',
    );
    expect(() => checkStep({ ...fine, withDb: Number.NaN })).toThrow(
      'checkStep: withDb must be a finite number',
    );
    expect(() => checkStep({ ...fine, stepDb: 0 })).toThrow('checkStep: stepDb must be > 0, got 0');
    expect(() => checkStep({ ...fine, allowedDb: -1 })).toThrow('checkStep: allowedDb must be >= 0, got -1');
    expect(checkStep(fine).outcome).toBe('passed');
  });
});

describe('the reading without signal', () => {
  const floor = (marginDb: number) =>
    checkFloor({ readingDb: -30, floorDb: -30 - marginDb, allowedDb: 0.05 });

  test('10 dB below it adds 0.46 dB, 20 dB below 0.04 dB', () => {
    expect(floor(10).noiseDb).toBeCloseTo(0.4576, 4);
    expect(floor(10).passed).toBe(false);
    expect(floor(20).noiseDb).toBeCloseTo(0.0436, 4);
    expect(floor(20).passed).toBe(true);
    expect(floor(20).marginDb).toBeCloseTo(20, 12);
  });

  test('on the edge of what is allowed it still passes', () => {
    const { noiseDb } = floor(15);
    expect(checkFloor({ readingDb: -30, floorDb: -45, allowedDb: noiseDb }).passed).toBe(true);
  });

  test('what it adds, taken off as power, leaves the signal', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), (margin) => {
        const { noiseDb } = floor(margin);
        const signal = 10 ** (-noiseDb / 10);
        expect(signal + 10 ** (-margin / 10)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('an offset adds as volts: 20 dB below it still adds 0.92 dB, 40 dB below 0.09 dB', () => {
    const offset = (marginDb: number) =>
      checkFloor({ readingDb: 0, floorDb: -marginDb, allowedDb: 0.1, adds: 'volts' });
    // a tenth of the volts: 20 lg(10/9)
    expect(offset(20).noiseDb).toBeCloseTo(20 * Math.log10(10 / 9), 12);
    expect(offset(20).passed).toBe(false);
    expect(offset(40).noiseDb).toBeCloseTo(0.0873, 4);
    expect(offset(40).passed).toBe(true);
    expect(offset(0).noiseDb).toBe(Number.POSITIVE_INFINITY);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), (margin) => {
        expect(offset(margin).noiseDb).toBeGreaterThan(floor(margin).noiseDb);
      }),
    );
  });

  test('at the floor nothing is left to measure', () => {
    expect(floor(0)).toEqual({ marginDb: 0, noiseDb: Number.POSITIVE_INFINITY, passed: false });
    expect(floor(-5)).toEqual({ marginDb: -5, noiseDb: Number.POSITIVE_INFINITY, passed: false });
  });

  test('what cannot be is refused', () => {
    expect(() => checkFloor({ readingDb: Number.NaN, floorDb: 0, allowedDb: 1 })).toThrow(
      'checkFloor: readingDb',
    );
    expect(() => checkFloor({ readingDb: 0, floorDb: Number.NaN, allowedDb: 1 })).toThrow(
      'checkFloor: floorDb',
    );
    expect(() => checkFloor({ readingDb: 0, floorDb: -1, allowedDb: 0 })).toThrow(
      'checkFloor: allowedDb must be > 0',
    );
  });
});

describe('connectors off and on again', () => {
  test('five readings tell the scatter of one connection', () => {
    const five = checkReconnection([7, 7.02, 6.99, 7.01, 7.03]);
    expect(five.standardDeviation).toBeCloseTo(0.0158114, 7);
    expect(five.largestDifference).toBeCloseTo(0.04, 12);
    expect(five.enough).toBe(true);
    expect(checkReconnection([7, 7.02, 6.99, 7.01]).enough).toBe(false);
    expect(() => checkReconnection([7])).toThrow(
      'checkReconnection: there must be 2 or more readings, got 1',
    );
  });
});

describe('drift with time', () => {
  const at = (times: number[], reading: (t: number, i: number) => number) =>
    times.map((time, i) => ({ time, reading: reading(time, i) }));
  const times = [0, 1, 2, 3, 4, 5];

  test('a steady fall is found with its size, and half of it is what to allow', () => {
    const drift = checkDrift(at(times, (t, i) => 27 - 0.02 * t + (i % 2 === 0 ? 0.001 : -0.001)));
    expect(drift.perTime).toBeCloseTo(-0.02, 2);
    expect(drift.total).toBeCloseTo(5 * drift.perTime, 12);
    expect(drift.halfWidth).toBeCloseTo(-drift.total / 2, 12);
    expect(drift.significant).toBe(true);
  });

  test('its size counts from the first reading to the last, whenever the first was', () => {
    const later = checkDrift(at([10, 11, 12, 14], (t) => 27 - 0.02 * t));
    expect(later.total).toBeCloseTo(-0.08, 12);
    expect(later.halfWidth).toBeCloseTo(0.04, 12);
  });

  test('readings that never move have none', () => {
    const still = checkDrift(at(times, () => 27));
    expect(still).toEqual({ perTime: 0, total: 0, totalExpanded: 0, significant: false, halfWidth: 0 });
  });

  test('mere scatter is not taken for one', () => {
    const drift = checkDrift(at(times, (_, i) => 27 + (i % 2 === 0 ? 0.01 : -0.01)));
    expect(drift.significant).toBe(false);
  });

  test('the edge is the t of the degrees of freedom that are left', () => {
    // Slope 1 with residuals a(1, -1, -1, 1): uncertainty of the slope a sqrt(4/2)/sqrt(5), t of 2 degrees 4.3027.
    const edge = Math.sqrt(5) / Math.SQRT2 / 4.302653;
    const with4 = (a: number) =>
      checkDrift(at([0, 1, 2, 3], (t, i) => t + a * ([1, -1, -1, 1][i] ?? 0))).significant;
    expect(with4(edge * 0.999)).toBe(true);
    expect(with4(edge * 1.001)).toBe(false);
  });

  test('stands out of its scatter exactly where it is larger than its own uncertainty', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
        (readings) => {
          const { total, totalExpanded, significant } = checkDrift(at(times, (_, i) => readings[i] ?? 0));
          fc.pre(Math.abs(Math.abs(total) - totalExpanded) > 1e-9);
          expect(Math.abs(total) > totalExpanded).toBe(significant);
        },
      ),
    );
  });

  test('two readings are no line', () => {
    expect(() => checkDrift(at([0, 1], (t) => t))).toThrow('fitLine: there must be 3 or more points');
  });
});

describe('harmonics', () => {
  const limits = (harmonicsDbc: number[], responds: 'mean' | 'peak') =>
    harmonicsLimitsDb({ harmonicsDbc, responds });

  test('20 dB down they raise the mean by 0.04 dB and move a peak by +0.83 or -0.92 dB', () => {
    expect(limits([-20], 'mean')).toEqual({ lower: 0, upper: expect.closeTo(0.0432, 4) });
    expect(limits([-20], 'peak').upper).toBeCloseTo(0.828, 3);
    expect(limits([-20], 'peak').lower).toBeCloseTo(-0.915, 3);
    expect(limits([-30], 'peak').upper).toBeCloseTo(0.28, 1);
    expect(limits([-40], 'peak').upper).toBeCloseTo(0.086, 3);
    expect(limits([-40], 'peak').lower).toBeCloseTo(-0.087, 3);
  });

  test('several add their powers at a thermal instrument and their volts at a peak detector', () => {
    expect(limits([-20, -20], 'mean').upper).toBeCloseTo(10 * Math.log10(1.02), 12);
    expect(limits([-20, -20], 'peak').upper).toBeCloseTo(20 * Math.log10(1.2), 12);
    expect(limits([-20, -20], 'peak').lower).toBeCloseTo(20 * Math.log10(0.8), 12);
    expect(limits([], 'peak')).toEqual({ lower: 0, upper: 0 });
  });

  test('what is no harmonic, or too much of it, is refused', () => {
    expect(() => limits([0], 'mean')).toThrow('harmonicsLimitsDb: a harmonic must be below 0 dBc, got 0');
    expect(() => limits([Number.NaN], 'peak')).toThrow(RangeError);
    expect(() => limits([-6, -6], 'peak')).toThrow(
      'harmonicsLimitsDb: volts of harmonics must stay below the carrier',
    );
    expect(() => limits([-6, -6], 'mean')).not.toThrow();
    const half = -20 * Math.log10(2);
    expect(() => limits([half, half], 'peak')).toThrow('got 1');
  });
});
