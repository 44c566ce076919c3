import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { meansOf } from '../../src/widgets/two-means/means.ts';
import { type MeansState, meansSpec } from '../../src/widgets/two-means/spec.ts';
import { answersOf, summarise } from '../../src/widgets/two-means/words.ts';
import { anyState } from '../address/any-state.ts';

const nb = '\u00a0';
const state = anyState(meansSpec.fields) as fc.Arbitrary<MeansState>;
const near = fc
  .tuple(
    fc.double({ min: 0, max: 19, noNaN: true }),
    fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
  )
  .map(
    ([base, [a = 0, b = 0, c = 0]]): MeansState => ({ first: base + a, second: base + b, third: base + c }),
  );

describe('two means of three readings', () => {
  it('are the sums by hand, and the mean of powers is never the lower one', () => {
    fc.assert(
      fc.property(state, (readings) => {
        const values = Object.values(readings);
        const { ofDecibelsDbm, ofPowersDbm, apartDb } = meansOf(readings);
        const milliwatts = values.reduce((sum, dbm) => sum + 10 ** (dbm / 10), 0) / 3;
        expect(ofPowersDbm).toBeCloseTo(10 * Math.log10(milliwatts), 9);
        expect(ofDecibelsDbm).toBeCloseTo(values.reduce((sum, dbm) => sum + dbm, 0) / 3, 9);
        expect(apartDb).toBeGreaterThanOrEqual(0);
        expect(apartDb).toBeCloseTo(ofPowersDbm - ofDecibelsDbm, 9);
      }),
    );
  });

  it('lie within three hundredths of a decibel where the readings lie within one', () => {
    fc.assert(
      fc.property(near, (readings) => {
        expect(meansOf(readings).apartDb).toBeLessThan(0.03);
      }),
    );
  });

  it('are as far apart as the rule says while the scatter is small', () => {
    fc.assert(
      fc.property(near, (readings) => {
        const { apartDb, ruleDb } = meansOf(readings);
        expect(Math.abs(apartDb - ruleDb)).toBeLessThan(0.002);
      }),
    );
  });

  it('move together when all readings do', () => {
    fc.assert(
      fc.property(near, fc.double({ min: -5, max: 5, noNaN: true }), (readings, shift) => {
        const moved = Object.fromEntries(Object.entries(readings).map(([name, dbm]) => [name, dbm + shift]));
        expect(meansOf({ ...readings, ...moved }).apartDb).toBeCloseTo(meansOf(readings).apartDb, 9);
      }),
    );
  });

  /** 10, 10 and 13 dBm: 11.0 by decibels, 11.24 by powers (10 lg of 13.3 mW). */
  it('are told with what each is right for', () => {
    const said = answersOf(defaultState(meansSpec.fields));
    expect(said.map(({ figure }) => figure)).toEqual([
      `11.00${nb}dBm, decibels averaged`,
      `11.24${nb}dBm, powers averaged`,
      `0.24${nb}dB apart`,
    ]);
    expect(said[2]?.words).toBe(`the rule says 0.23${nb}dB; the readings scatter by 1.73${nb}dB`);
  });

  it('can be said in every state', () => {
    fc.assert(
      fc.property(state, (readings) => {
        expect(summarise(readings)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('are the same for equal readings, without a negative zero', () => {
    expect(answersOf({ first: 7.3, second: 7.3, third: 7.3 })[2]?.figure).toBe(`0.00${nb}dB apart`);
  });
});
