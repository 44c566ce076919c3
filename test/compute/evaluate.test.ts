import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentOf } from '../../src/compute/component.ts';
import { normal } from '../../src/compute/distribution/normal.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { evaluatePrefixes } from '../../src/compute/evaluate-prefixes.ts';
import { rootSumSquareOfLimits } from '../../src/compute/limits-rss.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { prefixOf } from '../../src/compute/prefix.ts';
import type { Result, WholeDistribution } from '../../src/compute/result.ts';
import { endGauge, limited, quantity } from './combine/published-models.ts';

const sum = (
  inputs: Input[],
  sensitivities = inputs.map(() => 1),
  more: Partial<SumModel> = {},
): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs,
  sensitivities,
  ...more,
});

function wholeOf({ whole }: Result): WholeDistribution {
  if ('unavailable' in whole) throw new Error(`no whole distribution: ${whole.unavailable}`);
  return whole;
}

const part = fc.record({
  halfWidth: fc.double({ min: 0.05, max: 2, noNaN: true }),
  shape: fc.constantFrom('rectangular' as const, 'triangular' as const, 'arcsine' as const),
  sign: fc.constantFrom(1, -1),
});
const chainOf = (
  parts: { halfWidth: number; shape: 'rectangular' | 'triangular' | 'arcsine'; sign: number }[],
) =>
  sum(
    parts.map(({ halfWidth, shape }, i) => limited(`part ${i}`, halfWidth, { shape })),
    parts.map(({ sign }) => sign),
    { constant: 27 },
  );

describe('the three ways side by side', () => {
  test('all agree on the spread: the whole distribution has the standard deviation of propagation', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const result = evaluate({ model: chainOf(parts) });
        const whole = wholeOf(result);
        expect(whole.standardDeviation).toBeCloseTo(result.propagation.standardUncertainty, 9);
        expect(whole.mean).toBeCloseTo(result.estimate, 9);
      }),
      { numRuns: 50 },
    );
  });

  test("no interval of a limited chain reaches past the worst case, save propagation's", () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const result = evaluate({ model: chainOf(parts), coverageProbability: 0.99 });
        const { symmetric } = wholeOf(result);
        expect(symmetric.lower).toBeGreaterThanOrEqual(result.worstCase.interval.lower - 1e-6);
        expect(symmetric.upper).toBeLessThanOrEqual(result.worstCase.interval.upper + 1e-6);
      }),
      { numRuns: 50 },
    );
  });

  test('turning every sign turns the result round the constant', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const model = chainOf(parts);
        const turned = { ...model, sensitivities: model.sensitivities.map((c) => -c) };
        const [a, b] = [wholeOf(evaluate({ model })), wholeOf(evaluate({ model: turned }))];
        expect(a.symmetric.upper - 27).toBeCloseTo(27 - b.symmetric.lower, 6);
      }),
      { numRuns: 30 },
    );
  });

  test('two pads into a receiver: 3.3 dB worst, 2.47 dB at k = 2, but 2.18 dB hold 95 %', () => {
    const model = sum(
      [
        limited('pad 1', 0.5),
        limited('pad 2', 0.5),
        limited('receiver', 2),
        limited('cable', 0.1),
        limited('mismatch', 0.2, { shape: 'arcsine' }),
      ],
      undefined,
      { constant: 26.8 },
    );
    const at95 = evaluate({ model });
    expect(at95.estimate).toBeCloseTo(26.8, 12);
    expect(at95.worstCase.interval.upper).toBeCloseTo(30.1, 12);
    expect(wholeOf(at95).symmetric.upper - 26.8).toBeCloseTo(2.18, 2);
    const atTwo = evaluate({ model, coverageFactor: 2 });
    expect(atTwo.propagation.expanded).toBeCloseTo(2.47, 2);
    const covered =
      wholeOf(atTwo).shareBelow(26.8 + atTwo.propagation.expanded) -
      wholeOf(atTwo).shareBelow(26.8 - atTwo.propagation.expanded);
    expect(covered).toBeCloseTo(0.984, 3);
    // The coverage factor's probability holds for the whole distribution too.
    expect(wholeOf(atTwo).shareBelow(wholeOf(atTwo).symmetric.upper)).toBeCloseTo(0.97725, 5);
  });

  test('four rectangulars end at 3.879, where propagation says 3.92 (JCGM 101, 9.2.3)', () => {
    const model = sum([1, 2, 3, 4].map((i) => limited(`X${i}`, Math.sqrt(3))));
    const result = evaluate({ model });
    expect(result.propagation.expanded).toBeCloseTo(3.92, 2);
    expect(wholeOf(result).symmetric.upper).toBeCloseTo(2 * Math.sqrt(3) * (2 - 0.6 ** 0.25), 5);
  });

  test('one large rectangular of four ends at 17.0, where propagation says 19.9 (JCGM 101, 9.2.4)', () => {
    const model = sum([1, 1, 1, 10].map((u, i) => limited(`X${i}`, u * Math.sqrt(3))));
    const result = evaluate({ model });
    expect(result.propagation.expanded).toBeCloseTo(19.9, 1);
    expect(wholeOf(result).symmetric.upper).toBeCloseTo(17.0158, 3);
  });

  test('four normals end at 3.92 either way (JCGM 101, 9.2.2)', () => {
    const result = evaluate({ model: sum([1, 2, 3, 4].map((i) => quantity(`X${i}`, 0, 1))) });
    expect(result.propagation.expanded).toBeCloseTo(3.92, 2);
    expect(wholeOf(result).symmetric.upper).toBeCloseTo(result.propagation.expanded, 6);
    expect(result.worstCase.unlimited).toHaveLength(4);
  });
});

describe('where the whole distribution does not apply', () => {
  test('a function says that it is no sum', () => {
    expect(evaluate({ model: endGauge() }).whole).toEqual({ unavailable: 'not-a-sum' });
  });

  test('a stated correlation says so, unless it is zero or ties an input without effect', () => {
    const inputs = [limited('a', 1), limited('b', 1)];
    const tied = (r: number, sensitivities = [1, 1]) =>
      evaluate({ model: sum(inputs, sensitivities, { correlations: [{ a: 'a', b: 'b', r }] }) }).whole;
    expect(tied(0.5)).toEqual({ unavailable: 'correlated' });
    expect('unavailable' in tied(0)).toBe(false);
    expect('unavailable' in tied(0.5, [1, 0])).toBe(false);
    expect('unavailable' in tied(0.5, [0, 1])).toBe(false);
  });
});

describe('shared causes in the whole distribution', () => {
  test('a cascade adds and a ratio cancels', () => {
    const pair = (cause?: string) =>
      ['a', 'b'].map((id) => limited(id, 0.5, cause === undefined ? {} : { cause }));
    const cascade = wholeOf(evaluate({ model: sum(pair('meter')) }));
    // One rectangle of +-1: its 95 % interval ends at 0.95.
    expect(cascade.symmetric.upper).toBeCloseTo(0.95, 6);
    const apart = wholeOf(evaluate({ model: sum(pair()) }));
    // A triangle of +-1: 1 - sqrt(0.05).
    expect(apart.symmetric.upper).toBeCloseTo(1 - Math.sqrt(0.05), 5);
    const ratio = evaluate({ model: sum(pair('meter'), [1, -1], { constant: 3 }) });
    expect(wholeOf(ratio).symmetric).toEqual({ lower: 3, upper: 3 });
    expect(ratio.worstCase.interval).toEqual({ lower: 3, upper: 3 });
    expect(ratio.propagation.expanded).toBe(0);
  });

  test('different shapes under one cause have the spread of propagation', () => {
    const mixed = (signs: number[]) => {
      const inputs = [
        limited('box', 1, { cause: 'x' }),
        { ...quantity('bell', 0, 0.5), cause: 'x' },
        limited('free', 0.3),
      ];
      const result = evaluate({ model: sum(inputs, signs) });
      expect(wholeOf(result).standardDeviation).toBeCloseTo(result.propagation.standardUncertainty, 6);
      return wholeOf(result);
    };
    const together = mixed([1, 1, 0]);
    // At rank p both stand at their own quantile.
    expect(together.symmetric.upper).toBeCloseTo(0.95 + 0.5 * 1.959964, 3);
    expect(together.symmetric.lower).toBeCloseTo(-0.95 - 0.5 * 1.959964, 3);
    mixed([1, -1, 1]);
  });

  test('readings and a shared cause with t shapes are merged before anything is added', () => {
    const readings = (id: string) =>
      componentOf({
        id,
        statement: { form: 'readings', standardDeviation: 0.2, count: 4 },
        unit: 'dB',
        cause: 'session',
      });
    const result = evaluate({ model: sum([readings('a'), readings('b')], [1, -0.5]) });
    // t of 3 degrees at 97.5 %: 3.182; scale 0.1 x (1 - 0.5).
    expect(wholeOf(result).symmetric.upper).toBeCloseTo(0.05 * 3.18245, 5);
    expect(result.propagation.expanded).toBeCloseTo(0.05 * 3.18245, 5);
  });
});

describe('the chain rung by rung', () => {
  const model = sum(
    [
      limited('a', 0.5),
      limited('b', 0.3, { cause: 'x' }),
      limited('c', 0.3, { cause: 'x' }),
      quantity('d', 0, 0.1),
    ],
    [1, 1, -1, 1],
    { constant: 27 },
  );

  test('the first result is exact and the last is that of the whole chain', () => {
    const results = evaluatePrefixes({ model, coverageFactor: 2 });
    expect(results).toHaveLength(5);
    expect(results[0]?.propagation.expanded).toBe(0);
    expect(results[0]?.estimate).toBe(27);
    const whole = evaluate({ model, coverageFactor: 2 });
    expect(results[4]?.propagation).toEqual(whole.propagation);
    expect(results[4]?.worstCase).toEqual(whole.worstCase);
    expect(results[4] && wholeOf(results[4]).symmetric).toEqual(wholeOf(whole).symmetric);
  });

  test('independent rungs only ever widen the band, a shared cause may narrow it', () => {
    const bands = evaluatePrefixes({ model }).map(({ propagation }) => propagation.expanded);
    expect(bands[2]).toBeGreaterThan(bands[1] ?? Number.NaN);
    expect(bands[3]).toBeLessThan(bands[2] ?? Number.NaN);
    expect(bands[3]).toBeCloseTo(bands[1] ?? Number.NaN, 12);
  });

  test('correlations count once both of their inputs are there', () => {
    const tied = { ...model, correlations: [{ a: 'a', b: 'd', r: 0.5 }] };
    expect(prefixOf(tied, 3).correlations).toEqual([]);
    expect(prefixOf(tied, 4).correlations).toEqual(tied.correlations);
    const results = evaluatePrefixes({ model: tied });
    expect('unavailable' in (results[3]?.whole ?? {})).toBe(false);
    expect(results[4]?.whole).toEqual({ unavailable: 'correlated' });
  });
});

describe('root-sum-square of limits', () => {
  test('three pads of 0.5 dB: 0.87 dB, the square root of 3 times u, which covers 93 %', () => {
    const model = sum(['a', 'b', 'c'].map((id) => limited(id, 0.5)));
    const rss = rootSumSquareOfLimits({ model });
    expect(rss.halfWidth).toBeCloseTo(0.866, 3);
    expect(rss.coverageFactor).toBeCloseTo(Math.sqrt(3), 12);
    // Sum of three rectangles beyond sqrt(3)/2: 2 x (3/2 - sqrt(3)/2)^3 / 6 on the unit scale.
    expect(rss.covers).toBeCloseTo(1 - (1.5 - Math.sqrt(3) / 2) ** 3 / 3, 6);
    expect(rss.unlimited).toEqual([]);
  });

  test('a single rectangle is covered whole, since its limit is its root', () => {
    const rss = rootSumSquareOfLimits({ model: sum([limited('a', 0.5)]) });
    expect(rss.covers).toBeCloseTo(1, 12);
    expect(rss.halfWidth).toBe(0.5);
  });

  test('it overlooks a shared cause, and what it covers tells', () => {
    const inputs = ['a', 'b', 'c'].map((id) => limited(id, 0.5, { cause: 'x' }));
    const rss = rootSumSquareOfLimits({ model: sum(inputs) });
    expect(rss.halfWidth).toBeCloseTo(0.866, 3);
    expect(rss.covers).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  test('counts each part by its own limit: 3 and 4 make 5', () => {
    const model = sum([limited('a', 3), limited('b', 2)], [1, 2]);
    expect(rootSumSquareOfLimits({ model }).halfWidth).toBe(5);
  });

  test('sensitivities count, and parts without limit are left out and named', () => {
    const model = sum([limited('a', 0.5), quantity('bell', 0, 1), quantity('idle', 0, 1)], [-2, 1, 0]);
    const rss = rootSumSquareOfLimits({ model });
    expect(rss.halfWidth).toBe(1);
    expect(rss.unlimited).toEqual(['bell']);
  });

  test('lopsided limits count half of their width, about the shifted middle', () => {
    const input = componentOf({ id: 'a', statement: { form: 'asymmetric', lower: 0, upper: 1 }, unit: 'dB' });
    const rss = rootSumSquareOfLimits({ model: sum([input]) });
    expect(rss.halfWidth).toBe(0.5);
    expect(rss.covers).toBeCloseTo(1, 12);
  });

  test('without uncertainty there is no factor, without independence no share', () => {
    const exact = rootSumSquareOfLimits({ model: sum([]) });
    expect(exact).toMatchObject({ coverageFactor: Number.POSITIVE_INFINITY, covers: 1, halfWidth: 0 });
    const correlated = sum([limited('a', 1), limited('b', 1)], [1, 1], {
      correlations: [{ a: 'a', b: 'b', r: 1 }],
    });
    expect(rootSumSquareOfLimits({ model: correlated }).covers).toBe(undefined);
    const twins = sum([limited('a', 1), limited('a', 1)]);
    expect(() => rootSumSquareOfLimits({ model: twins })).toThrow(
      'rootSumSquareOfLimits: ids of inputs must differ',
    );
  });
});

test('a model with a hundred links evaluates like any other', () => {
  const inputs = Array.from({ length: 100 }, (_, i) => limited(`link ${i}`, 0.1));
  const result = evaluate({ model: sum(inputs) });
  expect(wholeOf(result).symmetric.upper).toBeCloseTo(result.propagation.expanded, 2);
});

test('an estimate stands where the means of all inputs lead', () => {
  const inputs = [
    {
      id: 'a',
      distribution: normal({ mean: 2, standardDeviation: 1 }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    },
    componentOf({ id: 'b', statement: { form: 'asymmetric', lower: 0, upper: 1 }, unit: 'dB' }),
  ];
  expect(evaluate({ model: sum(inputs, [3, -2], { constant: 10 }) }).estimate).toBeCloseTo(15, 12);
});
