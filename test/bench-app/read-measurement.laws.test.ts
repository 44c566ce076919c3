import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeEntries, encodeEntries } from '../../src/bench/address/address.ts';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { sheetAt } from '../../src/sheet/at-point.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { outcomeOf } from '../../src/sheet/to-model.ts';
import { anyEntries, usableEntries } from './any-entries.ts';

/** Every number to ten decimals: a typed sum may differ in the last bit of a double. */
const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value), (_key, part: unknown) =>
    typeof part === 'number' ? Number(part.toPrecision(10)) : part,
  );

/** A measurement, or a failure that says why not. */
function measurementIn(entries: SheetEntries) {
  const { measurement, problems } = readMeasurement(entries);
  expect(problems).toEqual([]);
  if (measurement === undefined) throw new Error('usable entries: wish a measurement');
  return measurement;
}

describe('reading what was typed', () => {
  it('never throws, and gives either a measurement or what is wrong, whatever is typed', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { measurement, problems } = readMeasurement(entries);
        expect(measurement === undefined).toBe(problems.length > 0);
      }),
    );
  });

  it('tells each problem at a field of the form, in a sentence', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const ids = new Set([...entries.links, ...entries.points].map(({ id }) => id));
        for (const { path, label, problem } of readMeasurement(entries).problems) {
          const [first = '', key] = path.split('.');
          expect(key === undefined ? first in entries : ids.has(first)).toBe(true);
          expect(label).not.toBe('');
          expect(problem).toMatch(/[.!]$/);
        }
      }),
    );
  });

  it('finds nothing wrong with usable entries, and typing its measurement out again gives the same measurement', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const measurement = measurementIn(entries);
        expect(rounded(measurementIn(entriesOf(measurement)))).toEqual(rounded(measurement));
      }),
    );
  });

  it('lets nothing through that the sums refuse, at any point', () => {
    fc.assert(
      fc.property(fc.oneof(usableEntries, anyEntries), (entries) => {
        const { measurement } = readMeasurement(entries);
        for (const { id } of measurement?.points ?? []) {
          const outcome = outcomeOf(sheetAt(measurement as NonNullable<typeof measurement>, id));
          if (outcome.inRange) expect(Number.isFinite(outcome.model.constant)).toBe(true);
        }
      }),
    );
  });

  it('gives the same measurement after the entries went through an address', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const back = decodeEntries(encodeEntries(entries) ?? '').entries;
        expect(measurementIn(back)).toEqual(measurementIn(entries));
      }),
    );
  });

  it('reads a link that is switched off without letting what is wrong with it hold anything up', () => {
    fc.assert(
      fc.property(usableEntries, anyEntries, (entries, others) => {
        const off = others.links.map((link, index) => ({ ...link, id: `off${index}`, off: true }));
        const { links } = measurementIn({ ...entries, links: [...entries.links, ...off] });
        expect(links.filter((link) => !link.off)).toEqual(
          measurementIn(entries).links.filter((link) => !link.off),
        );
      }),
    );
  });
});
