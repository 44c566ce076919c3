import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalisedError, weightedMean } from '../../src/compute/compare.ts';
import { compareMethods } from '../../src/compute/compare-methods.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { limited, quantity } from './combine/published-models.ts';

const value = fc.double({ min: -100, max: 100, noNaN: true });
const u = fc.double({ min: 0.01, max: 10, noNaN: true });
const results = fc.array(fc.record({ value, standardUncertainty: u }), { minLength: 2, maxLength: 8 });

describe('normalised error', () => {
  test('changing sides changes the sign and nothing else', () => {
    fc.assert(
      fc.property(value, u, value, u, (a, ua, b, ub) => {
        const one = normalisedError({
          result: { value: a, expanded: ua },
          reference: { value: b, expanded: ub },
        });
        const other = normalisedError({
          result: { value: b, expanded: ub },
          reference: { value: a, expanded: ua },
        });
        expect(other.normalisedError).toBeCloseTo(-one.normalisedError, 12);
        expect(other.compatible).toBe(one.compatible);
        expect(other.expanded).toBeCloseTo(one.expanded, 12);
      }),
    );
  });

  test('two results 0.5 apart with 0.3 and 0.4 stand exactly on the edge, which counts as agreeing', () => {
    const edge = normalisedError({
      result: { value: 0.5, expanded: 0.3 },
      reference: { value: 0, expanded: 0.4 },
    });
    expect(edge).toEqual({ difference: 0.5, expanded: 0.5, normalisedError: 1, compatible: true });
    const below = normalisedError({
      result: { value: -0.5, expanded: 0.3 },
      reference: { value: 0, expanded: 0.4 },
    });
    expect(below.compatible).toBe(true);
    const past = normalisedError({
      result: { value: 0.501, expanded: 0.3 },
      reference: { value: 0, expanded: 0.4 },
    });
    expect(past.compatible).toBe(false);
    const under = normalisedError({
      result: { value: -0.501, expanded: 0.3 },
      reference: { value: 0, expanded: 0.4 },
    });
    expect(under.compatible).toBe(false);
  });

  test('a result without uncertainty or value is refused', () => {
    const fine = { value: 0, expanded: 1 };
    expect(() => normalisedError({ result: { value: 0, expanded: 0 }, reference: fine })).toThrow(
      'normalisedError: expanded must be > 0, got 0',
    );
    expect(() => normalisedError({ result: fine, reference: { value: 0, expanded: -1 } })).toThrow(
      'normalisedError: expanded must be > 0, got -1',
    );
    expect(() => normalisedError({ result: fine, reference: { value: Number.NaN, expanded: 1 } })).toThrow(
      'normalisedError: value must be a finite number',
    );
    expect(() => normalisedError({ result: { value: Number.NaN, expanded: 1 }, reference: fine })).toThrow(
      'value',
    );
  });
});

describe('weighted mean', () => {
  test('it lies among the results and is known better than the best of them', () => {
    fc.assert(
      fc.property(results, (data) => {
        const mean = weightedMean(data);
        const values = data.map((r) => r.value);
        expect(mean.value).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(mean.value).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        expect(mean.standardUncertainty).toBeLessThan(Math.min(...data.map((r) => r.standardUncertainty)));
        expect(mean.birgeRatio ** 2 * mean.degreesOfFreedom).toBeCloseTo(mean.chiSquare, 6);
      }),
    );
  });

  test('10 with 4 and 30 with 5 give 17.80 with 3.12, and hardly one quantity', () => {
    const mean = weightedMean([
      { value: 10, standardUncertainty: 4 },
      { value: 30, standardUncertainty: 5 },
    ]);
    expect(mean.value).toBeCloseTo(17.8049, 4);
    expect(mean.standardUncertainty).toBeCloseTo(3.1235, 4);
    expect(mean.chiSquare).toBeCloseTo(9.756, 3);
    expect(mean.degreesOfFreedom).toBe(1);
    expect(mean.consistent).toBe(false);
    expect(mean.birgeRatio).toBeCloseTo(Math.sqrt(9.756), 3);
  });

  test('three equal ones are consistent beyond doubt, and the edge is at 5 %', () => {
    const same = weightedMean([1, 2, 3].map(() => ({ value: 5, standardUncertainty: 0.3 })));
    expect(same).toMatchObject({ chiSquare: 0, probability: 1, consistent: true, birgeRatio: 0 });
    expect(same.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 14);
    // Chi-square 3.84146 with one degree has 5 %: a distance of 1.959964 sqrt(2) u.
    const apart = (d: number) =>
      weightedMean([
        { value: 0, standardUncertainty: 1 },
        { value: d, standardUncertainty: 1 },
      ]);
    expect(apart(1.95996 * Math.SQRT2).consistent).toBe(true);
    expect(apart(1.95997 * Math.SQRT2).consistent).toBe(false);
    expect(apart(2.8).probability).toBeCloseTo(0.0477, 3);
  });

  test('one result alone, or one without uncertainty, is refused', () => {
    expect(() => weightedMean([{ value: 1, standardUncertainty: 1 }])).toThrow(
      'weightedMean: there must be 2 or more results, got 1',
    );
    const bad = [
      { value: 1, standardUncertainty: 0 },
      { value: 1, standardUncertainty: 1 },
    ];
    expect(() => weightedMean(bad)).toThrow('weightedMean: standardUncertainty must be > 0, got 0');
    expect(() =>
      weightedMean([
        { value: Number.NaN, standardUncertainty: 1 },
        { value: 1, standardUncertainty: 1 },
      ]),
    ).toThrow('weightedMean: value must be a finite number');
  });
});

describe('two methods on one transmitter', () => {
  const method = (constant: number, inputs: Input[], more: Partial<SumModel> = {}): SumModel => ({
    kind: 'sum',
    constant,
    inputs,
    sensitivities: inputs.map(() => 1),
    ...more,
  });

  test('independent methods agree or not as the normalised error says', () => {
    const compared = compareMethods({
      first: method(27.2, [quantity('scope', 0, 0.15)]),
      second: method(26.9, [quantity('detector', 0, 0.2)]),
      coverageFactor: 2,
    });
    expect(compared.difference).toBeCloseTo(0.3, 12);
    expect(compared.standardUncertainty).toBeCloseTo(0.25, 12);
    expect(compared.normalisedError).toBeCloseTo(0.6, 12);
    expect(compared.compatible).toBe(true);
    expect(compared.shared).toBeCloseTo(0, 6);
    const mean = weightedMean([
      { value: 27.2, standardUncertainty: 0.15 },
      { value: 26.9, standardUncertainty: 0.2 },
    ]);
    expect(compared.mean.value).toBeCloseTo(mean.value, 10);
    expect(compared.mean.standardUncertainty).toBeCloseTo(mean.standardUncertainty, 10);
    expect(compared.mean.weightOfFirst).toBeCloseTo(0.64, 10);
  });

  test('a difference of exactly its expanded uncertainty still agrees: |E_n| <= 1 (ISO 13528)', () => {
    const first = method(2, [quantity('a', 0, 1)]);
    const compared = compareMethods({ first, second: method(0, []), coverageFactor: 2 });
    expect(compared.normalisedError).toBe(1);
    expect(compared.compatible).toBe(true);
  });

  test('a load that both stand on cancels from the difference and stays in the mean', () => {
    const load = (id: string) => limited(id, 0.2, { cause: 'load' });
    const first = method(27.2, [load('load'), limited('scope', 0.1)]);
    const second = method(27, [load('load'), limited('detector', 0.1)]);
    const compared = compareMethods({ first, second });
    expect(compared.standardUncertainty).toBeCloseTo(Math.sqrt(0.02 / 3), 10);
    expect(compared.shared).toBeCloseTo(0.2 / Math.sqrt(3), 10);
    expect(compared.mean.weightOfFirst).toBeCloseTo(0.5, 10);
    expect(compared.mean.standardUncertainty).toBeCloseTo(Math.sqrt(0.04 / 3 + 0.005 / 3), 10);
    // Taken for independent, a difference of 0.2 dB would pass; without the load it does not.
    expect(compared.compatible).toBe(false);
    const apart = compareMethods({
      first: method(27.2, [limited('load', 0.2), limited('scope', 0.1)]),
      second: method(27, [limited('load', 0.2), limited('detector', 0.1)]),
    });
    expect(apart.compatible).toBe(true);
  });

  test('correlations within one method are kept', () => {
    const tied = method(0, [quantity('a', 0, 1), quantity('b', 0, 1)], {
      correlations: [{ a: 'a', b: 'b', r: 1 }],
    });
    const compared = compareMethods({ first: tied, second: method(0, [quantity('a', 0, 1)]) });
    expect(compared.standardUncertainty).toBeCloseTo(Math.sqrt(5), 10);
  });

  test('a method that only adds to what the other has gets no weight, and never a negative one', () => {
    const first = method(27, [limited('load', 0.2, { cause: 'load' })]);
    const second = method(27.5, [limited('load', 0.4, { cause: 'load' }), limited('own', 0.1)]);
    const compared = compareMethods({ first, second });
    expect(compared.mean.weightOfFirst).toBe(1);
    expect(compared.mean.value).toBeCloseTo(27, 12);
    const turned = compareMethods({ first: second, second: first });
    expect(turned.mean.weightOfFirst).toBe(0);
    expect(turned.mean.value).toBeCloseTo(27, 12);
  });

  test('levels that only the arithmetic keeps apart differ by nothing, others by what they differ', () => {
    const exact = (constant: number) => method(constant, []);
    expect(0.1 + 0.2).not.toBe(0.3);
    for (const [one, other] of [
      [0.1 + 0.2, 0.3],
      [-7.7 - 19.4, -27.1],
    ] as const)
      expect(compareMethods({ first: exact(one), second: exact(other) })).toMatchObject({
        difference: 0,
        normalisedError: undefined,
        compatible: true,
      });
    const apart = compareMethods({ first: exact(27 + 1e-9), second: exact(27) });
    expect(apart.difference).toBeCloseTo(1e-9, 12);
    expect(apart.compatible).toBe(false);
  });

  test('two methods that share everything can only be equal', () => {
    const both = (constant: number) => method(constant, [limited('all', 0.2, { cause: 'all' })]);
    expect(compareMethods({ first: both(27), second: both(27) })).toMatchObject({
      normalisedError: undefined,
      compatible: true,
      expanded: 0,
    });
    const unequal = compareMethods({ first: both(27), second: both(27.1) });
    expect(unequal.compatible).toBe(false);
    expect(unequal.mean.weightOfFirst).toBe(0.5);
  });

  test('the coverage asked for is the coverage of the difference, at its degrees of freedom', () => {
    const first = method(1, [quantity('a', 0, 1, 4)]);
    const compared = compareMethods({ first, second: method(0, []), coverageProbability: 0.95 });
    expect(compared.expanded).toBeCloseTo(2.7764, 4);
    expect(compared.normalisedError).toBeCloseTo(1 / 2.7764, 4);
  });
});
