import { describe, expect, it } from 'vitest';
import { levelDbm, propagatePrefixes } from '#compute';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { bandChainOf, chainFrom } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from '../../src/sheet/coverage.ts';
import { blankLink } from '../../src/sheet/entries.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { limits, linkOf, uShaped } from '../../src/sheet/link.ts';
import { LINK_KINDS, type Sheet } from '../../src/sheet/sheet.ts';
import { READINGS_ID, toModel } from '../../src/sheet/to-model.ts';
import { twoPadsCalibrated, twoPadsSheet } from '../../src/sheet/two-pads.ts';

const sheets: Readonly<Record<string, () => Sheet>> = {
  club: clubSheet,
  'two pads': twoPadsSheet,
  'two pads, known better': twoPadsCalibrated,
  'several readings': () => ({ ...clubSheet(), readings: [7, 7.1, 6.9, 7.2].map(levelDbm) }),
  'no link': () => ({ ...clubSheet(), links: [] }),
};

describe.each(Object.entries(sheets))('the quick chain of %s', (_name, make) => {
  it('is the full one without the whole distribution', () => {
    const quick = bandChainOf(make());
    const full = chainOf(make());
    const { whole: _whole, ...rest } = full.result;
    expect(quick.result).toMatchObject({ ...rest });
    expect(quick.dominantIds).toEqual(full.dominantIds);
    expect(quick.rungs.map(({ id, link }) => ({ id, link }))).toEqual(
      full.rungs.map(({ id, link }) => ({ id, link })),
    );
    for (const [index, { cumulative }] of quick.rungs.entries())
      expect(cumulative.propagation).toEqual(full.rungs[index]?.cumulative.propagation);
  });

  it('is drawn from the definition down to all of it', () => {
    const { rungs, result } = bandChainOf(make());
    expect(rungs.at(-1)?.cumulative ?? result).toBe(result);
  });
});

describe('a chain put together', () => {
  const model = toModel(clubSheet());
  const results = propagatePrefixes({ model, coverageProbability: COVERAGE_PROBABILITY });

  it('wants a result for none of the inputs and one for each', () => {
    expect(() => chainFrom({ sheet: clubSheet(), model, results: [] })).toThrow(
      'chainFrom: results must not be empty, got none',
    );
    expect(() => chainFrom({ sheet: clubSheet(), model, results: results.slice(0, -1) })).toThrow(
      'chainFrom: every input must have a result, got none for coax',
    );
  });

  it('has no link at the rung of the scatter, even where one has its name', () => {
    const sheet = { ...clubSheet(), readings: [7, 7.2].map(levelDbm) };
    expect(bandChainOf(sheet).rungs.at(-1)?.id).toBe(READINGS_ID);
    expect(bandChainOf(sheet).rungs.at(-1)?.link).toBeUndefined();
  });

  it('names all of the parts that add the same', () => {
    const sheet = withLinkAmount(withLinkAmount(twoPadsCalibrated(), 'receiver', 0), 'mismatch', 0);
    const { dominantIds } = bandChainOf(sheet);
    expect(dominantIds, 'cable and both pads have 0.1 dB each').toHaveLength(3);
    expect(dominantIds[0]).toBe('cable');
  });
});

describe('the coverage of every interval', () => {
  it('is what a bell holds within two standard deviations (standard normal table: 0.977 249 868)', () => {
    expect(COVERAGE_FACTOR).toBe(2);
    expect(COVERAGE_PROBABILITY).toBeCloseTo(2 * 0.977249868051821 - 1, 12);
  });
});

describe('a prepared sheet', () => {
  it.each(Object.entries(sheets))('%s has links with names and ids of their own', (_name, make) => {
    const { links } = make();
    expect(new Set(links.map(({ id }) => id)).size).toBe(links.length);
    expect(new Set(links.map(({ label }) => label)).size).toBe(links.length);
    expect(links.every(({ kind }) => LINK_KINDS.includes(kind))).toBe(true);
  });

  it('never hands out the same object twice, so that nobody can change it for others', () => {
    expect(clubSheet()).not.toBe(clubSheet());
    expect(clubSheet()).toEqual(clubSheet());
  });

  it('keeps to the scenario: nominally 27 dBm, 1.5 dB to both sides', () => {
    expect(clubSheet().specification).toEqual({ lower: 25.5, upper: 28.5 });
    expect(clubSheet().links.find(({ id }) => id === 'pad')?.lossDb).toBe(20);
  });
});

describe('a link with what most have', () => {
  const link = linkOf({ id: 'x', label: 'X', kind: 'other', statement: limits(1), source: 'judged' });

  it('takes nothing away and is stated in decibels', () => {
    expect(link).toMatchObject({ lossDb: 0, unit: 'dB', percentOf: 'reading' });
    expect(linkOf({ ...link, lossDb: -3, unit: 'percentOfPower' })).toMatchObject({
      lossDb: -3,
      unit: 'percentOfPower',
    });
  });

  it('has plain limits or U-shaped ones', () => {
    expect(limits(0.5)).toEqual({ form: 'limits', shape: 'rectangular', halfWidth: 0.5 });
    expect(uShaped(0.5)).toEqual({ form: 'limits', shape: 'arcsine', halfWidth: 0.5 });
  });

  it('starts on the form with nothing said but what is usual', () => {
    expect(blankLink('a')).toMatchObject({
      id: 'a',
      label: '',
      amount: '',
      loss: '0',
      factor: '2',
      unit: 'dB',
    });
  });
});
