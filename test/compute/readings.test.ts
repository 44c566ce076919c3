import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkedReadings,
  compensatedSum,
  mean,
  pooledScatter,
  squaredDeviations,
  standardDeviation,
  summariseReadings,
} from '../../src/compute/readings.ts';
import { serialCorrelation } from '../../src/compute/serial-correlation.ts';
import { mavro, michelso, numAcc1, numAcc2, numAcc3 } from './strd.ts';

const reading = fc.double({ min: -100, max: 100, noNaN: true });
const series = fc.array(reading, { minLength: 2, maxLength: 20 });
const relative = (value: number, exact: number) => Math.abs(value / exact - 1);

/** Standard deviation of the doubles as they are held, at 40 digits. */
function heldDeviation(values: readonly number[]): number {
  const Big = Decimal.clone({ precision: 40 });
  // A double times 2^60 is a whole number for every size used here: that number is what is held, digit by digit.
  const held = values.map((x) => new Big(BigInt(x * 2 ** 60).toString()).div(new Big(2).pow(60)));
  const centre = held.reduce((sum, x) => sum.plus(x), new Big(0)).div(values.length);
  const squares = held.reduce((sum, x) => sum.plus(x.minus(centre).pow(2)), new Big(0));
  return squares
    .div(values.length - 1)
    .sqrt()
    .toNumber();
}

describe('laws of readings', () => {
  test('adding the same to every reading moves the mean by it and leaves the scatter', () => {
    fc.assert(
      fc.property(series, fc.double({ min: -1000, max: 1000, noNaN: true }), (values, shift) => {
        const moved = values.map((x) => x + shift);
        expect(mean(moved)).toBeCloseTo(mean(values) + shift, 9);
        expect(standardDeviation(moved)).toBeCloseTo(standardDeviation(values), 9);
      }),
    );
  });

  test('the order of the readings does not matter, and each lies between smallest and largest', () => {
    fc.assert(
      fc.property(series, (values) => {
        const one = summariseReadings(values);
        const other = summariseReadings([...values].reverse());
        expect(other.mean).toBeCloseTo(one.mean, 11);
        expect(other.standardDeviation).toBeCloseTo(one.standardDeviation ?? Number.NaN, 11);
        expect(one.mean).toBeGreaterThanOrEqual(one.smallest);
        expect(one.mean).toBeLessThanOrEqual(one.largest);
        expect([one.smallest, one.largest]).toEqual([Math.min(...values), Math.max(...values)]);
      }),
    );
  });

  test('readings that are all equal have no scatter, whatever their size', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 2, max: 9 }), (x, n) => {
        expect(standardDeviation(Array.from({ length: n }, () => x))).toBeLessThanOrEqual(
          1e-15 * Math.abs(x),
        );
      }),
    );
  });

  test('every reading twice leaves the mean and shrinks the sum of squares per degree', () => {
    fc.assert(
      fc.property(series, (values) => {
        const twice = [...values, ...values];
        expect(mean(twice)).toBeCloseTo(mean(values), 11);
        expect(squaredDeviations(twice)).toBeCloseTo(2 * squaredDeviations(values), 7);
      }),
    );
  });
});

describe('published series', () => {
  test('twenty temperatures: 100.145, 1.489 and 0.333 (GUM 4.4.3)', () => {
    const temperatures = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
      101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const summary = summariseReadings(temperatures);
    expect(summary.mean).toBeCloseTo(100.145, 12);
    expect(summary.standardDeviation).toBeCloseTo(1.4888445, 7);
    expect(summary.standardDeviationOfMean).toBeCloseTo(0.3329157, 7);
    expect(summary).toMatchObject({ count: 20, degreesOfFreedom: 19, smallest: 96.9, largest: 102.72 });
  });

  test.each([
    ['Mavro', mavro, 50, 2.001856, 0.000429123454003053, 0.937989183438248],
    ['Michelso', michelso, 100, 299.8524, 0.0790105478190518, 0.535199668621283],
    ['NumAcc1', numAcc1, 3, 10000002, 1, -0.5],
    ['NumAcc2', numAcc2, 1001, 1.2, 0.1, -0.999],
  ] as const)(
    '%s keeps thirteen digits of the certified values (NIST StRD)',
    (_, data, n, certifiedMean, s, r1) => {
      const values = data();
      expect(values).toHaveLength(n);
      expect(relative(mean(values), certifiedMean)).toBeLessThan(1e-14);
      expect(relative(standardDeviation(values), heldDeviation(values))).toBeLessThan(1e-13);
      // The decimals of Mavro and Michelso are themselves rounded to binary: certified to what that leaves.
      expect(relative(standardDeviation(values), s)).toBeLessThan(1e-12);
      if (n !== 3) expect(serialCorrelation(values)).toBeCloseTo(r1, 10);
    },
  );

  test('NumAcc3 keeps all digits that its numbers have once they are held as doubles (NIST StRD)', () => {
    const values = numAcc3();
    expect(mean(values)).toBe(1000000.2);
    expect(relative(standardDeviation(values), heldDeviation(values))).toBeLessThan(1e-13);
    // 1 000 000.1 has no exact binary form: the readings scatter by 0.100 000 000 03, not by the certified 0.1.
    expect(relative(standardDeviation(values), 0.1)).toBeLessThan(5e-10);
    expect(relative(heldDeviation(values), 0.1)).toBeGreaterThan(1e-10);
  });
});

describe('one reading and none', () => {
  test('one reading has a mean and no scatter of its own', () => {
    expect(summariseReadings([7])).toEqual({
      count: 1,
      mean: 7,
      standardDeviation: undefined,
      standardDeviationOfMean: undefined,
      degreesOfFreedom: 0,
      smallest: 7,
      largest: 7,
    });
  });

  test('too few readings, or one that is no number, are refused', () => {
    expect(() => mean([])).toThrow('mean: there must be 1 or more readings, got 0');
    expect(() => standardDeviation([1])).toThrow(
      'standardDeviation: there must be 2 or more readings, got 1',
    );
    expect(() => summariseReadings([])).toThrow('summariseReadings: there must be 1 or more readings, got 0');
    expect(() => mean([1, Number.NaN])).toThrow('mean: reading must be a finite number, got NaN');
    expect(checkedReadings('here', [1, 2], 2)).toEqual([1, 2]);
  });

  test('a sum of large and small numbers loses nothing', () => {
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(compensatedSum([])).toBe(0);
    expect(compensatedSum([1e-3, 1e17, -1e17])).toBe(1e-3);
  });
});

describe('pooled scatter', () => {
  test('equal series pool to their own scatter with all degrees of freedom', () => {
    const one = { standardDeviation: 0.06, degreesOfFreedom: 4 };
    const pooled = pooledScatter([one, one, one]);
    expect(pooled.standardDeviation).toBeCloseTo(0.06, 15);
    expect(pooled.degreesOfFreedom).toBe(12);
  });

  test('the longer series counts for more', () => {
    const pooled = pooledScatter([
      { standardDeviation: 1, degreesOfFreedom: 3 },
      { standardDeviation: 2, degreesOfFreedom: 1 },
    ]);
    expect(pooled.standardDeviation).toBeCloseTo(Math.sqrt(7 / 4), 14);
    expect(pooled.degreesOfFreedom).toBe(4);
  });

  test('what is no scatter is refused', () => {
    expect(() => pooledScatter([])).toThrow('pooledScatter: there must be 1 or more series, got 0');
    expect(() => pooledScatter([{ standardDeviation: -1, degreesOfFreedom: 1 }])).toThrow(
      'pooledScatter: standardDeviation must be >= 0, got -1',
    );
    for (const degreesOfFreedom of [0, Number.POSITIVE_INFINITY])
      expect(() => pooledScatter([{ standardDeviation: 1, degreesOfFreedom }])).toThrow(
        'pooledScatter: degreesOfFreedom must be > 0',
      );
  });
});

describe('resemblance of neighbours', () => {
  test('a drift resembles itself, an alternation opposes itself', () => {
    expect(serialCorrelation([1, 2, 3, 4, 5, 6, 7, 8])).toBeGreaterThan(0.5);
    expect(serialCorrelation([1, -1, 1, -1])).toBeCloseTo(-0.75, 12);
  });

  test('equal readings have none to tell', () => {
    expect(() => serialCorrelation([3, 3, 3])).toThrow(
      'serialCorrelation: readings must not all be equal, got 3',
    );
    expect(() => serialCorrelation([3])).toThrow('serialCorrelation: there must be 2 or more readings');
  });
});
