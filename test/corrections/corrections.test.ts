import { describe, expect, it } from 'vitest';
import { gainDb, mismatch } from '#compute';
import { corrections } from '../../src/corrections/index.ts';

describe('the list of corrections', () => {
  it('has every entry that it ever had, the newest first', () => {
    expect(corrections.map(({ id }) => id)).toEqual(['density-through-a-two-port']);
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
