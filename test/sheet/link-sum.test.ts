import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '#compute';
import { shareWithin, wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import {
  badMatch,
  bellOf,
  comparedChain,
  halfDecibels,
  LINK_SHAPES,
  type LinkSum,
  linkDistribution,
  longChain,
  probabilityOf,
  receiverChain,
  SIZES,
  type SizedLink,
  sizeOfStated,
  statedDb,
} from '../../src/sheet/link-sum.ts';

const link: fc.Arbitrary<SizedLink> = fc.record({
  shape: fc.constantFrom(...LINK_SHAPES),
  sizeDb: fc.double({ min: 0.01, max: 10, noNaN: true }),
});
const anySum: fc.Arbitrary<LinkSum> = fc.record({
  links: fc.array(link, { minLength: 1, maxLength: 5 }),
  sizes: fc.constantFrom(...SIZES),
  coverage: fc.constantFrom('two' as const, 'ninetyFive' as const),
});

describe('the size of a link', () => {
  it('goes over into what is stated of it and back', () => {
    fc.assert(
      fc.property(link, fc.constantFrom(...SIZES), (one, sizes) => {
        expect(sizeOfStated(statedDb(one, sizes), one, sizes)).toBeCloseTo(one.sizeDb, 10);
      }),
    );
  });

  it('is the standard deviation of its shape where it stands for a standard uncertainty', () => {
    fc.assert(
      fc.property(link, (one) => {
        expect(linkDistribution(one, 'standard').standardDeviation).toBeCloseTo(one.sizeDb, 10);
      }),
    );
  });

  it('is half a width or two standard deviations as a data sheet states it (GUM 4.3, JCGM 101 6.4)', () => {
    const u = (shape: SizedLink['shape']) =>
      linkDistribution({ shape, sizeDb: 1 }, 'stated').standardDeviation;
    expect(u('rectangular')).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(u('triangular')).toBeCloseTo(1 / Math.sqrt(6), 12);
    expect(u('arcsine')).toBeCloseTo(1 / Math.sqrt(2), 12);
    expect(u('normal')).toBe(0.5);
  });

  it('has to be above zero', () => {
    for (const shape of LINK_SHAPES)
      expect(() => linkDistribution({ shape, sizeDb: 0 }, 'stated'), shape).toThrow(RangeError);
  });
});

describe('the whole of a sum', () => {
  it('never ends beyond its worst case, holds what was asked, and is even about nothing', () => {
    fc.assert(
      fc.property(anySum, (sum) => {
        const { interval } = wholeSumOf(sum);
        const { worstCase } = bellOf(sum);
        if (worstCase.unlimited.length === 0)
          expect(interval.upper).toBeLessThanOrEqual(worstCase.interval.upper + 1e-9);
        expect(interval.lower).toBeCloseTo(-interval.upper, 5);
        expect(shareWithin(sum, interval.upper)).toBeCloseTo(probabilityOf(sum.coverage), 3);
      }),
      { numRuns: 40 },
    );
  });

  it('grows with each link, in its interval as in its bell', () => {
    fc.assert(
      fc.property(anySum, link, (sum, more) => {
        const longer = { ...sum, links: [...sum.links, more] };
        expect(bellOf(longer).propagation.expanded).toBeGreaterThan(bellOf(sum).propagation.expanded);
      }),
      { numRuns: 40 },
    );
  });

  it('of bells is a bell: both intervals are one, and two standard uncertainties hold what they promise', () => {
    const sum: LinkSum = {
      links: [0.3, 1, 0.7].map((sizeDb) => ({ shape: 'normal', sizeDb })),
      sizes: 'stated',
      coverage: 'two',
    };
    const whole = wholeSumOf(sum);
    expect(whole.interval.upper).toBeCloseTo(bellOf(sum).propagation.expanded, 5);
    expect(whole.covered).toBeCloseTo(0.9544997, 6);
    expect(whole.factor).toBeCloseTo(2, 5);
  });

  it('travels as points that a drawing needs, in rising order', () => {
    const { curve } = wholeSumOf(receiverChain());
    expect(curve.length).toBeGreaterThan(100);
    const xs = curve.map(({ x }) => x);
    expect(xs).toEqual(xs.toSorted((a, b) => a - b));
  });
});

describe('sums that can be had by hand', () => {
  it('are one box, of which 95.45 in a hundred are the middle 95.45 of its width', () => {
    const { interval, covered } = wholeSumOf(halfDecibels(1));
    expect(interval.upper).toBeCloseTo(0.5 * 0.9544997361036416, 9);
    expect(covered).toBe(1);
  });

  it('are a tent of two boxes: its corner of a share s ends at 1 - sqrt(1 - s)', () => {
    expect(wholeSumOf(halfDecibels(2)).interval.upper).toBeCloseTo(1 - Math.sqrt(1 - 0.9544997361), 4);
  });

  it('are four boxes: beyond half the worst case one in twelve, by the sum of four even numbers', () => {
    // Of four numbers even between 0 and 1 the sum is below s <= 1 in s^4/24 of all cases.
    expect(1 - shareWithin(halfDecibels(4), 1)).toBeCloseTo(2 / 24, 6);
    expect(1 - shareWithin(halfDecibels(4), 1.5)).toBeCloseTo((2 * 0.5 ** 4) / 24, 6);
  });

  it('are roots of squares, ±2.47 dB for the receiver’s chain', () => {
    const u = Math.sqrt((4 + 0.25 + 0.25 + 0.01) / 3 + 0.04 / 2);
    expect(bellOf(receiverChain()).propagation.expanded).toBeCloseTo(2 * u, 9);
    expect(bellOf(receiverChain()).worstCase.interval.upper).toBeCloseTo(3.3, 9);
    const bell95 = bellOf({ ...receiverChain(), coverage: 'ninetyFive' }).propagation;
    expect(bell95.coverageFactor).toBeCloseTo(normalQuantile(0.975), 9);
  });

  it('are the chain compared with something better: ±0.49 dB', () => {
    const u = Math.sqrt((0.09 + 0.01 + 0.01 + 0.01) / 3 + 0.04 / 2);
    expect(bellOf(comparedChain()).propagation.expanded).toBeCloseTo(2 * u, 9);
  });
});

describe('where one link rules', () => {
  it('the bell promises more than the worst case can be, for a box and for a U', () => {
    for (const sum of [longChain(), badMatch()]) {
      const whole = wholeSumOf(sum);
      expect(whole.covered).toBeGreaterThan(0.999);
      expect(whole.factor).toBeLessThan(1.75);
    }
    expect(bellOf(badMatch()).propagation.expanded).toBeGreaterThan(
      bellOf(badMatch()).worstCase.interval.upper,
    );
  });

  it('the factor of a lone shape is that of tables: 1.65 for a box at 95 % (GUM 4.3.7, G.1.3)', () => {
    const alone = (shape: SizedLink['shape']): LinkSum => ({
      links: [{ shape, sizeDb: 1 }],
      sizes: 'standard',
      coverage: 'ninetyFive',
    });
    expect(wholeSumOf(alone('rectangular')).factor).toBeCloseTo(0.95 * Math.sqrt(3), 6);
    expect(wholeSumOf(alone('arcsine')).factor).toBeCloseTo(Math.SQRT2 * Math.sin(0.475 * Math.PI), 6);
    expect(wholeSumOf(alone('triangular')).factor).toBeCloseTo(Math.sqrt(6) * (1 - Math.sqrt(0.05)), 6);
  });
});
