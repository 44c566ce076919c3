import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../src/compute/random.ts';
import golden from '../golden/random.json' with { type: 'json' };

const seed = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });

describe('randomFrom', () => {
  test('one seed gives the same numbers again, another seed others', () => {
    fc.assert(
      fc.property(seed, (s) => {
        const [one, same, other] = [randomFrom(s), randomFrom(s), randomFrom((s + 1) % 2 ** 50)];
        const draw = (random: () => number) => Array.from({ length: 5 }, random);
        const numbers = draw(() => one());
        expect(draw(() => same())).toEqual(numbers);
        expect(draw(() => other())).not.toEqual(numbers);
      }),
    );
  });

  test('numbers lie from 0 to below 1', () => {
    fc.assert(
      fc.property(seed, (s) => {
        const random = randomFrom(s);
        for (let k = 0; k < 50; k++) {
          const x = random();
          expect(x >= 0 && x < 1).toBe(true);
        }
      }),
    );
  });

  test('words are those of the published algorithm', () => {
    for (const { seed: start, words, thousandth } of golden.rows) {
      const row = new Int32Array(1000);
      randomFrom(start).fill(row);
      expect(Array.from(row.subarray(0, 12), (word) => word >>> 0)).toEqual(words);
      expect((row[999] as number) >>> 0).toBe(thousandth);
    }
  });

  test('a number is made of the next two words, 27 and 26 bits of them', () => {
    const [first = 0, second = 0] = golden.rows.flatMap(({ seed: start, words }) =>
      start === 42 ? words : [],
    );
    expect(randomFrom(42)()).toBe((Math.floor(first / 32) * 2 ** 26 + Math.floor(second / 64)) / 2 ** 53);
  });

  test('calls and rows share one sequence', () => {
    const mixed = randomFrom(7);
    mixed();
    const row = new Int32Array(3);
    mixed.fill(row);
    const plain = new Int32Array(5);
    randomFrom(7).fill(plain);
    expect([...row]).toEqual([...plain.subarray(2)]);
  });

  test('numbers spread evenly: a chi-square of 100 cells stays within 1 to 99.99 %', () => {
    const random = randomFrom(2024);
    const cells = new Array<number>(100).fill(0);
    const count = 100000;
    for (let k = 0; k < count; k++) {
      const cell = Math.floor(100 * random());
      cells[cell] = (cells[cell] as number) + 1;
    }
    const chiSquare = cells.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
    expect(chiSquare).toBeGreaterThan(69);
    expect(chiSquare).toBeLessThan(160);
  });

  test('neighbouring numbers do not correlate', () => {
    const random = randomFrom(99);
    const values = Array.from({ length: 50000 }, () => random() - 0.5);
    const product = values.reduce((sum, x, k) => sum + x * (values[k + 1] ?? 0), 0) / values.length;
    expect(Math.abs(product * 12)).toBeLessThan(0.02);
  });

  test('refuses what is not a whole number from 0 up', () => {
    for (const bad of [-1, 0.5, Number.NaN, 2 ** 53])
      expect(() => randomFrom(bad)).toThrow(
        new RangeError(`randomFrom: seed must be a whole number >= 0, got ${bad}`),
      );
  });
});
