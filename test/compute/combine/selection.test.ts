import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tailsOf } from '../../../src/compute/combine/selection.ts';
import { spreadSorted } from '../../../src/compute/combine/spread-sort.ts';
import { randomFrom } from '../../../src/compute/random.ts';

describe('sorting by buckets', () => {
  const value = fc.oneof(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.double({ min: -1e300, max: 1e300, noNaN: true }),
    fc.integer({ min: -3, max: 3 }),
  );
  const plain = (row: Float64Array) => Array.from(row, (x) => x + 0);

  test('is right wherever the ends are put, even at one place or the wrong way round', () => {
    fc.assert(
      fc.property(fc.array(value, { maxLength: 400 }), value, value, (list, from, to) => {
        const row = Float64Array.from(list);
        const sorted = spreadSorted(row, { from, to });
        expect(plain(sorted)).toEqual(plain(Float64Array.from(list).sort()));
        expect([...row]).toEqual(list);
      }),
      { numRuns: 300 },
    );
  });

  test('is right where all but a few values crowd into one bucket, and where none lies between the ends', () => {
    const random = randomFrom(5);
    const row = Float64Array.from({ length: 5000 }, (_, k) => (k % 100 === 0 ? 1e6 * random() : random()));
    const sorted = row.slice().sort();
    for (const ends of [
      { from: 0, to: 1e6 },
      { from: 0, to: 1 },
      { from: 2e6, to: 3e6 },
      { from: -2, to: -1 },
    ])
      expect(spreadSorted(row, ends)).toEqual(sorted);
  });
});

describe('selection', () => {
  const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 300 });

  test('gives what a full sort gives', () => {
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (list, part) => {
        const row = Float64Array.from(list);
        const count = Math.max(1, Math.ceil(part * row.length));
        const sorted = row.slice().sort();
        const { lowest, highest } = tailsOf(row, count);
        // -0 and 0 sort apart but are the same number.
        expect([...lowest].map((x) => x + 0)).toEqual([...sorted.subarray(0, count)].map((x) => x + 0));
        expect([...highest].map((x) => x + 0)).toEqual(
          [...sorted.subarray(row.length - count)].map((x) => x + 0),
        );
        expect([...row]).toEqual(list);
      }),
    );
  });

  test('copes with many values, with equal ones, and with an order that misleads the guess', () => {
    const size = 50000;
    const rows = {
      rising: Float64Array.from({ length: size }, (_, k) => k),
      equal: new Float64Array(size).fill(3),
      // Every value that the guess looks at is large, or small, or there are too many between.
      large: Float64Array.from({ length: size }, (_, k) => (k % 16 === 0 ? 1e6 + k : k)),
      small: Float64Array.from({ length: size }, (_, k) => (k % 16 === 0 ? -k : k)),
      few: Float64Array.from({ length: size }, (_, k) => (k % 16 === 0 ? k : 1e7 + (k % 2))),
    };
    for (const row of Object.values(rows)) {
      const sorted = row.slice().sort();
      const { lowest, highest } = tailsOf(row, 2500);
      expect(lowest).toEqual(sorted.slice(0, 2500));
      expect(highest).toEqual(sorted.slice(-2500));
    }
  });

  test('is right where the guess is good at one end and far off at the other', () => {
    const size = 50000;
    const random = randomFrom(8);
    /** Even values, but those that the guess looks at, each sixteenth, are bent. */
    const rowOf = (bent: (u: number) => number) =>
      Float64Array.from({ length: size }, (_, k) => (k % 16 === 0 ? bent(random()) : random()));
    const mirrored = (row: Float64Array) => row.map((x) => 1 - x);
    // None above 0.6, so that far more than wanted are gathered there; or many near 0, so that too few are.
    const rows = [rowOf((u) => Math.min(u, 0.6)), rowOf((u) => (u < 0.5 ? u / 1000 : u))];
    for (const row of [...rows, ...rows.map(mirrored)]) {
      const sorted = row.slice().sort();
      const { lowest, highest } = tailsOf(row, 2500);
      expect(lowest).toEqual(sorted.slice(0, 2500));
      expect(highest).toEqual(sorted.slice(-2500));
    }
  });

  test('refuses a count that makes no sense', () => {
    for (const count of [0, 4, 1.5])
      expect(() => tailsOf(Float64Array.of(1, 2, 3), count)).toThrow(
        new RangeError(`tailsOf: count must be 1 to 3, got ${count}`),
      );
  });
});
