import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries-of.ts';
import { readEntries } from '../../src/bench/read-entries.ts';
import { benchResult } from '../../src/bench/result.ts';
import { anyEntries, usableEntries } from './any-entries.ts';

/** Every number of a sheet to ten decimals: a typed sum may differ in the last bit of a double. */
const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value), (_key, part: unknown) =>
    typeof part === 'number' ? Number(part.toFixed(9)) : part,
  );

describe('reading what was typed', () => {
  it('never throws, and gives either a sheet or what is wrong, whatever is typed', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { sheet, problems } = readEntries(entries);
        expect(sheet === undefined).toBe(problems.length > 0);
      }),
    );
  });

  it('tells each problem at a field of the form, in a sentence', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const ids = new Set(entries.links.map(({ id }) => id));
        for (const { path, label, problem } of readEntries(entries).problems) {
          const [first = '', key] = path.split('.');
          expect(key === undefined ? first in entries : ids.has(first)).toBe(true);
          expect(label).not.toBe('');
          expect(problem).toMatch(/[.!]$/);
        }
      }),
    );
  });

  it('finds nothing wrong with usable entries, and typing its sheet out again gives the same sheet', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { sheet, problems } = readEntries(entries);
        expect(problems).toEqual([]);
        if (sheet === undefined) throw new Error('usable entries: wish a sheet');
        expect(rounded(readEntries(entriesOf(sheet)).sheet)).toEqual(rounded(sheet));
      }),
    );
  });

  it('lets nothing through that the sums refuse', () => {
    fc.assert(
      fc.property(fc.oneof(usableEntries, anyEntries), (entries) => {
        const { sheet } = readEntries(entries);
        if (sheet !== undefined) expect(Number.isFinite(benchResult(sheet).chain.result.estimate)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
