import { describe, expect, test } from 'vitest';
import {
  arcsine,
  curvilinear,
  type Distribution,
  normal,
  rectangular,
  student,
  trapezoidal,
  triangular,
  wholeDistribution,
} from '#compute';
import golden from '../../golden/chains.json' with { type: 'json' };
import { inDecibels } from '../distribution/shapes.ts';

interface TermRow {
  readonly shape: string;
  readonly sensitivity?: number;
  readonly halfWidth?: number;
  readonly topRatio?: number;
  readonly limitHalfWidth?: number;
  readonly standardDeviation?: number;
  readonly scale?: number;
  readonly degreesOfFreedom?: number;
  readonly factor?: number;
  readonly of?: TermRow;
}

interface ChainRow {
  readonly name: string;
  readonly constant: number;
  readonly terms: readonly TermRow[];
  readonly interval95: readonly number[];
  readonly interval9973: readonly number[];
  readonly shortest95?: readonly number[];
}

function distributionOf(row: TermRow): Distribution {
  const { halfWidth = 0, topRatio = 0, limitHalfWidth = 0, standardDeviation = 0, scale = 0 } = row;
  const limits = { lower: -halfWidth, upper: halfWidth };
  const makers: Record<string, () => Distribution> = {
    rectangular: () => rectangular(limits),
    triangular: () => triangular(limits),
    trapezoidal: () => trapezoidal({ ...limits, topRatio }),
    curvilinear: () => curvilinear({ ...limits, limitHalfWidth }),
    arcsine: () => arcsine({ centre: 0, halfWidth }),
    normal: () => normal({ mean: 0, standardDeviation }),
    student: () => student({ location: 0, scale, degreesOfFreedom: row.degreesOfFreedom ?? 0 }),
    decibels: () => inDecibels(distributionOf(row.of as TermRow), row.factor),
  };
  const make = makers[row.shape];
  if (make === undefined) throw new RangeError(`distributionOf: shape must be known, got ${row.shape}`);
  return make();
}

/** Half of the width that holds 68 %: what "relative to scale" means here, for parts without standard deviation too. */
const spreadOf = (d: { quantile(p: number): number }) => (d.quantile(0.84) - d.quantile(0.16)) / 2;

describe.each(golden.chains as readonly ChainRow[])('$name', (chain) => {
  const sum = (coverageProbability: number) =>
    wholeDistribution({
      constant: chain.constant,
      terms: chain.terms.map((term) => ({
        distribution: distributionOf(term),
        sensitivity: term.sensitivity ?? 1,
      })),
      coverageProbability,
    });
  const worst = (got: { lower: number; upper: number }, wanted: readonly number[]) =>
    Math.max(
      Math.abs(got.lower - chain.constant - (wanted[0] as number)),
      Math.abs(got.upper - chain.constant - (wanted[1] as number)),
    );

  test('ends of the 95 % interval are right to 1e-5 of the spread, and to 1e-4 dB', () => {
    const whole = sum(0.95);
    const error = worst(whole.symmetric, chain.interval95);
    expect(error / spreadOf(whole)).toBeLessThan(1e-5);
    if (chain.name !== 'thousandfold sensitivity') expect(error).toBeLessThan(1e-4);
  });

  test('ends of the 99.73 % interval are right to 1e-5 of its width', () => {
    const { symmetric } = sum(0.9973);
    const width = symmetric.upper - symmetric.lower;
    expect(worst(symmetric, chain.interval9973) / width).toBeLessThan(1e-5);
  });

  test('the shortest 95 % interval is right to 1e-5 of the spread', () => {
    const whole = sum(0.95);
    const wanted = chain.shortest95;
    if (wanted === undefined) {
      const symmetric = chain.terms.every(({ shape }) => shape !== 'decibels');
      // Of symmetric parts it is the symmetric one, or where the middle is a valley none at all.
      if (symmetric) expect([whole.symmetric, undefined]).toContainEqual(whole.shortest);
      else expect(whole.shortest === undefined || whole.shortest.lower < whole.shortest.upper).toBe(true);
      return;
    }
    expect(whole.shortest).toBeDefined();
    if (whole.shortest) expect(worst(whole.shortest, wanted) / spreadOf(whole)).toBeLessThan(1e-5);
  });
});

test('there are twenty chains or more, of one to twelve parts', () => {
  const sizes = golden.chains.map(({ terms }) => terms.length);
  expect(golden.chains.length).toBeGreaterThanOrEqual(20);
  expect(Math.max(...sizes)).toBe(12);
  expect(Math.min(...sizes)).toBeLessThanOrEqual(2);
});
