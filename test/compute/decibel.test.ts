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
import { expectNear, expectPrinted } from './near.ts';

/** The usual handbook table of decibels: dB, ratio of volts, ratio of powers, three decimals. */
const handbook: [number, number, number][] = [
  [0.1, 1.012, 1.023],
  [0.5, 1.059, 1.122],
  [1, 1.122, 1.259],
  [2, 1.259, 1.585],
  [3, 1.413, 1.995],
  [5, 1.778, 3.162],
  [6, 1.995, 3.981],
  [7, 2.239, 5.012],
  [8, 2.512, 6.31],
  [10, 3.162, 10],
  [20, 10, 100],
];

describe('the handbook table of decibels', () => {
  it.each(handbook)('%f dB is a ratio of %f in volts and %f in power', (dB, volts, power) => {
    expectPrinted(dbToAmplitudeRatio(gainDb(dB)), volts, 3);
    expectPrinted(dbToPowerRatio(gainDb(dB)), power, 3);
  });

  it('takes 3 dB for a factor of two, which is 3.0103 dB exactly', () => {
    expectNear(dbToPowerRatio(gainDb(3)), 1.9952623149688795);
    expectNear(dbToAmplitudeRatio(gainDb(3)), 1.4125375446227544);
    expectNear(powerRatioToDb(2), 3.010299956639812);
    expectNear(amplitudeRatioToDb(2), 6.020599913279624);
  });

  it('has round figures at round ratios (common practice: a 10 dB pad passes a tenth)', () => {
    expect(powerRatioToDb(1)).toBe(0);
    expect(powerRatioToDb(10)).toBe(10);
    expect(amplitudeRatioToDb(10)).toBe(20);
    expectNear(dbToPowerRatio(gainDb(-10)), 0.1);
  });
});

describe('nepers', () => {
  it('are 8.685 889 638 065 037 dB each (IUPAC Gold Book)', () => {
    expectNear(neperToDb(1), 8.685889638065037, 1e-15);
    expectNear(dbToNeper(gainDb(1)), 0.11512925464970228, 1e-15);
  });

  it('make 39.955 dB of 4.6 Np, which the abstract of IEC 60027-3 prints as 40 dB', () => {
    expectPrinted(neperToDb(4.6), 39.955, 3);
  });
});

describe('a sum of gains', () => {
  it('is 0 dB where there is no link', () => expect(sumOfGains([])).toBe(0));
  it('takes losses as negative', () =>
    expect(sumOfGains([gainDb(-20), gainDb(-0.5), gainDb(12)])).toBe(-8.5));
});

describe('forbidden ratios and gains', () => {
  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a ratio of %s has no decibels', (bad) => {
    expect(() => powerRatioToDb(bad)).toThrow(
      new RangeError(`powerRatioToDb: powerRatio must be > 0, got ${bad}`),
    );
    expect(() => amplitudeRatioToDb(bad)).toThrow(
      new RangeError(`amplitudeRatioToDb: amplitudeRatio must be > 0, got ${bad}`),
    );
  });

  it.each([3000.1, -3000.1])('a gain of %s dB has no ratio that a double could hold', (bad) => {
    expect(() => dbToPowerRatio(gainDb(bad))).toThrow(
      new RangeError(`dbToPowerRatio: gain must be from -3000 to 3000, got ${bad}`),
    );
    expect(() => dbToAmplitudeRatio(gainDb(bad))).toThrow(
      new RangeError(`dbToAmplitudeRatio: gain must be from -3000 to 3000, got ${bad}`),
    );
  });

  it('a gain at the edge still has one', () => {
    expectNear(dbToPowerRatio(gainDb(3000)), 1e300);
    expectNear(dbToPowerRatio(gainDb(-3000)), 1e-300);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('%s nepers are refused', (bad) => {
    expect(() => neperToDb(bad)).toThrow(new RangeError(`gainDb: value must be a finite number, got ${bad}`));
  });
});
