import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchBand } from '../../src/bench/results/figure-rows.ts';
import { ROOM } from '../../src/figures/ReadingBandRow.tsx';
import { clubSheet } from '../../src/sheet/club.ts';
import type { Link } from '../../src/sheet/sheet.ts';
import { benchChain } from './bench-result.ts';

const rowsOf = (change: Partial<Link>) => {
  const sheet = clubSheet();
  const links = sheet.links.map((link) => ({ ...link, ...change }));
  const chain = benchChain({ ...sheet, links });
  const { rows } = benchBand({ chain, showLimits: true, showCurve: false, handles: true }, 1);
  return rows.filter(({ id }) => links.some((link) => link.id === id));
};

describe('a row of the bench’s figure', () => {
  it('has its own names where they fit', () => {
    expect(rowsOf({}).map(({ label }) => label)).toEqual(clubSheet().links.map(({ label }) => label));
  });

  it('cuts a name so that its number has room, beside it or below', () => {
    for (const { label, number } of rowsOf({ label: 'W'.repeat(60) })) {
      expect(label).toMatch(/^W+…$/);
      // one such letter takes more room than one and a half small ones
      expect(1.5 * (label.length - 1) + number.length).toBeLessThanOrEqual(ROOM.label + 2);
    }
    for (const { label, number } of rowsOf({ label: 'The pad that the neighbours lent us in May' })) {
      expect(label).toMatch(/^The pad that the neighbo.*…$/);
      expect(label.length + number.length, 'which then stands below').toBeGreaterThan(ROOM.label);
    }
  });

  it('says a long statement whole, in two lines', () => {
    const statement = {
      form: 'uncertainLimits',
      halfWidth: 0.1234,
      limitHalfWidth: 0.0123,
    } as const;
    for (const { detail } of rowsOf({ statement })) {
      const [first = '', second = '', ...more] = detail.split('\n');
      expect(more).toEqual([]);
      expect(first).toBe('adds ±0.1234\u00a0dB, limits known');
      expect(second).toMatch(/^to ±0\.0123\u00a0dB( · most)?$/);
    }
  });

  it('is never wider than its place, whatever its name', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 80 }), (label) => {
        for (const row of rowsOf({ label })) {
          expect([...row.label].length).toBeLessThanOrEqual(ROOM.label);
          for (const line of row.detail.split('\n')) expect(line.length).toBeLessThanOrEqual(ROOM.detail);
        }
      }),
      { numRuns: 20 },
    );
  });
});
