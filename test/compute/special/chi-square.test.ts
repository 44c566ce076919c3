import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chiSquareQuantile,
  chiSquareShareAbove,
  chiSquareShareBelow,
} from '../../../src/compute/special/chi-square.ts';
import { normalQuantile } from '../../../src/compute/special/normal.ts';
import { answerOf, offenders, relativeError } from '../../golden/error.ts';
import special from '../../golden/special.json' with { type: 'json' };

describe('chi-square', () => {
  const degrees = fc.double({ min: 0.5, max: 1e4, noNaN: true });

  test('quantile undoes share below', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-8, max: 1 - 1e-8, noNaN: true }),
        degrees,
        (share, degreesOfFreedom) => {
          const x = chiSquareQuantile({ share, degreesOfFreedom });
          expect(relativeError(chiSquareShareBelow({ x, degreesOfFreedom }), share)).toBeLessThan(1e-10);
        },
      ),
    );
  });

  test('below and above make one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), degrees, (x, degreesOfFreedom) => {
        const at = { x, degreesOfFreedom };
        expect(chiSquareShareBelow(at) + chiSquareShareAbove(at)).toBe(1);
      }),
    );
  });

  test('with one degree it is the square of a normal value', () => {
    for (const p of [0.1, 0.5, 0.9, 0.99])
      expect(chiSquareQuantile({ share: p, degreesOfFreedom: 1 })).toBeCloseTo(
        normalQuantile((1 + p) / 2) ** 2,
        11,
      );
  });

  test('quantiles agree with 50-digit values to 1e-13', () => {
    expect(
      offenders(special.chiSquareQuantile, 1e-13, ({ inputs, ...row }) =>
        relativeError(
          chiSquareQuantile({ share: inputs[0] as number, degreesOfFreedom: inputs[1] as number }),
          answerOf({ inputs, ...row }),
        ),
      ),
    ).toEqual([]);
  });

  test('agrees with standard tables', () => {
    // Upper values printed to five decimals in standard tables; lower ones to three in the NIST e-Handbook, 1.3.6.7.4.
    expect(chiSquareQuantile({ share: 0.95, degreesOfFreedom: 1 })).toBeCloseTo(3.84146, 5);
    expect(chiSquareQuantile({ share: 0.99, degreesOfFreedom: 10 })).toBeCloseTo(23.20925, 5);
    expect(chiSquareQuantile({ share: 0.05, degreesOfFreedom: 20 })).toBeCloseTo(10.851, 3);
    expect(chiSquareQuantile({ share: 0.001, degreesOfFreedom: 100 })).toBeCloseTo(61.918, 3);
  });

  test('ends', () => {
    expect(chiSquareQuantile({ share: 0, degreesOfFreedom: 3 })).toBe(0);
    expect(chiSquareQuantile({ share: 1, degreesOfFreedom: 3 })).toBe(Number.POSITIVE_INFINITY);
    expect(chiSquareShareBelow({ x: Number.POSITIVE_INFINITY, degreesOfFreedom: 3 })).toBe(1);
    expect(chiSquareShareAbove({ x: 0, degreesOfFreedom: 3 })).toBe(1);
  });

  test('refuses what lies outside its ranges', () => {
    expect(() => chiSquareShareBelow({ x: -1, degreesOfFreedom: 3 })).toThrow(
      new RangeError('chiSquareShareBelow: x must be >= 0, got -1'),
    );
    expect(() => chiSquareShareAbove({ x: 1, degreesOfFreedom: 0 })).toThrow(
      new RangeError('chiSquareShareAbove: degreesOfFreedom must be > 0, got 0'),
    );
    expect(() => chiSquareQuantile({ share: 2, degreesOfFreedom: 3 })).toThrow(
      new RangeError('chiSquareQuantile: share must be 0 to 1, got 2'),
    );
    expect(() => chiSquareQuantile({ share: 0.5, degreesOfFreedom: -3 })).toThrow(
      new RangeError('chiSquareQuantile: degreesOfFreedom must be > 0, got -3'),
    );
  });
});
