import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelToPower, powerToLevel } from '../../src/compute/level.ts';
import { coherentSum, meanAsPowers, meanOfDecibels, sumOfLevels } from '../../src/compute/level-sum.ts';
import { levelDbm, powerW } from '../../src/compute/quantity.ts';
import { expectPrinted, expectWithin } from './near.ts';

const level = fc.double({ min: -100, max: 60, noNaN: true }).map(levelDbm);
const levels = fc.array(level, { minLength: 1, maxLength: 20 });
const inPhase = (l: number) => ({ level: levelDbm(l), phaseDegrees: 0 });

describe('unrelated signals together', () => {
  it('have the level of the sum of their powers', () => {
    fc.assert(
      fc.property(levels, (ls) => {
        const watts = ls.reduce((sum, l) => sum + levelToPower(l), 0);
        expectWithin(sumOfLevels(ls), powerToLevel(powerW(watts)), 1e-10);
      }),
    );
  });

  it('are never below the strongest, in any order', () => {
    fc.assert(
      fc.property(levels, (ls) => {
        expect(sumOfLevels(ls)).toBeGreaterThanOrEqual(Math.max(...ls));
        expectWithin(sumOfLevels(ls), sumOfLevels([...ls].reverse()), 1e-11);
      }),
    );
  });

  it('make 20.01 dBm of two of 17 dBm, not 34 (common mistake)', () => {
    expectPrinted(sumOfLevels([levelDbm(17), levelDbm(17)]), 20.01, 2);
  });

  it('do not overflow for levels that no double could hold in watts', () => {
    expectWithin(sumOfLevels([levelDbm(9000), levelDbm(9000)]), 9003.010299956639, 1e-9);
  });
});

describe('coherent signals together', () => {
  it('never exceed unrelated ones by more than 10 lg of their number', () => {
    fc.assert(
      fc.property(levels, (ls) => {
        const together = coherentSum(ls.map(inPhase));
        expect(together).toBeGreaterThanOrEqual(sumOfLevels(ls) - 1e-9);
        expect(together).toBeLessThanOrEqual(sumOfLevels(ls) + 10 * Math.log10(ls.length) + 1e-9);
      }),
    );
  });

  it('make 6.02 dB more of two equal ones in phase, 3.01 dB at right angles', () => {
    expectWithin(coherentSum([inPhase(10), inPhase(10)]), 16.0205999132796, 1e-12);
    expectWithin(
      coherentSum([inPhase(10), { level: levelDbm(10), phaseDegrees: 90 }]),
      13.0102999566398,
      1e-12,
    );
  });

  it('make as much as one of two equal ones a third of a turn apart, either way round', () => {
    for (const phaseDegrees of [120, -120, 480])
      expectWithin(coherentSum([inPhase(10), { level: levelDbm(10), phaseDegrees }]), 10, 1e-11);
  });

  it('leave the difference of the amplitudes in opposition', () => {
    const half = levelDbm(20 * Math.log10(0.5));
    expectWithin(coherentSum([inPhase(0), { level: half, phaseDegrees: 180 }]), half, 1e-11);
  });

  it('have a level as long as more is left than rounding', () => {
    // Half a turn and 1.2e-12 or 2.6e-12 rad: less or more than 1e-12 of both amplitudes together.
    const off = (degrees: number) => () =>
      coherentSum([inPhase(0), { level: levelDbm(0), phaseDegrees: 180 + degrees }]);
    expect(off(6.9e-11)).toThrow('coherentSum: signals must not cancel each other, got 1.2');
    expect(off(1.5e-10)()).toBeLessThan(-230);
  });

  it('have no level where they cancel', () => {
    expect(() => coherentSum([inPhase(3), { level: levelDbm(3), phaseDegrees: 180 }])).toThrow(
      'coherentSum: signals must not cancel each other, got ',
    );
  });
});

describe('means of levels', () => {
  it('as powers are never below the mean of the decibels', () => {
    fc.assert(
      fc.property(levels, (ls) => {
        expect(meanAsPowers(ls)).toBeGreaterThanOrEqual(meanOfDecibels(ls) - 1e-10);
      }),
    );
  });

  it('lie between the lowest and the highest level', () => {
    fc.assert(
      fc.property(levels, (ls) => {
        for (const mean of [meanAsPowers(ls), meanOfDecibels(ls)]) {
          expect(mean).toBeGreaterThanOrEqual(Math.min(...ls) - 1e-10);
          expect(mean).toBeLessThanOrEqual(Math.max(...ls) + 1e-10);
        }
      }),
    );
  });

  it('of 10, 10 and 13 dBm are 11.00 in decibels and 11.24 as powers', () => {
    const log = [levelDbm(10), levelDbm(10), levelDbm(13)];
    expectWithin(meanOfDecibels(log), 11, 1e-12);
    expectPrinted(meanAsPowers(log), 11.24, 2);
  });

  it('of 9, 10 and 11 dBm differ by 0.08 dB, near 0.115 times the variance', () => {
    const log = [levelDbm(9), levelDbm(10), levelDbm(11)];
    expectPrinted(meanAsPowers(log) - meanOfDecibels(log), 0.08, 2);
  });
});

it('no level has no sum and no mean', () => {
  const wish = 'levels must hold at least one level, got []';
  expect(() => sumOfLevels([])).toThrow(new RangeError(`sumOfLevels: ${wish}`));
  expect(() => coherentSum([])).toThrow(new RangeError(`coherentSum: ${wish}`));
  expect(() => meanAsPowers([])).toThrow(new RangeError(`meanAsPowers: ${wish}`));
  expect(() => meanOfDecibels([])).toThrow(new RangeError(`meanOfDecibels: ${wish}`));
});

it('a phase that is no number is refused', () => {
  expect(() => coherentSum([{ level: levelDbm(0), phaseDegrees: Number.NaN }])).toThrow(
    new RangeError('coherentSum: phaseDegrees must be a finite number, got NaN'),
  );
});
