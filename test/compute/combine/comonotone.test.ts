import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  affineOf,
  comonotoneCorrelation,
  meanOverRanks,
  quartileDistance,
} from '../../../src/compute/combine/comonotone.ts';
import { comonotoneSum } from '../../../src/compute/combine/comonotone-sum.ts';
import { mergeCauses } from '../../../src/compute/combine/merge-causes.ts';
import { tabulated } from '../../../src/compute/combine/tabulated.ts';
import { worstOfSum } from '../../../src/compute/combine/worst-sum.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { transformed } from '../../../src/compute/distribution/transformed.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import type { Input } from '../../../src/compute/model.ts';
import { limited, quantity } from './published-models.ts';

const box = rectangular({ lower: -1, upper: 1 });
const bell = normal({ mean: 0, standardDeviation: 1 });
const t3 = student({ location: 0, scale: 1, degreesOfFreedom: 3 });
const shapes = [box, bell, t3, triangular({ lower: -1, upper: 1 }), arcsine({ centre: 0, halfWidth: 1 })];
const anyShape = fc.constantFrom<Distribution>(
  ...shapes,
  limited('p', 5, { unit: 'percentOfVolts' }).distribution,
);

describe('one shape or another', () => {
  test('a shape stretched and moved is recognised, with its factor and shift', () => {
    fc.assert(
      fc.property(
        anyShape,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: -10, max: 10, noNaN: true }),
        (shape, factor, shift) => {
          const affine = affineOf(shape, scaled(shape, { factor, shift }));
          expect(affine?.scale).toBeCloseTo(factor, 6);
          expect(affine?.shift).toBeCloseTo(shift, 6);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('no two of the shapes are taken for each other', () => {
    for (const a of shapes) for (const b of shapes) expect(affineOf(a, b) === undefined).toBe(a !== b);
    const t4 = student({ location: 0, scale: 1, degreesOfFreedom: 4 });
    expect(affineOf(t3, t4)).toBe(undefined);
    for (const factor of [1e-9, 1e9]) {
      const stretched = shapes.map((shape) => scaled(shape, { factor, shift: 0 }));
      for (const a of stretched)
        for (const b of stretched) expect(affineOf(a, b) === undefined).toBe(a !== b);
      for (const [i, a] of shapes.entries())
        for (const [j, b] of stretched.entries()) expect(affineOf(a, b) === undefined).toBe(i !== j);
    }
  });

  test('a shape is itself, exactly, and a constant has no width to compare', () => {
    expect(affineOf(t3, t3)).toEqual({ scale: 1, shift: 0 });
    expect(affineOf(constant(1), box)).toBe(undefined);
    expect(quartileDistance(constant(1))).toBe(0);
    expect(quartileDistance(box)).toBe(1);
  });
});

describe('moving together by rank', () => {
  test('the mean over ranks of a quantile is the mean, of its square the variance', () => {
    for (const shape of [box, bell, shapes[3] ?? box, shapes[4] ?? box]) {
      expect(meanOverRanks((p) => shape.quantile(p))).toBeCloseTo(0, 10);
      expect(meanOverRanks((p) => shape.quantile(p) ** 2)).toBeCloseTo(
        (shape.standardDeviation ?? 0) ** 2,
        // The quantile of the triangle has a kink in the middle.
        6,
      );
    }
  });

  test('one shape is correlated by one, two shapes by less', () => {
    expect(comonotoneCorrelation(box, rectangular({ lower: 5, upper: 6 }))).toBe(1);
    expect(comonotoneCorrelation(bell, box)).toBeCloseTo(Math.sqrt(3 / Math.PI), 8);
    expect(comonotoneCorrelation(box, bell)).toBeCloseTo(Math.sqrt(3 / Math.PI), 8);
    // Rectangular and U-shaped: mean of (2p - 1)(-cos pi p) is 4/pi^2; times sqrt(3) sqrt(2).
    expect(comonotoneCorrelation(box, shapes[4] ?? box)).toBeCloseTo((4 * Math.sqrt(6)) / Math.PI ** 2, 8);
  });

  test('lopsided shapes count about their means', () => {
    const percent = limited('p', 30, { unit: 'percentOfVolts' }).distribution;
    const r = comonotoneCorrelation(percent, box);
    const direct =
      meanOverRanks((p) => (percent.quantile(p) - (percent.mean ?? 0)) * box.quantile(p)) /
      ((percent.standardDeviation ?? 0) * (box.standardDeviation ?? 0));
    expect(r).toBeCloseTo(direct, 8);
    expect(r).toBeLessThan(1);
    expect(comonotoneCorrelation(percent, scaled(box, { factor: 1, shift: 100 }))).toBeCloseTo(r, 8);
  });

  test('two lopsided shapes count about the means of both', () => {
    const percent = limited('p', 30, { unit: 'percentOfVolts' }).distribution;
    const grown = transformed({
      of: normal({ mean: 1, standardDeviation: 0.4 }),
      forward: Math.exp,
      inverse: Math.log,
      slope: Math.exp,
    });
    const direct =
      meanOverRanks(
        (p) => (percent.quantile(p) - (percent.mean ?? 0)) * (grown.quantile(p) - (grown.mean ?? 0)),
      ) /
      ((percent.standardDeviation ?? 0) * (grown.standardDeviation ?? 0));
    expect(comonotoneCorrelation(percent, grown)).toBeCloseTo(direct, 9);
    expect(comonotoneCorrelation(grown, percent)).toBeCloseTo(direct, 9);
  });

  test('where there is no standard deviation to divide by, rank alone speaks', () => {
    const cauchy = student({ location: 0, scale: 1, degreesOfFreedom: 1 });
    expect(comonotoneCorrelation(cauchy, box)).toBe(1);
    expect(comonotoneCorrelation(box, cauchy)).toBe(1);
    expect(comonotoneCorrelation(constant(2), box)).toBe(1);
  });
});

describe('the sum of different shapes under one cause', () => {
  const parts = [
    { distribution: box, sensitivity: 1 },
    { distribution: bell, sensitivity: 0.5 },
  ];
  const together = comonotoneSum(parts);

  test('its quantiles are the sums of quantiles', () => {
    for (const p of [0.001, 0.025, 0.2, 0.5, 0.8, 0.975, 0.999])
      expect(together.quantile(p)).toBeCloseTo(box.quantile(p) + 0.5 * bell.quantile(p), 3);
  });

  test('share below, quantile and density fit one another', () => {
    for (const p of [0.01, 0.1, 0.3, 0.5, 0.9]) {
      const x = together.quantile(p);
      expect(together.shareBelow(x)).toBeCloseTo(p, 9);
      const h = 1e-3;
      const slope = (together.shareBelow(x + h) - together.shareBelow(x - h)) / (2 * h);
      expect(together.density(x) / slope).toBeCloseTo(1, 0);
    }
    expect(together.shareBelow(-100)).toBe(0);
    expect(together.shareBelow(100)).toBe(1);
    expect(together.density(100)).toBe(0);
    expect(together.density(-100)).toBe(0);
    expect(together.quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(together.quantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(() => together.quantile(1.1)).toThrow('quantile: share must be 0 to 1');
  });

  test('mean and standard deviation are those of the sum', () => {
    expect(together.mean).toBe(0);
    expect(together.shape).toBe('transformed');
    const aside = comonotoneSum([
      { distribution: rectangular({ lower: 4, upper: 6 }), sensitivity: 1 },
      { distribution: normal({ mean: -3, standardDeviation: 1 }), sensitivity: 0.5 },
    ]);
    expect(aside.mean).toBeCloseTo(3.5, 14);
    expect(aside.standardDeviation).toBeCloseTo(together.standardDeviation ?? 0, 12);
    const r = Math.sqrt(3 / Math.PI);
    expect(together.standardDeviation).toBeCloseTo(
      Math.sqrt(1 / 3 + 0.25 + 2 * r * 0.5 * Math.sqrt(1 / 3)),
      7,
    );
    const t1 = student({ location: 0, scale: 1, degreesOfFreedom: 1 });
    const t2 = student({ location: 0, scale: 1, degreesOfFreedom: 2 });
    const with1 = comonotoneSum([...parts, { distribution: t1, sensitivity: 1 }]);
    expect(with1.mean).toBe(undefined);
    const first1 = comonotoneSum([{ distribution: t1, sensitivity: 1 }, ...parts]);
    expect(first1.mean).toBe(undefined);
    expect(with1.standardDeviation).toBe(undefined);
    const with2 = comonotoneSum([...parts, { distribution: t2, sensitivity: 1 }]);
    expect(with2.mean).toBe(0);
    expect(with2.standardDeviation).toBe(undefined);
  });

  test('far out its quantiles still rise, its shares end at 0 and 1, and nothing is likely beyond its table', () => {
    const fresh = comonotoneSum(parts);
    const shares = [1e-9, 1e-8, 1e-7, 1e-6, 1e-3, 0.5, 0.999, 1 - 1e-6, 1 - 1e-7, 1 - 1e-8, 1 - 1e-9];
    const quantiles = shares.map((p) => fresh.quantile(p));
    quantiles.forEach((x, i) => {
      expect(x).toBeGreaterThanOrEqual(quantiles[i - 1] ?? -10);
    });
    expect([-100, 100].map((x) => fresh.shareBelow(x))).toEqual([0, 1]);
    expect([-100, 100].map((x) => fresh.density(x))).toEqual([0, 0]);
  });

  test('with opposite signs the sum folds: box less U has exactly the limits of its widest gap', () => {
    const u = arcsine({ centre: 0, halfWidth: 1 });
    const against = comonotoneSum([
      { distribution: box, sensitivity: 1 },
      { distribution: u, sensitivity: -1 },
    ]);
    const g = (p: number) => 2 * p - 1 + Math.cos(Math.PI * p);
    // Share below x counted directly: the part of a million ranks with g <= x.
    for (const x of [-0.15, -0.05, 0, 0.1, 0.2]) {
      let below = 0;
      for (let i = 0; i < 1e5; i++) if (g((i + 0.5) / 1e5) <= x) below++;
      expect(against.shareBelow(x)).toBeCloseTo(below / 1e5, 2);
    }
    expect(against.limits.upper).toBeCloseTo(0.2105, 3);
    expect(against.limits.lower).toBeCloseTo(-0.2105, 3);
  });

  test('an unlimited part opens the side it reaches', () => {
    const oneSided = (sensitivity: number) =>
      comonotoneSum([
        { distribution: box, sensitivity: 1 },
        { distribution: halfOpen, sensitivity },
      ]).limits;
    const halfOpen: Distribution = { ...bell, limits: { lower: -2, upper: Number.POSITIVE_INFINITY } };
    expect(oneSided(1).upper).toBe(Number.POSITIVE_INFINITY);
    expect(Number.isFinite(oneSided(1).lower)).toBe(true);
    expect(oneSided(-1).lower).toBe(Number.NEGATIVE_INFINITY);
    expect(Number.isFinite(oneSided(-1).upper)).toBe(true);
  });

  test('samples have the spread of the sum, and no part at all is refused', () => {
    const ranks = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    const values = ranks.map((p) => together.sample(() => p));
    const meanSquare = values.reduce((sum, x) => sum + x * x, 0) / values.length;
    expect(Math.sqrt(meanSquare)).toBeCloseTo(together.standardDeviation ?? 0, 2);
    expect(() => comonotoneSum([])).toThrow('together: parts must not be empty, got 0');
  });
});

describe('a table of shares', () => {
  const table = tabulated({
    shape: 'transformed',
    mean: 1,
    standardDeviation: undefined,
    limits: { lower: 0, upper: 3 },
    knots: () => [
      { x: 0, share: 0 },
      { x: 1, share: 0.5 },
      { x: 3, share: 1 },
    ],
  });

  test('lies straight between its knots and level outside', () => {
    expect(table.shareBelow(0.5)).toBe(0.25);
    expect(table.shareBelow(2)).toBe(0.75);
    expect(table.shareBelow(1)).toBe(0.5);
    expect(table.quantile(0.75)).toBe(2);
    expect(table.quantile(0.5)).toBe(1);
    expect(table.density(0.5)).toBe(0.5);
    expect(table.density(2)).toBe(0.25);
    expect([table.shareBelow(-1), table.shareBelow(4), table.density(-1), table.density(4)]).toEqual([
      0, 1, 0, 0,
    ]);
    expect([table.quantile(0), table.quantile(1)]).toEqual([0, 3]);
    expect(table.sample(() => 0.25)).toBe(0.5);
  });
});

describe('a worst case of what moves together', () => {
  const box = { ...limited('a', 2), cause: 'x' };
  const worst = (other: Distribution, sensitivities: number[]) =>
    worstOfSum({
      kind: 'sum',
      constant: 10,
      inputs: [box, { id: 'b', distribution: other, degreesOfFreedom: Number.POSITIVE_INFINITY, cause: 'x' }],
      sensitivities,
    });

  test('has the ends that its whole distribution has, whatever the signs', () => {
    const u = arcsine({ centre: 1, halfWidth: 1 });
    for (const sensitivities of [
      [1, 1],
      [1, -1],
      [-0.5, 2],
    ]) {
      const parts = [box.distribution, u].map((distribution, i) => ({
        distribution,
        sensitivity: sensitivities[i] ?? 0,
      }));
      const { lower, upper } = comonotoneSum(parts).limits;
      expect(worst(u, sensitivities)).toEqual({
        interval: { lower: 10 + lower, upper: 10 + upper },
        unlimited: [],
      });
    }
    expect(worst(u, [1, 1]).interval).toEqual({ lower: 8, upper: 14 });
  });

  test('stands at the middle of a sum without limits or mean', () => {
    const open = student({ location: 3, scale: 1, degreesOfFreedom: 1 });
    const { interval, unlimited } = worst(open, [1, 2]);
    expect(interval.lower).toBeCloseTo(16, 9);
    expect(interval.upper).toBe(interval.lower);
    expect(unlimited).toEqual(['a', 'b']);
  });
});

describe('merging causes', () => {
  const merged = (inputs: Input[], sensitivities: number[], start = 0) =>
    mergeCauses({ kind: 'sum', constant: start, inputs, sensitivities }, comonotoneSum);

  test('inputs under one cause become one term with the signed sum of their widths', () => {
    const inputs = [limited('a', 1, { cause: 'x' }), limited('b', 2, { cause: 'x' }), limited('c', 1)];
    const { terms, constant: left } = merged(inputs, [1, -2, 1], 5);
    expect(left).toBe(5);
    expect(terms).toHaveLength(2);
    const shared = terms.find(({ ids }) => ids.length === 2);
    expect(shared?.ids).toEqual(['a', 'b']);
    expect((shared?.sensitivity ?? 0) * (shared?.distribution.limits.upper ?? 0)).toBeCloseTo(-3, 12);
  });

  test('means of merged inputs join the constant', () => {
    const inputs = [
      { ...quantity('a', 2, 1), cause: 'x' },
      { ...quantity('b', 3, 0.5), cause: 'x' },
    ];
    const { constant: left, terms } = merged(inputs, [1, 2], 10);
    const total =
      left +
      terms.reduce((sum, { distribution, sensitivity }) => sum + sensitivity * (distribution.mean ?? 0), 0);
    expect(total).toBeCloseTo(18, 12);
    const cancelled = merged(inputs, [1, -2], 10);
    expect(cancelled.terms).toEqual([]);
    expect(cancelled.constant).toBeCloseTo(6, 12);
  });

  test('what has no width or no effect is no term', () => {
    const fixed: Input = { id: 'c', distribution: constant(3), degreesOfFreedom: 1, cause: 'x' };
    const { constant: left, terms } = merged(
      [fixed, limited('a', 1, { cause: 'x' }), limited('b', 1)],
      [2, 1, 0],
    );
    expect(left).toBe(6);
    expect(terms.map(({ ids }) => ids)).toEqual([['a']]);
  });

  test('two causes stay apart', () => {
    const inputs = [limited('a', 1, { cause: 'x' }), limited('b', 1, { cause: 'y' })];
    expect(merged(inputs, [1, 1]).terms).toHaveLength(2);
  });
});
