import { describe, expect, test } from 'vitest';
import { bellOf } from '../../../src/compute/combine/bell.ts';
import { fillCurvilinear, fillTrapezoid, fillUniform } from '../../../src/compute/combine/fill.ts';
import { fillArcsine, sineTable } from '../../../src/compute/combine/u-shape.ts';
import { type Words, wordsOf } from '../../../src/compute/combine/words.ts';
import { fillBell, zigguratOf } from '../../../src/compute/combine/ziggurat.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import { randomFrom } from '../../../src/compute/random.ts';
import { handing } from './handing.ts';

const ROWS = 1000;
const COUNT = 1_000_000;
/** Seeds are fixed, so these never fail by chance; a fair generator exceeds them once in 150 000 tries. */
const MOST_DEVIATIONS = 4.5;
const unit = { lower: -1, upper: 1 };

interface Filled {
  readonly shape: Distribution;
  readonly fill: (out: Float64Array, supply: Words) => void;
  /** Exact means of the square and of the fourth power, where the latter exists. */
  readonly powers?: readonly [square: number, fourth: number];
}

function bell(degreesOfFreedom: number): Filled {
  const ziggurat = zigguratOf(bellOf(degreesOfFreedom));
  const n = degreesOfFreedom;
  const square = n / (n - 2);
  return {
    shape: student({ location: 0, scale: 1, degreesOfFreedom }),
    fill: (out, supply) => fillBell(out, supply, ziggurat),
    ...(n > 8 && n < 1e9 ? { powers: [square, (3 * square * n) / (n - 4)] as const } : {}),
  };
}

function shapes(): Record<string, Filled> {
  const table = sineTable();
  return {
    uniform: { shape: rectangular(unit), fill: fillUniform, powers: [1 / 3, 1 / 5] },
    trapezoid: {
      shape: trapezoidal({ ...unit, topRatio: 0.4 }),
      fill: (out, supply) => fillTrapezoid(out, supply, { wide: 0.7, narrow: 0.3 }),
      // Of two independent uniform values a and b: a^4 + 6 a^2 b^2 + b^4.
      powers: [(0.49 + 0.09) / 3, (0.7 ** 4 + 0.3 ** 4) / 5 + (6 * 0.49 * 0.09) / 9],
    },
    triangle: {
      shape: triangular(unit),
      fill: (out, supply) => fillTrapezoid(out, supply, { wide: 0.5, narrow: 0.5 }),
      powers: [1 / 6, 1 / 15],
    },
    curvilinear: {
      shape: curvilinear({ ...unit, limitHalfWidth: 0.4 }),
      fill: (out, supply) => fillCurvilinear(out, supply, 0.6),
      // JCGM 101, 6.4.3: a^2/3 + d^2/9; the fourth power likewise from that of the half-width.
      powers: [1 / 3 + 0.16 / 9, (1 + 2 * 0.16 + 0.16 ** 2 / 5) / 5],
    },
    'U shape': {
      shape: arcsine({ centre: 0, halfWidth: 1 }),
      fill: (out, supply) => fillArcsine(out, supply, table),
      powers: [1 / 2, 3 / 8],
    },
    normal: { ...bell(Number.POSITIVE_INFINITY), powers: [1, 3] },
    ...Object.fromEntries([1, 1.4, 2, 3, 9, 30, 1e4].map((n) => [`t of ${n}`, bell(n)])),
  };
}

/** Many values in the order they are drawn, a row at a time as in a simulation. */
function drawn({ fill }: Filled, seed: number): Float64Array {
  const supply = wordsOf(randomFrom(seed), ROWS);
  const values = new Float64Array(COUNT);
  for (let from = 0; from < COUNT; from += ROWS) fill(values.subarray(from, from + ROWS), supply);
  return values;
}

/** Of `cells` equally likely ranges of the shape, the number of the one in which a value lies. */
function cellsOf(shape: Distribution, cells: number): (x: number) => number {
  const edges = Float64Array.from({ length: cells - 1 }, (_, k) => shape.quantile((k + 1) / cells));
  return (x) => {
    let [low, high] = [0, cells - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (x < (edges[middle] as number)) high = middle;
      else low = middle + 1;
    }
    return low;
  };
}

/** Deviations by which the chi-square of counts in equally likely cells misses its mean. */
function chiSquareDeviations(counts: readonly number[]): number {
  const wanted = counts.reduce((sum, count) => sum + count, 0) / counts.length;
  const chiSquare = counts.reduce((sum, count) => sum + (count - wanted) ** 2 / wanted, 0);
  return (chiSquare - (counts.length - 1)) / Math.sqrt(2 * (counts.length - 1));
}

const meanOf = (values: Float64Array, of: (x: number) => number) => {
  let sum = 0;
  for (const x of values) sum += of(x);
  return sum / values.length;
};

const deviations = (got: number, wanted: number, variance: number) =>
  Math.abs(got - wanted) / Math.sqrt(variance / COUNT);

describe.each(Object.entries(shapes()))('a million random values, %s', (_, filled) => {
  const { shape } = filled;
  const values = drawn(filled, 11);
  const sorted = values.slice().sort();

  test('lie within the limits of the shape and are numbers', () => {
    expect(values.every((x) => x >= shape.limits.lower && x <= shape.limits.upper)).toBe(true);
  });

  test('have the exact quantiles, far into both tails', () => {
    const lower = [1e-5, 1e-4, 1e-3, 0.003, 0.01, 0.025, 0.1, 0.25, 0.4];
    for (const share of [...lower, 0.5, ...lower.map((p) => 1 - p)]) {
      const place = shape.quantile(share);
      const above = sorted.findIndex((x) => x > place);
      expect(deviations(above / COUNT, share, share * (1 - share))).toBeLessThan(MOST_DEVIATIONS);
    }
  });

  test('fill 1000 equally likely ranges evenly', () => {
    const counts = new Array<number>(1000).fill(0);
    const cellOf = cellsOf(shape, counts.length);
    for (const cell of values.map(cellOf)) counts[cell] = (counts[cell] as number) + 1;
    expect(Math.abs(chiSquareDeviations(counts))).toBeLessThan(MOST_DEVIATIONS);
  });

  test('do not follow from their neighbours, next or four further on', () => {
    const cells = values.map(cellsOf(shape, 24));
    for (const ahead of [1, 4]) {
      const counts = new Array<number>(24 * 24).fill(0);
      for (let k = 0; k + ahead < COUNT; k += 2 * ahead) {
        const cell = 24 * (cells[k] as number) + (cells[k + ahead] as number);
        counts[cell] = (counts[cell] as number) + 1;
      }
      expect(Math.abs(chiSquareDeviations(counts))).toBeLessThan(MOST_DEVIATIONS);
    }
  });
});

test.each(
  Object.entries(shapes()).flatMap(([name, filled]) =>
    filled.powers ? [{ name, filled, powers: filled.powers }] : [],
  ),
)('a million random values, $name, have the exact mean and variance', ({ filled, powers }) => {
  const [square, fourth] = powers;
  const values = drawn(filled, 12);
  expect(deviations(meanOf(values, Number), 0, square)).toBeLessThan(MOST_DEVIATIONS);
  const squares = meanOf(values, (x) => x * x);
  expect(deviations(squares, square, fourth - square * square)).toBeLessThan(MOST_DEVIATIONS);
});

describe('the outermost words', () => {
  const [lowest, highest] = [-(2 ** 31), 2 ** 31 - 1];
  /** The value of a fill from these words. */
  const valueFrom = (fill: Filled['fill'], ...words: number[]) => {
    const out = new Float64Array(1);
    fill(out, wordsOf(handing(words), 1));
    return out[0] as number;
  };
  const fills: Filled['fill'][] = [
    fillUniform,
    (out, supply) => fillTrapezoid(out, supply, { wide: 0.7, narrow: 0.3 }),
  ];

  test.each(fills)('give values just inside the limits, alike on both sides', (fill) => {
    expect(valueFrom(fill, highest)).toBeLessThan(1);
    expect(valueFrom(fill, highest)).toBeGreaterThan(1 - 1e-8);
    expect(valueFrom(fill, lowest)).toBe(-valueFrom(fill, highest));
  });

  test('give half-widths as far above their middle as below, and values alike on both sides', () => {
    const fill: Filled['fill'] = (out, supply) => fillCurvilinear(out, supply, 0.6);
    const [wide, narrow] = [valueFrom(fill, highest, highest), valueFrom(fill, lowest, highest)];
    expect(wide).toBeLessThan(1.4);
    expect(wide).toBeGreaterThan(1.4 - 1e-8);
    expect(valueFrom(fill, highest, lowest)).toBe(-wide);
    expect((wide + narrow) / 2).toBeCloseTo(1 - 2 ** -32, 14);
  });
});

describe('the U shape', () => {
  test('is the sine of the angle of each word to the last digits, on both sides of every step too', () => {
    const steps = Array.from({ length: 1024 }, (_, k) => (k - 512) * 2 ** 22);
    const words = steps.flatMap((step) => [step, step + 1, step + 1234567, step + 2 ** 22 - 1]);
    const values = new Float64Array(words.length);
    fillArcsine(values, wordsOf(handing(words), words.length), sineTable());
    words.forEach((word, k) => {
      const exact = Math.sin(((word + 0.5) * Math.PI) / 2 ** 32);
      expect(Math.abs((values[k] as number) - exact)).toBeLessThan(5e-16);
    });
    expect(words[0]).toBe(-(2 ** 31));
    expect(words.at(-1)).toBe(2 ** 31 - 1);
  });

  test('is as often above the middle as below, word by word', () => {
    const words = [0, 1, 5e8, 2 ** 31 - 1];
    const mirrored = words.map((word) => -1 - word);
    const values = new Float64Array(8);
    fillArcsine(values, wordsOf(handing([...words, ...mirrored]), 8), sineTable());
    for (let k = 0; k < 4; k++) expect(values[k]).toBeCloseTo(-(values[k + 4] as number), 15);
  });
});
