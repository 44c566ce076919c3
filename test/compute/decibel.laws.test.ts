import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToNeper,
  dbToPowerRatio,
  neperToDb,
  powerRatioToDb,
  sumOfGains,
} from '../../src/compute/decibel.ts';
import { gainDb } from '../../src/compute/quantity.ts';
import { expectNear, expectWithin } from './near.ts';

const ratio = fc.double({ min: 1e-30, max: 1e30, noNaN: true });
const gain = fc.double({ min: -200, max: 200, noNaN: true }).map(gainDb);

describe('decibels', () => {
  it('bring back the ratio of powers that they came from', () => {
    fc.assert(fc.property(ratio, (r) => expectNear(dbToPowerRatio(powerRatioToDb(r)), r, 1e-12)));
  });

  it('bring back the ratio of amplitudes that they came from', () => {
    fc.assert(fc.property(ratio, (r) => expectNear(dbToAmplitudeRatio(amplitudeRatioToDb(r)), r, 1e-12)));
  });

  it('turn a product of ratios into a sum, from any start', () => {
    fc.assert(
      fc.property(ratio, ratio, (a, b) =>
        expectWithin(powerRatioToDb(a * b), powerRatioToDb(a) + powerRatioToDb(b), 1e-11),
      ),
    );
  });

  it('count an amplitude twice, since power goes as its square', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-15, max: 1e15, noNaN: true }), (r) =>
        expectWithin(amplitudeRatioToDb(r), powerRatioToDb(r * r), 1e-11),
      ),
    );
  });

  it('rise with the ratio', () => {
    fc.assert(
      fc.property(ratio, (r) => {
        expect(powerRatioToDb(1.001 * r)).toBeGreaterThan(powerRatioToDb(r));
      }),
    );
  });

  it('change sign when the ratio is turned over', () => {
    fc.assert(fc.property(ratio, (r) => expectWithin(powerRatioToDb(1 / r), -powerRatioToDb(r), 1e-11)));
  });

  it('bring back the nepers that they came from', () => {
    fc.assert(
      fc.property(gain, (g) => expectWithin(neperToDb(dbToNeper(g)), g, 1e-12 * Math.max(1, Math.abs(g)))),
    );
  });

  it('add up over links in a row in any order', () => {
    fc.assert(
      fc.property(fc.array(gain, { maxLength: 12 }), (gains) => {
        expectWithin(sumOfGains(gains), sumOfGains([...gains].reverse()), 1e-11);
      }),
    );
  });
});
