import { describe, expect, it } from 'vitest';
import { gainDb, mismatch, normal, normalShareBelow, risksOf } from '#compute';
import { corrections } from '../../src/corrections/index.ts';
import { version } from '../../src/layouts/version.ts';
import { clubHeat, offK } from '../../src/sheet/dc-heat.ts';
import { lineCautions } from '../../src/sheet/line-cautions.ts';

describe('the list of corrections', () => {
  it('has every entry that it ever had, the newest first', () => {
    expect(corrections.map(({ id }) => id)).toEqual([
      'heat-of-a-part-of-nothing',
      'kelvins-still-to-come',
      'risks-of-a-narrow-kind',
      'density-through-a-two-port',
    ]);
    const days = corrections.map(({ mended }) => mended);
    expect(days).toEqual(days.toSorted().toReversed());
    for (const day of days) expect(new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10)).toBe(day);
  });

  it('says of each what it was, what it is, and whom it concerns, in whole sentences', () => {
    for (const { what, before, now, concerns, where } of corrections) {
      for (const text of [what, before, now, concerns]) expect(text).toMatch(/^[A-Z].{20,}\.$/s);
      expect(where.length).toBeGreaterThan(0);
      for (const { path } of where) expect(path).toMatch(/^\/.*\/$/);
    }
  });
});

/** `1.10.0` as a number that grows with it. */
const rank = (text: string): number => {
  const [major = Number.NaN, minor = Number.NaN, patch = Number.NaN] = text.split('.').map(Number);
  return (major * 1000 + minor) * 1000 + patch;
};

describe('the versions of a correction', () => {
  it('are numbers that the site has had or has now, the wrong one first', () => {
    for (const { id, since, until } of corrections) {
      const first = rank(since.replace(', unpublished', ''));
      expect(rank(until), id).toBeLessThanOrEqual(rank(version));
      // what was mended before its version was published was wrong and right in one
      if (since.endsWith(', unpublished')) expect(first, id).toBe(rank(until));
      else expect(first, id).toBeLessThan(rank(until));
    }
  });
});

describe('the heat in a part of 0 dB, as corrected', () => {
  it('is none: only the pad of the example gets warm', () => {
    const line = { levelDbm: 9.7, amplifierDb: 0, firstDb: 30, coaxDb: 0, secondDb: 0 } as const;
    const cautions = lineCautions({
      line: { ...line, end: 'instrument', antennaDb: 2.15, over: 'isotropic' },
      damageDbm: 0,
    });
    expect(cautions.flatMap((caution) => (caution.code === 'padHeat' ? [caution.id] : []))).toEqual([
      'first',
    ]);
  });
});

describe('the kelvins still to come, as corrected', () => {
  it('are those from the rise as read to where both runs would have ended alike', () => {
    const part = (minutes: number) => 1 - Math.exp(-minutes / 8);
    expect(offK({ ...clubHeat(), waitedRf: 10 })).toBeCloseTo((9.5 * part(45)) / part(10) - 9.5, 9);
    expect(offK({ ...clubHeat(), waitedRf: 10 })).toBeCloseTo(3.77, 2);
  });
});

describe('the density of a mismatch through a two-port, as corrected', () => {
  const { density, limits, shareBelow } = mismatch({
    source: 0.4,
    load: 0.5,
    between: { input: 0.1, output: 0.1, gain: gainDb(-3) },
  });
  const { lower, upper } = limits;
  const places = Array.from({ length: 400 }, (_, k) => lower + ((k + 0.5) / 400) * (upper - lower));

  it('has no spikes: what it says of a narrow strip is the share that lies there', () => {
    const step = (upper - lower) / 400;
    for (const x of places.filter((_, k) => k % 16 === 8)) {
      const width = 8 * step;
      const share = shareBelow(x + width / 2) - shareBelow(x - width / 2);
      expect(density(x) * width, `at ${x} dB`).toBeLessThan(1.5 * share + 1e-3);
    }
  });

  it('holds everything between its limits', () => {
    const sum = places.reduce((total, x) => total + density(x), 0) * ((upper - lower) / 400);
    expect(sum).toBeCloseTo(1, 2);
  });
});

describe('the risks of a narrow kind, as corrected', () => {
  const given = { spread: 0.1, u: 0.35, half: 1.5 };
  const accepted = given.half - 2 * given.u;
  const { producer } = risksOf({
    prior: normal({ mean: 27, standardDeviation: given.spread }),
    measurementUncertainty: given.u,
    specification: { lower: 27 - given.half, upper: 27 + given.half },
    acceptance: { lower: 27 - accepted, upper: 27 + accepted },
  });

  /** All of them keep to the limits, so what is not accepted is the producer's: two bells together, by hand. */
  it('are what two bells together leave outside of what is accepted', () => {
    const outside = 2 * (1 - normalShareBelow(accepted / Math.hypot(given.spread, given.u)));
    expect(producer).toBeCloseTo(outside, 9);
    const entry = corrections.find(({ id }) => id === 'risks-of-a-narrow-kind');
    expect(entry?.now).toContain(`It is ${(100 * outside).toFixed(2)} %.`);
  });
});
