import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choleskyFactor, correlationMatrix, tiedGroups } from '../../../src/compute/combine/correlation.ts';
import { coverageOf, DEFAULT_COVERAGE_PROBABILITY } from '../../../src/compute/combine/coverage-factor.ts';
import { limited, quantity } from './published-models.ts';

describe('the matrix of correlations', () => {
  const inputs = [limited('a', 1), limited('b', 1), limited('c', 1)];

  test('has ones on its diagonal and what is stated on both sides of it', () => {
    expect(correlationMatrix({ inputs, correlations: [{ a: 'c', b: 'a', r: -0.3 }] })).toEqual([
      [1, 0, -0.3],
      [0, 1, 0],
      [-0.3, 0, 1],
    ]);
    expect(correlationMatrix({ inputs: [] })).toEqual([]);
    for (const strange of [
      { a: 'nobody', b: 'a', r: 0.5 },
      { a: 'a', b: 'nobody', r: 0.5 },
    ])
      expect(correlationMatrix({ inputs, correlations: [strange] })).toEqual(correlationMatrix({ inputs }));
  });

  test('a shared cause ties its own inputs and no others', () => {
    const shared = [
      limited('a', 1, { cause: 'x' }),
      limited('b', 2, { cause: 'x' }),
      limited('c', 1, { cause: 'y' }),
    ];
    expect(correlationMatrix({ inputs: shared })).toEqual([
      [1, 1, 0],
      [1, 1, 0],
      [0, 0, 1],
    ]);
    const mixed = [limited('a', 1, { cause: 'x' }), { ...quantity('b', 0, 1), cause: 'x' }];
    expect(correlationMatrix({ inputs: mixed })[0]?.[1]).toBeCloseTo(Math.sqrt(3 / Math.PI), 8);
  });
});

describe('its factor', () => {
  test('multiplied with itself gives the matrix back, for any that quantities can have', () => {
    const row = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 4, maxLength: 4 }), (vectors) => {
        // Correlations of four weighted sums of four independent quantities, the first quantity always in.
        const unit = vectors.map((v) => {
          const long = [1, ...v];
          const size = Math.hypot(...long);
          return long.map((x) => x / size);
        });
        const matrix = unit.map((a) => unit.map((b) => a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0)));
        const l = choleskyFactor(matrix);
        matrix.forEach((_, i) => {
          matrix.forEach((__, j) => {
            const product = (l[i] ?? []).reduce((sum, x, k) => sum + x * (l[j]?.[k] ?? 0), 0);
            expect(product).toBeCloseTo(matrix[i]?.[j] ?? Number.NaN, 4);
            if (j > i) expect(l[i]?.[j]).toBe(0);
          });
        });
      }),
    );
  });

  test('full correlation leaves an empty column, of either sign', () => {
    expect(
      choleskyFactor([
        [1, 1],
        [1, 1],
      ]),
    ).toEqual([
      [1, 0],
      [1, 0],
    ]);
    expect(
      choleskyFactor([
        [1, -1],
        [-1, 1],
      ]),
    ).toEqual([
      [1, 0],
      [-1, 0],
    ]);
  });

  test('coefficients that no three quantities have together are refused', () => {
    const impossible = [
      [1, 0.9, -0.9],
      [0.9, 1, 0.9],
      [-0.9, 0.9, 1],
    ];
    expect(() => choleskyFactor(impossible)).toThrow(
      'choleskyFactor: correlations must be possible together',
    );
    const tiedToTwins = [
      [1, 1, 0.5],
      [1, 1, 0],
      [0.5, 0, 1],
    ];
    expect(() => choleskyFactor(tiedToTwins)).toThrow(RangeError);
  });
});

describe('groups of tied inputs', () => {
  const inputs = ['a', 'b', 'c', 'd', 'e'].map((id) => limited(id, 1));

  test('ties are handed on, and free inputs stand alone', () => {
    const groups = tiedGroups({
      inputs,
      correlations: [
        { a: 'c', b: 'd', r: -0.2 },
        { a: 'a', b: 'c', r: 0.1 },
        { a: 'b', b: 'e', r: 0 },
      ],
    });
    expect(groups[0]).toBe(groups[2]);
    expect(groups[2]).toBe(groups[3]);
    expect(new Set(groups).size).toBe(3);
    expect(groups[1]).not.toBe(groups[4]);
  });

  test('a chain of ties away from the first input is one group', () => {
    const groups = tiedGroups({
      inputs,
      correlations: [
        { a: 'b', b: 'c', r: 0.5 },
        { a: 'c', b: 'd', r: 0.5 },
      ],
    });
    expect(groups[1]).toBe(groups[2]);
    expect(groups[2]).toBe(groups[3]);
    expect(new Set(groups).size).toBe(3);
  });

  test('a cause ties, and a coefficient ties a whole cause to another input', () => {
    const shared = [
      limited('a', 1, { cause: 'x' }),
      limited('b', 1),
      limited('c', 1, { cause: 'x' }),
      limited('d', 1, { cause: 'y' }),
    ];
    const groups = tiedGroups({ inputs: shared });
    expect(groups[0]).toBe(groups[2]);
    expect(new Set(groups).size).toBe(3);
    const more = tiedGroups({ inputs: shared, correlations: [{ a: 'd', b: 'c', r: 0.5 }] });
    expect(more[3]).toBe(more[0]);
    expect(new Set(more).size).toBe(2);
  });

  test('no inputs make no groups', () => {
    expect(tiedGroups({ inputs: [] })).toEqual([]);
  });
});

describe('coverage factors', () => {
  test("probability and factor are each other's inverse at any degrees of freedom", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.9999, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        (coverageProbability, degreesOfFreedom) => {
          const { coverageFactor } = coverageOf({ coverageProbability, degreesOfFreedom });
          expect(coverageOf({ coverageFactor, degreesOfFreedom }).coverageProbability).toBeCloseTo(
            coverageProbability,
            9,
          );
        },
      ),
    );
  });

  test('the published factors come out (GUM table G.2)', () => {
    const rows = [
      [1, 0.95, 12.71],
      [2, 0.9545, 4.53],
      [5, 0.95, 2.57],
      [16, 0.99, 2.92],
      [19, 0.95, 2.09],
      [50, 0.9973, 3.16],
      [Number.POSITIVE_INFINITY, 0.95, 1.96],
      [Number.POSITIVE_INFINITY, 0.9545, 2],
    ] as const;
    for (const [degreesOfFreedom, coverageProbability, k] of rows)
      expect(Math.abs(coverageOf({ coverageProbability, degreesOfFreedom }).coverageFactor - k)).toBeLessThan(
        0.0051,
      );
  });

  test('without a wish it is 95 %', () => {
    expect(DEFAULT_COVERAGE_PROBABILITY).toBe(0.95);
    expect(coverageOf({ degreesOfFreedom: 9 })).toEqual(
      coverageOf({ coverageProbability: 0.95, degreesOfFreedom: 9 }),
    );
  });
});
