import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelDbm } from '#compute';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { READINGS_ID, toModel } from '../../src/sheet/to-model.ts';
import { twoPadsCalibrated, twoPadsSheet } from '../../src/sheet/two-pads.ts';

describe('the model of a sheet', () => {
  it('adds every loss back to the mean reading', () => {
    expect(toModel({ ...clubSheet(), readings: [levelDbm(7), levelDbm(7.2)] }).constant).toBeCloseTo(
      27.2,
      12,
    );
  });

  it('has an input for each link in order, and the scatter last where there are several readings', () => {
    const model = toModel({ ...clubSheet(), readings: [levelDbm(7), levelDbm(7.1), levelDbm(6.9)] });
    expect(model.inputs.map(({ id }) => id)).toEqual([...clubSheet().links.map(({ id }) => id), READINGS_ID]);
    expect(model.inputs.at(-1)?.degreesOfFreedom).toBe(2);
    expect(model.inputs.at(-1)?.standardUncertainty).toBeCloseTo(0.1 / Math.sqrt(3), 12);
  });

  it('takes the stated repeatability where there is one reading', () => {
    const repeatability = { standardDeviationDb: 0.08, degreesOfFreedom: 9 };
    const last = toModel({ ...clubSheet(), repeatability }).inputs.at(-1);
    expect(last).toMatchObject({ id: READINGS_ID, degreesOfFreedom: 9, standardUncertainty: 0.08 });
  });

  it('brings no scatter where one reading is all there is, or where all agree', () => {
    expect(toModel(clubSheet()).inputs.some(({ id }) => id === READINGS_ID)).toBe(false);
    const same = { ...clubSheet(), readings: [levelDbm(7), levelDbm(7)] };
    expect(toModel(same).inputs.some(({ id }) => id === READINGS_ID)).toBe(false);
  });

  it('hands a shared cause on', () => {
    const sheet = clubSheet();
    const links = sheet.links.map((link) => (link.id === 'pad' ? { ...link, cause: 'one bench' } : link));
    expect(toModel({ ...sheet, links }).inputs.find(({ id }) => id === 'pad')?.cause).toBe('one bench');
  });
});

describe('the chain of a sheet', () => {
  it('widens from rung to rung, whatever each rung adds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 6, maxLength: 6 }),
        (amounts) => {
          const sheet = clubSheet().links.reduce(
            (changed, { id }, index) => withLinkAmount(changed, id, amounts[index] ?? 0),
            clubSheet(),
          );
          const widths = chainOf(sheet).rungs.map(
            ({ cumulative }) => cumulative.propagation.standardUncertainty,
          );
          for (const [index, width] of widths.entries())
            expect(width).toBeGreaterThanOrEqual((widths[index - 1] ?? 0) - 1e-12);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('ends in the result of the whole model', () => {
    const { rungs, result } = chainOf(clubSheet());
    expect(rungs.at(-1)?.cumulative).toBe(result);
    expect(rungs.map(({ link }) => link?.id)).toEqual(clubSheet().links.map(({ id }) => id));
  });

  it('names the rung with the largest share, and none where nothing adds', () => {
    expect(chainOf(clubSheet()).dominantIds).toEqual(['pad']);
    const exact = clubSheet().links.reduce((changed, { id }) => withLinkAmount(changed, id, 0), clubSheet());
    expect(chainOf(exact).dominantIds).toEqual([]);
    expect(chainOf(twoPadsSheet()).dominantIds).toEqual(['receiver']);
  });

  it('gives the club 27.1 dBm and, by hand from the divisors, twice the root of the squares', () => {
    const { result } = chainOf(clubSheet());
    expect(result.estimate).toBeCloseTo(27.1, 12);
    const u2 = 0.01 ** 2 + 0.03 ** 2 + 0.25 ** 2 / 3 + 0.16 ** 2 / 2 + 0.5 ** 2 / 3 + 0.05 ** 2 / 3;
    expect(result.propagation.expanded).toBeCloseTo(2 * Math.sqrt(u2), 9);
    expect(result.worstCase.unlimited).toEqual(['national', 'laboratory']);
  });
});

// Invented scenario, recomputed twice by hand from the divisors: -13.4 dBm + 20 + 20 + 0.2.
describe('two pads into a receiver', () => {
  it('comes to 26.8 dBm, worst case 3.3 dB, U 2.47 dB with k = 2', () => {
    const { result } = chainOf(twoPadsSheet());
    expect(result.estimate).toBeCloseTo(26.8, 12);
    expect((result.worstCase.interval.upper - result.worstCase.interval.lower) / 2).toBeCloseTo(3.3, 9);
    expect(result.worstCase.unlimited).toEqual([]);
    expect(result.propagation.expanded).toBeCloseTo(2 * Math.sqrt((2 * 0.25 + 4 + 0.01) / 3 + 0.02), 9);
    expect(result.propagation.expanded).toBeCloseTo(2.47, 2);
  });

  it('has a 95 % half-width of 2.18 dB by the whole distribution, less than k = 2 says', () => {
    const { whole, estimate } = chainOf(twoPadsSheet()).result;
    if ('unavailable' in whole) throw new Error(whole.unavailable);
    expect(whole.quantile(0.975) - estimate).toBeCloseTo(2.18, 2);
    expect(estimate - whole.quantile(0.025)).toBeCloseTo(2.18, 2);
  });

  it('comes to 0.49 dB, worst case 0.8 dB, once pads and receiver are known better', () => {
    const { result } = chainOf(twoPadsCalibrated());
    expect(result.propagation.expanded).toBeCloseTo(0.49, 2);
    expect((result.worstCase.interval.upper - result.worstCase.interval.lower) / 2).toBeCloseTo(0.8, 9);
  });
});
