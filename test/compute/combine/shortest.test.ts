import { describe, expect, test } from 'vitest';
import { shortestInterval } from '../../../src/compute/combine/shortest.ts';
import { type Summed, sumOfParts } from '../../../src/compute/combine/sum.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';

/** Humps side by side, each a normal with its share of the whole. */
function humps(...of: readonly { at: number; part: number }[]): Summed {
  const shapes = of.map(({ at, part }) => ({ part, hump: normal({ mean: at, standardDeviation: 0.5 }) }));
  const total = (value: (hump: Summed) => number) =>
    shapes.reduce((sum, { part, hump }) => sum + part * value(hump), 0);
  const shareBelow = (x: number) => total((hump) => hump.shareBelow(x));
  return {
    mean: total((hump) => hump.mean ?? Number.NaN),
    standardDeviation: undefined,
    limits: { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY },
    density: (x) => total((hump) => hump.density(x)),
    shareBelow,
    quantile: (share) => {
      let [low, high] = [-50, 50];
      for (let n = 0; n < 60; n++) {
        const middle = (low + high) / 2;
        if (shareBelow(middle) < share) low = middle;
        else high = middle;
      }
      return low;
    },
  };
}

describe('the shortest interval', () => {
  const symmetric = { lower: -2, upper: 2 };
  const of = (sum: Summed) => shortestInterval(sum, { probability: 0.8, symmetric });

  test('is the symmetric one where there is a single hump', () => {
    expect(of(humps({ at: 0, part: 1 }))).toEqual(symmetric);
  });

  test('is none where likelier values lie outside, on either side or on both', () => {
    const main = { at: 0, part: 0.8 };
    expect(of(humps(main, { at: -5, part: 0.2 }))).toBeUndefined();
    expect(of(humps(main, { at: 5, part: 0.2 }))).toBeUndefined();
    expect(of(humps(main, { at: -5, part: 0.1 }, { at: 5, part: 0.1 }))).toBeUndefined();
  });

  test('is none either where it begins or ends with the values and likelier ones lie elsewhere', () => {
    const open = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };
    const main = { at: 0, part: 0.8 };
    const begins = { ...humps(main, { at: 5, part: 0.2 }), limits: { ...open, lower: -2 } };
    const ends = { ...humps(main, { at: -5, part: 0.2 }), limits: { ...open, upper: 2 } };
    expect([of(begins), of(ends)]).toEqual([undefined, undefined]);
    const alone = humps({ at: 0, part: 1 });
    expect(of({ ...alone, limits: { ...open, lower: -2 } })).toEqual(symmetric);
    expect(of({ ...alone, limits: { ...open, upper: 2 } })).toEqual(symmetric);
  });

  test('is one of many in a rectangle, where all values are as likely', () => {
    const box = sumOfParts([rectangular({ lower: -1, upper: 1 })]);
    const half = { lower: -0.5, upper: 0.5 };
    expect(shortestInterval(box, { probability: 0.5, symmetric: half })).toEqual(half);
  });
});
