import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expansionUm, lengthAtReference, remainingDifferenceK } from '../../src/compute/length.ts';
import { expectNear, expectPrinted, expectWithin } from './near.ts';

const steel = 11.5e-6;
const length = fc.double({ min: 0.1, max: 1000, noNaN: true });
const temperature = fc.double({ min: -20, max: 60, noNaN: true });

describe('expansion from 20 degrees', () => {
  it.each([
    [steel, 1, 1.15],
    [steel, 3, 3.45],
    [steel, 5, 5.75],
    [23.1e-6, 1, 2.31],
    [23.1e-6, 3, 6.93],
    [23.1e-6, 5, 11.55],
    [19e-6, 3, 5.7],
    [1.2e-6, 3, 0.36],
  ])('of 100 mm at %f per K and %f K is %f um', (expansionPerK, kelvin, um) => {
    expectNear(expansionUm({ lengthMm: 100, expansionPerK, temperatureC: 20 + kelvin }), um);
  });

  it('of aluminium against steel, both 3 K warm, is 3.480 um in 100 mm', () => {
    const warm = (expansionPerK: number) => expansionUm({ lengthMm: 100, expansionPerK, temperatureC: 23 });
    expectPrinted(warm(23.1e-6) - warm(steel), 3.48, 3);
  });

  it('is nothing at 20 degrees and turns its sign below', () => {
    fc.assert(
      fc.property(length, temperature, (lengthMm, t) => {
        const at = (temperatureC: number) => expansionUm({ lengthMm, expansionPerK: steel, temperatureC });
        expect(at(20)).toBe(0);
        expectWithin(at(t), -at(40 - t), 1e-9);
      }),
    );
  });
});

describe('the length at 20 degrees', () => {
  it('of a steel bar of 500.035 mm at 23.7 degrees is 500.013 mm (NPL, frequently asked questions on length)', () => {
    const at20 = lengthAtReference({ lengthMm: 500.035, expansionPerK: 11.7e-6, temperatureC: 23.7 });
    expectPrinted(at20, 500.013, 3);
    expectPrinted(at20, 500.013354, 6);
  });

  it('and its expansion bring the measured length back', () => {
    fc.assert(
      fc.property(length, temperature, (lengthMm, temperatureC) => {
        const at20 = lengthAtReference({ lengthMm, expansionPerK: steel, temperatureC });
        const back = at20 + expansionUm({ lengthMm: at20, expansionPerK: steel, temperatureC }) / 1000;
        expectNear(back, lengthMm);
      }),
    );
  });

  it('is refused where nothing is left', () => {
    expect(() => lengthAtReference({ lengthMm: 1, expansionPerK: 0.1, temperatureC: 10 })).toThrow(
      new RangeError('lengthAtReference: expansion must leave a length, got 0'),
    );
  });
});

describe('warm hands', () => {
  const left = (minutes: number) =>
    remainingDifferenceK({ differenceK: 3, minutes, timeConstantMinutes: 10 });

  it('leave all of their warmth at first, 1/e of it after the time constant, little after five', () => {
    expect(left(0)).toBe(3);
    expectNear(left(10), 3 / Math.E);
    expect(left(50)).toBeLessThan(0.03);
  });

  it('never cool below the plate', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), (minutes) => {
        expect(left(minutes)).toBeGreaterThanOrEqual(0);
        expect(left(minutes)).toBeLessThanOrEqual(3);
      }),
    );
  });
});

describe('forbidden lengths', () => {
  const good = { lengthMm: 1, expansionPerK: steel, temperatureC: 20 };
  it.each([
    ['lengthMm', 0, '> 0'],
    ['expansionPerK', Number.NaN, 'a finite number'],
    ['temperatureC', Number.POSITIVE_INFINITY, 'a finite number'],
  ])('%s of %f are refused', (name, bad, wish) => {
    const message = `${name} must be ${wish}, got ${bad}`;
    expect(() => expansionUm({ ...good, [name]: bad })).toThrow(new RangeError(`expansionUm: ${message}`));
    expect(() => lengthAtReference({ ...good, [name]: bad })).toThrow(
      new RangeError(`lengthAtReference: ${message}`),
    );
  });

  it('times before now and no time constant are refused', () => {
    const where = 'remainingDifferenceK';
    const all = { differenceK: 1, minutes: 1, timeConstantMinutes: 1 };
    expect(() => remainingDifferenceK({ ...all, minutes: -1 })).toThrow(
      new RangeError(`${where}: minutes must be >= 0, got -1`),
    );
    expect(() => remainingDifferenceK({ ...all, timeConstantMinutes: 0 })).toThrow(
      new RangeError(`${where}: timeConstantMinutes must be > 0, got 0`),
    );
    expect(() => remainingDifferenceK({ ...all, differenceK: Number.NaN })).toThrow(
      new RangeError(`${where}: differenceK must be a finite number, got NaN`),
    );
  });
});
