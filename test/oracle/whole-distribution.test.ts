import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { rectangular, wholeDistribution } from '#compute';

const Exact = Decimal.clone({ precision: 60 });

/**
 * Share below x of a sum of independent rectangles of the given half-widths: the volume of a box cut by a plane, by
 * inclusion and exclusion over its corners, in 60-digit decimals.
 */
function shareBelow(halfWidths: readonly number[], x: Decimal): Decimal {
  const count = halfWidths.length;
  let sum = new Exact(0);
  for (let corner = 0; corner < 2 ** count; corner++) {
    let place = x;
    let sign = 1;
    halfWidths.forEach((half, k) => {
      const up = (corner >> k) & 1;
      place = up === 1 ? place.minus(half) : place.plus(half);
      if (up === 1) sign = -sign;
    });
    if (place.gt(0)) sum = sum.plus(place.pow(count).times(sign));
  }
  const volume = halfWidths.reduce((product, half, k) => product.times(2 * half).times(k + 1), new Exact(1));
  return sum.div(volume);
}

function wholeOf(halfWidths: readonly number[]) {
  const terms = halfWidths.map((half) => ({
    distribution: rectangular({ lower: -half, upper: half }),
    sensitivity: 1,
  }));
  return wholeDistribution({ constant: 0, terms, coverageProbability: 0.95 });
}

describe('sums of rectangles against exact volumes', () => {
  const rows = [
    [1, 0.5],
    [1, 1, 1],
    [3, 1, 0.2, 0.1],
    [0.1, 0.12, 0.14, 0.16, 0.18],
    [1, 1, 1, 1, 1, 1, 1, 1],
    [0.3, 0.02, 0.05, 0.07, 0.11, 0.13, 0.17, 0.19, 0.23, 0.29],
  ];

  test.each(rows)('half-widths %d, %d ...', (...halfWidths) => {
    const list = halfWidths.filter((half) => half !== undefined);
    const whole = wholeOf(list);
    const total = list.reduce((sum, half) => sum + half, 0);
    for (const part of [-0.95, -0.6, -0.3, -0.01, 0, 0.2, 0.5, 0.77]) {
      const x = part * total;
      expect(Math.abs(shareBelow(list, new Exact(x)).minus(whole.shareBelow(x)).toNumber())).toBeLessThan(
        1e-6,
      );
    }
    const atEnd = shareBelow(list, new Exact(whole.symmetric.upper));
    expect(Math.abs(atEnd.minus(0.975).toNumber())).toBeLessThan(1e-8);
  });
});
