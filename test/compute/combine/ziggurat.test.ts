import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bellOf } from '../../../src/compute/combine/bell.ts';
import { wordsOf } from '../../../src/compute/combine/words.ts';
import { fillBell, type Ziggurat, zigguratOf } from '../../../src/compute/combine/ziggurat.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { studentQuantile, studentShareBelow } from '../../../src/compute/special/student.ts';
import golden from '../../golden/bells.json' with { type: 'json' };
import { handing } from './handing.ts';

const NORMAL = Number.POSITIVE_INFINITY;
const anyDegrees = fc.oneof(
  fc.double({ min: 1, max: 200, noNaN: true }),
  fc.constantFrom(1, 1e4, 1e8, NORMAL),
);
const heightOf = ({ bell }: Ziggurat, x: number) => Math.exp(bell.logHeight(x));

describe('a bell', () => {
  const place = fc.double({ min: 0.01, max: 30, noNaN: true });

  test('has its place for each height', () => {
    fc.assert(
      fc.property(anyDegrees, fc.double({ min: 1e-12, max: 0.999, noNaN: true }), (degrees, height) => {
        const bell = bellOf(degrees);
        expect(bell.logHeight(bell.place(height)) / Math.log(height)).toBeCloseTo(1, 9);
      }),
    );
    expect(bellOf(NORMAL).place(1)).toBeCloseTo(0, 15);
    expect(bellOf(5).place(1)).toBeCloseTo(0, 15);
  });

  test('is the density of t over its peak', () => {
    fc.assert(
      fc.property(anyDegrees, place, (degrees, x) => {
        const { areaBeyond } = bellOf(degrees);
        const share = studentShareBelow({ t: -x, degreesOfFreedom: degrees });
        expect(areaBeyond(x) / areaBeyond(0) / (2 * share)).toBeCloseTo(1, 9);
      }),
    );
    // Half the integral of the normal bell is sqrt(pi/2), of 1/(1 + x^2) pi/2.
    expect(bellOf(NORMAL).areaBeyond(0)).toBeCloseTo(Math.sqrt(Math.PI / 2), 12);
    expect(bellOf(1).areaBeyond(0)).toBeCloseTo(Math.PI / 2, 12);
    expect(bellOf(1).logHeight(3)).toBeCloseTo(-Math.log(10), 14);
    expect(bellOf(NORMAL).logHeight(3)).toBe(-4.5);
  });

  test('falls in logarithms as steeply as it says, and ever more steeply', () => {
    fc.assert(
      fc.property(anyDegrees, place, place, (degrees, x, further) => {
        const { logHeight, steepness } = bellOf(degrees);
        const step = 1e-5;
        const slope = (logHeight(x * Math.exp(-step)) - logHeight(x * Math.exp(step))) / (2 * step);
        expect(steepness(x) / slope).toBeCloseTo(1, 5);
        // So that a power law through x lies above the tail, as drawing from the tail relies on.
        const law = logHeight(x) - steepness(x) * Math.log(1 + further);
        expect(logHeight(x * (1 + further))).toBeLessThanOrEqual(law + 1e-9 * Math.abs(law));
      }),
    );
  });

  test('knows beyond which place a part of its area lies', () => {
    fc.assert(
      fc.property(anyDegrees, fc.double({ min: 1e-6, max: 0.4, noNaN: true }), (degrees, part) => {
        const { farPlace, areaBeyond } = bellOf(degrees);
        expect(areaBeyond(farPlace(part)) / (2 * areaBeyond(0)) / part).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the layers', () => {
  test('have equal areas from the tail up to the peak, whatever the degrees', () => {
    fc.assert(
      fc.property(anyDegrees, (degrees) => {
        const ziggurat = zigguratOf(bellOf(degrees));
        const { bell, edge, height } = ziggurat;
        const tailFrom = edge[1] as number;
        const area = tailFrom * heightOf(ziggurat, tailFrom) + bell.areaBeyond(tailFrom);
        expect(((edge[0] as number) * (height[1] as number)) / area).toBeCloseTo(1, 12);
        for (let k = 1; k < 256; k++) {
          const [x, next] = [edge[k] as number, edge[k + 1] as number];
          expect(next).toBeLessThan(x);
          expect((x * (heightOf(ziggurat, next) - heightOf(ziggurat, x))) / area).toBeCloseTo(1, 8);
          expect(height[k]).toBe(heightOf(ziggurat, x));
        }
        expect([edge[256], height[256]]).toEqual([0, 1]);
      }),
      { numRuns: 40 },
    );
  });

  test('begin where mpmath puts them, and have the areas that it gives', () => {
    for (const { degrees, tailFrom, area, half } of golden.rows) {
      const { edge, height, bell } = zigguratOf(bellOf(Number(degrees)));
      expect((edge[1] as number) / Number(tailFrom)).toBeCloseTo(1, 12);
      expect(((edge[0] as number) * (height[1] as number)) / Number(area)).toBeCloseTo(1, 11);
      expect(bell.areaBeyond(0) / Number(half)).toBeCloseTo(1, 12);
    }
  });

  test('of the normal bell are those published: tail from 3.6541528853610088, area 0.0049286732340 (Marsaglia and Tsang 2000)', () => {
    const { edge, height } = zigguratOf(bellOf(NORMAL));
    expect(edge[1]).toBeCloseTo(3.6541528853610088, 12);
    // In print 0.00492867323399: two units of the last place above what 40 digits give (bells.json).
    expect((edge[0] as number) * (height[1] as number)).toBeCloseTo(0.00492867323399, 13);
  });

  test('take a value without a look at the curve only where all of the layer is under it', () => {
    fc.assert(
      fc.property(anyDegrees, (degrees) => {
        const { edge, unit, inside } = zigguratOf(bellOf(degrees));
        for (let k = 0; k < 256; k++) {
          const [step, most, next] = [unit[k] as number, inside[k] as number, edge[k + 1] as number];
          expect(step * 2 ** 31).toBe(edge[k]);
          expect((most - 0.5) * step).toBeLessThanOrEqual(next);
          expect((most + 1.5) * step).toBeGreaterThan(next);
        }
        const all = inside.reduce((sum, most) => sum + most, 0) / 2 ** 39;
        expect(all).toBeGreaterThan(0.96);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a word and its complement', () => {
  const ziggurat = zigguratOf(bellOf(NORMAL));
  /** The value of one word in a layer, and of what is drawn after it. */
  function valueFrom(word: number, layer: number, then: readonly number[] = [0]): number {
    const out = new Float64Array(1);
    fillBell(out, wordsOf(handing([word, layer, ...then]), 1), ziggurat);
    return out[0] as number;
  }

  test('give one value with either sign, so that both halves are alike to the last word', () => {
    for (const word of [0, 1, 123456789, 2e9]) expect(valueFrom(-1 - word, 0)).toBe(-valueFrom(word, 0));
    expect(valueFrom(0, 0)).toBeGreaterThan(0);
  });

  test('do so too where the first lies at a rim above the curve and another is drawn', () => {
    const layer = 5;
    const inside = ziggurat.inside[layer] as number;
    const word = Math.round((inside + 2 ** 31) / 2);
    // The height is the highest of the rim, then comes layer 7 with a word of its own.
    const above = -1;
    const other = 123456789;
    const value = valueFrom(word, layer, [above, 7, other]);
    expect(value).toBeCloseTo((other + 0.5) * (ziggurat.unit[7] as number), 15);
    expect(valueFrom(-1 - word, layer, [above, 7, -1 - other])).toBe(-value);
  });
});

describe.each([1, 2, 9, NORMAL])('beyond the last layer, t of %d degrees', (degreesOfFreedom) => {
  const ziggurat = zigguratOf(bellOf(degreesOfFreedom));
  const from = ziggurat.edge[1] as number;
  const share = studentShareBelow({ t: -from, degreesOfFreedom });
  const count = 4_000_000;

  /** Values beyond the start of the tail, among so many. */
  function tailValues(): number[] {
    const supply = wordsOf(randomFrom(31), 4000);
    const row = new Float64Array(4000);
    const found: number[] = [];
    for (let k = 0; k < count; k += row.length) {
      fillBell(row, supply, ziggurat);
      for (const x of row) if (Math.abs(x) > from) found.push(x);
    }
    return found;
  }

  test('lie as many values as should, on either side, and spread as the tail does', () => {
    const values = tailValues();
    for (const side of [-1, 1]) {
      const own = values.filter((x) => x * side > 0).map(Math.abs);
      const wanted = count * share;
      expect(Math.abs(own.length - wanted) / Math.sqrt(wanted)).toBeLessThan(4);
      // Kolmogorov's distance times the root of the number exceeds 1.95 once in a thousand times.
      const below = own
        .sort((a, b) => a - b)
        .map((x) => 1 - studentShareBelow({ t: -x, degreesOfFreedom }) / share);
      const distance = Math.max(
        ...below.map((p, k) => Math.max(Math.abs(p - k / own.length), Math.abs(p - (k + 1) / own.length))),
      );
      expect(distance * Math.sqrt(own.length)).toBeLessThan(1.95);
    }
  });

  test('some lie so far out that only the tail itself can have made them', () => {
    const far = -studentQuantile({ share: share / 50, degreesOfFreedom });
    expect(tailValues().some((x) => Math.abs(x) > far)).toBe(true);
  });
});
