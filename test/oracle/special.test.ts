import tQuantile from '@stdlib/stats-base-dists-t-quantile';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { erf as mathErf, gamma as mathGamma } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { chiSquareShareAbove, erf, logGamma, regularisedBeta, studentQuantile } from '#compute';

describe("Student's t against @stdlib (its own accuracy: about 1e-9 of the value)", () => {
  test('quantiles agree for many shares and degrees', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (share, degreesOfFreedom) => {
          // Near the median the other one loses digits: compare where it does not.
          fc.pre(Math.abs(share - 0.5) > 0.02);
          const ours = studentQuantile({ share, degreesOfFreedom });
          expect(Math.abs(ours / tQuantile(share, degreesOfFreedom) - 1)).toBeLessThan(1e-8);
        },
      ),
    );
  });
});

describe('error and gamma functions against mathjs (its own accuracy: about 1e-14)', () => {
  test('erf agrees', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (x) => {
        expect(Math.abs(erf(x) - mathErf(x))).toBeLessThan(1e-14);
      }),
    );
  });

  test('the logarithm of gamma agrees', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 150, noNaN: true }), (x) => {
        expect(Math.abs(logGamma(x) - Math.log(mathGamma(x)))).toBeLessThan(1e-11);
      }),
    );
  });
});

describe('shares against exact sums in 40-digit decimals', () => {
  const Exact = Decimal.clone({ precision: 40 });

  /** Chance of `least` successes or more among `count`: the incomplete beta function at whole numbers (DLMF 8.17.5). */
  function binomialTail(p: number, least: number, count: number): Decimal {
    const chance = new Exact(p);
    let ways = new Exact(1);
    let sum = new Exact(0);
    for (let k = 0; k <= count; k++) {
      if (k >= least)
        sum = sum.plus(ways.times(chance.pow(k)).times(new Exact(1).minus(chance).pow(count - k)));
      ways = ways.times(count - k).div(k + 1);
    }
    return sum;
  }

  test('the incomplete beta function is a binomial tail', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        (x, a, b) => {
          const exact = binomialTail(x, a, a + b - 1);
          expect(Math.abs(exact.minus(regularisedBeta({ x, a, b })).toNumber())).toBeLessThan(1e-13);
        },
      ),
    );
  });

  test('with an even number of degrees chi-square is a Poisson sum (DLMF 8.4.10)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 80, noNaN: true }),
        fc.integer({ min: 1, max: 25 }),
        (x, half) => {
          const mean = new Exact(x).div(2);
          let term = mean.neg().exp();
          let sum = new Exact(0);
          for (let k = 0; k < half; k++) {
            sum = sum.plus(term);
            term = term.times(mean).div(k + 1);
          }
          const share = chiSquareShareAbove({ x, degreesOfFreedom: 2 * half });
          expect(Math.abs(sum.minus(share).toNumber())).toBeLessThan(1e-13);
        },
      ),
    );
  });
});
